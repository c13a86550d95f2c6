package org.tugtest.protect;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Sides;
import org.tugtest.network.WorkingResistances;

/**
 * What bolted shorts draw and how they end: inside a load from pin to pin, at a point of the feed
 * side to the chassis (the minus of the source), at a dead end to the return beside it. Contacts
 * count as closed, but of two that would feed one place one is open at a time; all that are left
 * out so are tried in a second pass, and the worse of both counts.
 */
public final class Faults {
  /** So many returns beside a dead end are tried. */
  private static final int MOST_BESIDE = 8;

  private final Network network;
  private final Protection protection;
  private final FuseBands bands;
  private final Map<FaultCorner, List<FaultNetwork>> passes = new EnumMap<>(FaultCorner.class);

  private Faults(
      Harness harness, Network network, Protection protection, WorkingResistances resistances) {
    this.network = network;
    this.protection = protection;
    this.bands = new FuseBands(protection.ratings());
    for (FaultCorner corner : FaultCorner.values()) {
      List<FaultSource> sources =
          network.sources().stream()
              .map(edge -> FaultSource.of(harness, edge, corner))
              .flatMap(Optional::stream)
              .toList();
      FaultOhms ohms = new FaultOhms(harness, resistances, corner);
      FaultParts first = parts(sources, ohms, corner, Set.of());
      List<FaultNetwork> both = new ArrayList<>();
      both.add(new FaultNetwork(network, protection, first));
      if (!first.leftOut().isEmpty()) {
        FaultParts second = parts(sources, ohms, corner, first.leftOut());
        both.add(new FaultNetwork(network, protection, second));
      }
      passes.put(corner, both);
    }
  }

  private FaultParts parts(
      List<FaultSource> sources, FaultOhms ohms, FaultCorner corner, Set<Integer> first) {
    return new FaultParts(network, protection, sources, ohms, corner, first);
  }

  /** The faults of a harness; near linear in its size. */
  public static Faults of(
      Harness harness, Network network, Protection protection, WorkingResistances resistances) {
    return new Faults(harness, network, protection, resistances);
  }

  /** When the fuses open. */
  public FuseBands bands() {
    return bands;
  }

  /**
   * A place for a fault: from the feed side to the return side.
   *
   * @param load inside which it is; null for one outside of loads
   * @param to null: to the chassis
   */
  public record Spot(Edge.@Nullable OfElement load, Point from, @Nullable Point to) {
    /** In words: {@code inside PUMP.motor}, {@code at X1:3}. */
    public String text() {
      return load != null
          ? "inside " + load.text()
          : "at " + from.text() + (to == null ? " to the chassis" : "");
    }
  }

  /** Everywhere a short is tried: inside loads, at dead ends, and before fuses to the chassis. */
  public List<Spot> spots() {
    List<Spot> spots = new ArrayList<>(inLoads());
    spots.addAll(deadEnds());
    Set<Point> known = new HashSet<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement fuse && Sides.isFuse(edge) && fuse.fitted()) {
        beforeFuse(fuse).filter(known::add).ifPresent(at -> spots.add(new Spot(null, at, null)));
      }
    }
    return spots;
  }

  /** The end of a fuse that is nearer to the sources; empty for one on a ring or not fed. */
  public Optional<Point> beforeFuse(Edge.OfElement fuse) {
    FaultNetwork least = passes(FaultCorner.LEAST).get(0);
    int a = least.feedNode(fuse.a());
    int b = least.feedNode(fuse.b());
    if (a < 0 || b < 0) {
      return Optional.empty();
    }
    if (fuse.equals(least.by(b))) {
      return Optional.of(fuse.a());
    }
    return fuse.equals(least.by(a)) ? Optional.of(fuse.b()) : Optional.empty();
  }

  /** Where loads and coils can be shorted; one that can be turned round has two. */
  public List<Spot> inLoads() {
    List<Spot> spots = new ArrayList<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement load
          && (load.element() instanceof Element.Load || load.element() instanceof Element.Coil)) {
        spots.addAll(inside(load));
      }
    }
    return spots;
  }

  /** Where a load or coil can be shorted; nowhere when it is not between feed and return. */
  public List<Spot> inside(Edge.OfElement load) {
    List<Spot> spots = new ArrayList<>();
    if (protection.feed().reaches(load.a()) && protection.back().reaches(load.b())) {
      spots.add(new Spot(load, load.a(), load.b()));
    }
    if (protection.feed().reaches(load.b()) && protection.back().reaches(load.a())) {
      spots.add(new Spot(load, load.b(), load.a()));
    }
    return spots;
  }

  /** Dead ends of the feed side that no load hangs on, each to the return beside it. */
  public List<Spot> deadEnds() {
    Set<Point> loaded = new HashSet<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Load
              || inside.element() instanceof Element.Coil)) {
        loaded.add(inside.a());
        loaded.add(inside.b());
      }
    }
    FaultNetwork least = passes(FaultCorner.LEAST).get(0);
    List<Spot> ends = new ArrayList<>();
    for (Point point : protection.feed().points()) {
      int node = least.feedNode(point);
      if (node >= 0
          && least.degree(node) == 1
          && !loaded.contains(point)
          && least.by(node) instanceof Edge.OfWire) {
        ends.add(new Spot(null, point, beside(least, point, node)));
      }
    }
    return ends;
  }

  /** The return at the same device or connector where a short draws least; null without one. */
  private @Nullable Point beside(FaultNetwork least, Point end, int node) {
    Point best = null;
    double amps = Double.POSITIVE_INFINITY;
    int tried = 0;
    for (Point point : besides(end)) {
      int to = least.returnNode(point);
      if (to >= 0 && tried < MOST_BESIDE && least.refused(node, to).isEmpty()) {
        tried++;
        double here = least.lay(node, to).first().amps();
        if (here < amps) {
          amps = here;
          best = point;
        }
      }
    }
    return best;
  }

  private List<Point> besides(Point end) {
    int at = network.index(end);
    List<Point> points = network.points();
    List<Point> beside = new ArrayList<>();
    for (int i = at - 1; i >= 0 && isBeside(points.get(i), end); i--) {
      beside.add(points.get(i));
    }
    for (int i = at + 1; i < points.size() && isBeside(points.get(i), end); i++) {
      beside.add(points.get(i));
    }
    return beside;
  }

  private static boolean isBeside(Point one, Point end) {
    return one.kind() == end.kind() && one.owner().equals(end.owner());
  }

  /** The end of a fuse that is farther from the sources; empty for one on a ring or not fed. */
  public Optional<Point> afterFuse(Edge.OfElement fuse) {
    return beforeFuse(fuse).map(fuse::across);
  }

  /**
   * The greatest current that a fuse may have to break: of a short in its place, without its own
   * resistance; on a ring of fuses, what it carries of a short at either of its ends. Empty for one
   * that is not fed.
   */
  public Optional<ShortCircuit> behindFuse(Edge.OfElement fuse) {
    Optional<Point> before = beforeFuse(fuse);
    if (before.isPresent()) {
      return greatest(new Spot(null, before.get(), null));
    }
    ShortCircuit most = null;
    for (Point end : List.of(fuse.a(), fuse.b())) {
      ShortCircuit at = greatest(new Spot(null, end, null)).orElse(null);
      for (ShortCircuit.Through through :
          at == null ? List.<ShortCircuit.Through>of() : at.fuses()) {
        if (through.fuse().equals(fuse) && (most == null || through.amps() > most.amps())) {
          most = new ShortCircuit(through.amps(), at.fuses(), at.basis(), at.missing());
        }
      }
    }
    return Optional.ofNullable(most);
  }

  private List<FaultNetwork> passes(FaultCorner corner) {
    return passes.getOrDefault(corner, List.of());
  }

  /** A fault in one pass. */
  private record Laid(FaultNetwork network, int from, int to) {
    RunningFault fault() {
      return network.lay(from, to);
    }
  }

  private List<Laid> lay(Spot spot, FaultCorner corner) {
    List<Laid> laid = new ArrayList<>();
    for (FaultNetwork pass : passes(corner)) {
      int from = pass.feedNode(spot.from());
      int to = from < 0 ? -1 : toNode(pass, spot, from);
      if (from >= 0 && to >= 0 && pass.refused(from, to).isEmpty()) {
        laid.add(new Laid(pass, from, to));
      }
    }
    return laid;
  }

  private static int toNode(FaultNetwork pass, Spot spot, int from) {
    Point to = spot.to();
    return to == null ? pass.minusOf(from) : pass.returnNode(to);
  }

  /** Why a fault cannot be reckoned; empty when it can. */
  public Optional<String> refused(Spot spot) {
    FaultNetwork pass = passes(FaultCorner.LEAST).get(0);
    int from = pass.feedNode(spot.from());
    int to = from < 0 ? -1 : toNode(pass, spot, from);
    return from < 0 || to < 0 ? Optional.of("no source feeds it") : pass.refused(from, to);
  }

  /** The least that a short draws, and how it ends, fuses opening as late as they may. */
  public Optional<FaultCourse> slowest(Spot spot) {
    FaultCourse worst = null;
    for (Laid laid : lay(spot, FaultCorner.LEAST)) {
      FaultCourse course = laid.fault().course(fuse -> bands.of(fuse).map(band -> band.greatest()));
      worst = worst == null || isWorse(course, worst) ? course : worst;
    }
    return Optional.ofNullable(worst);
  }

  private static boolean isWorse(FaultCourse one, FaultCourse other) {
    if (one.dead() != other.dead()) {
      return other.dead();
    }
    return one.dead() ? one.seconds() > other.seconds() : one.first().amps() < other.first().amps();
  }

  /** The greatest that a short draws at first. */
  public Optional<ShortCircuit> greatest(Spot spot) {
    ShortCircuit most = null;
    for (Laid laid : lay(spot, FaultCorner.GREATEST)) {
      ShortCircuit first = laid.fault().first();
      most = most == null || first.amps() > most.amps() ? first : most;
    }
    return Optional.ofNullable(most);
  }

  /**
   * The fuses that have opened when the greatest that a short draws has ended, each as late as it
   * may: they cut its place off from the sources. Empty when it does not end.
   */
  public List<Edge.OfElement> endedBy(Spot spot) {
    FaultCourse most = null;
    for (Laid laid : lay(spot, FaultCorner.GREATEST)) {
      FaultCourse course = laid.fault().course(fuse -> bands.of(fuse).map(band -> band.greatest()));
      most = most == null || course.first().amps() > most.first().amps() ? course : most;
    }
    return most == null || !most.dead()
        ? List.of()
        : most.openings().stream().map(FaultCourse.Opening::fuse).toList();
  }

  /** What lies on the way of a fault in the corner of the least current, greatest ohms first. */
  public List<OnWay> way(Spot spot) {
    List<Laid> laid = lay(spot, FaultCorner.LEAST);
    return laid.isEmpty()
        ? List.of()
        : laid.get(0).network().way(laid.get(0).from(), laid.get(0).to());
  }

  /** An edge on the way of a fault and its ohms. */
  public record OnWay(Edge edge, double ohms) {}
}
