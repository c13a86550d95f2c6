package org.tugtest.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.network.WireLength;
import org.tugtest.network.WireLengths;
import org.tugtest.network.Wiring;

/**
 * How each wire runs along the layout: the shortest way, in mm, over the nodes of its {@code via},
 * on segments of its own loom and of files without a loom. Of equal ways the one of fewer segments
 * is taken, then the one with the first segment by id; which end of a wire is {@code from} changes
 * nothing. Wires of a group run together, except one that has a {@code via} of its own.
 */
public final class Routes {
  /** The fields of {@code defaults} that lengths and surroundings rest on. */
  public static final List<String> DEFAULTS =
      List.of("ambientC", "breakoutMm", "serviceMm", "stripMm");

  private final Harness harness;
  private final Stands stands;
  private final SegmentGraph segments;
  private final Map<String, LoomWays> byLoom = new TreeMap<>();
  private final Map<String, Gap> gapOf = new LinkedHashMap<>();
  private final Map<String, Route> routes = new LinkedHashMap<>();
  private final Map<String, NoRoute> missing = new LinkedHashMap<>();
  private final Map<String, WireLength> routed = new HashMap<>();
  private final WireLengths lengths =
      wire -> WireLengths.given().of(wire).or(() -> Optional.ofNullable(routed(wire)));

  /** What lengths rest on, told before: most wires rest on the same. */
  private final Map<List<String>, List<String>> told = new LinkedHashMap<>();

  private Routes(Harness harness, Wiring wiring) {
    this.harness = harness;
    this.stands = new Stands(harness, wiring);
    this.segments = new SegmentGraph(harness.layout());
  }

  /**
   * The routes of a harness; near linear in its wires, as wires from one node share one search.
   *
   * @param givenDefaults names of the fields that {@code defaults} of the root gives; what it does
   *     not give is the format's own figure
   */
  public static Routes of(
      Harness harness, Wiring wiring, Fitting fitting, Set<String> givenDefaults) {
    Routes all = new Routes(harness, wiring);
    RouteLegs legs = new RouteLegs(harness, all.stands, all::ways);
    for (Wire wire : harness.wires().values()) {
      legs.ask(wire);
    }
    legs.find();
    EndAllowances ends = new EndAllowances(harness, wiring, fitting, givenDefaults);
    Gaps gaps = new Gaps(harness, all::ways);
    Map<String, Twist.Laid> laid = all.laid(legs, new Twist(harness, fitting.sizes()));
    for (Wire wire : harness.wires().values()) {
      legs.missing(wire.id()).ifPresent(none -> all.leave(wire, none, gaps));
      legs.of(wire.id())
          .ifPresent(
              drawn ->
                  all.routes.put(
                      wire.id(),
                      all.route(wire, drawn, ends, laid.getOrDefault(wire.id(), Twist.Laid.NONE))));
    }
    all.routes.forEach(
        (wire, route) -> {
          double mm = route.routedMm();
          if (mm > 0) {
            all.routed.put(wire, new WireLength(mm, route.basis(), "routed"));
          }
        });
    return all;
  }

  private void leave(Wire wire, NoRoute none, Gaps gaps) {
    missing.put(wire.id(), none);
    NoRoute.Leg leg = none.leg();
    if (leg != null) {
      gapOf.put(wire.id(), gaps.between(loomOf(wire), leg.from(), leg.to()));
    }
  }

  private Map<String, Twist.Laid> laid(RouteLegs legs, Twist twist) {
    Map<String, Twist.Laid> laid = new LinkedHashMap<>();
    for (Group group : harness.groups().values()) {
      if (group.kind() == Group.Kind.TWISTED) {
        Map<String, List<Piece>> pieces = new LinkedHashMap<>();
        for (String member : group.wires()) {
          legs.of(member).ifPresent(drawn -> pieces.put(member, drawn.pieces()));
        }
        twist.of(group, pieces).forEach(laid::putIfAbsent);
      }
    }
    return laid;
  }

  private Route route(Wire wire, RouteLegs.Drawn drawn, EndAllowances ends, Twist.Laid laid) {
    List<Allowance> allowances = new ArrayList<>(ends.of(new WireEnd(wire, true)));
    allowances.addAll(ends.of(new WireEnd(wire, false)));
    List<String> restsOn = new ArrayList<>();
    for (Allowance one : allowances) {
      if (one.mm() > 0 && one.source().endsWith(" of the format")) {
        String rests = ends.text(one);
        if (!restsOn.contains(rests)) {
          restsOn.add(rests);
        }
      }
    }
    if (laid.missing() != null) {
      restsOn.add(laid.missing());
    }
    return new Route(
        wire.id(),
        drawn.from(),
        drawn.to(),
        drawn.nodes(),
        drawn.pieces(),
        laid.lay(),
        allowances,
        drawn.equalWay(),
        harness.defaults().cutStepMm(),
        told.computeIfAbsent(restsOn, List::copyOf));
  }

  /** The segments that a loom may use; the empty id: what is loose. */
  synchronized LoomWays ways(String loom) {
    return byLoom.computeIfAbsent(
        loom, id -> segments.ways(id.isEmpty() ? List.of() : List.of(id)));
  }

  /** The route of a wire; empty when it has none. */
  public Optional<Route> of(String wire) {
    return Optional.ofNullable(routes.get(wire));
  }

  /** Why a wire has no route; empty when it has one. */
  public Optional<NoRoute> missing(String wire) {
    return Optional.ofNullable(missing.get(wire));
  }

  /** What parts the ends of a wire; empty unless {@link NoRoute.Why#BROKEN} is why it has none. */
  public Optional<Gap> gap(String wire) {
    return Optional.ofNullable(gapOf.get(wire));
  }

  /** All routes by wire id, in natural order. */
  public Map<String, Route> all() {
    return Collections.unmodifiableMap(routes);
  }

  /** Where a contact or splice stands; empty when nothing says so. */
  public Optional<Stand> standOf(Point point) {
    return Optional.ofNullable(stands.of(point).stand());
  }

  /** How long wires are: as built, else as cut, else as routed. */
  public WireLengths lengths() {
    return lengths;
  }

  private @Nullable WireLength routed(Wire wire) {
    return routed.get(wire.id());
  }

  /** The id of the loom of a wire; empty when it is loose. */
  static String loomOf(Wire wire) {
    return Objects.requireNonNullElse(wire.loom(), "");
  }
}
