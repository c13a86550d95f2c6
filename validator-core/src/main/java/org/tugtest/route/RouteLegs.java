package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.network.WireEnd;
import org.tugtest.text.NaturalOrder;

/** The legs of all wires: from the start over each node of {@code via} to the end. */
final class RouteLegs {
  private final Harness harness;
  private final Stands stands;
  private final Function<String, LoomWays> waysOf;
  private final Map<String, PairWays> pairs = new HashMap<>();
  private final Map<String, LegWays> legs = new HashMap<>();
  private final Map<String, List<Stand>> stops = new LinkedHashMap<>();
  private final Map<String, Drawn> drawn = new LinkedHashMap<>();
  private final Map<String, NoRoute> missing = new LinkedHashMap<>();

  /** A wire drawn along the layout. */
  record Drawn(
      Stand from, Stand to, List<String> nodes, List<Piece> pieces, List<String> equalWay) {}

  RouteLegs(Harness harness, Stands stands, Function<String, LoomWays> waysOf) {
    this.harness = harness;
    this.stands = stands;
    this.waysOf = waysOf;
  }

  /** Notes what a wire needs. */
  void ask(Wire wire) {
    Stands.Looked from = stands.of(new WireEnd(wire, true));
    Stands.Looked to = stands.of(new WireEnd(wire, false));
    Stands.Looked lacking = from.stand() == null ? from : to;
    if (harness.layout().segments().isEmpty()) {
      NoRoute.Why why = NoRoute.Why.NO_LAYOUT;
      missing.put(wire.id(), new NoRoute(why, why.reason(), from.stand(), to.stand(), null));
      return;
    }
    if (from.stand() == null || to.stand() == null) {
      missing.put(
          wire.id(), new NoRoute(lacking.why(), lacking.text(), from.stand(), to.stand(), null));
      return;
    }
    List<Stand> way = new ArrayList<>();
    way.add(from.stand());
    wire.via().forEach(node -> way.add(new Stand.AtNode(node)));
    way.add(to.stand());
    stops.put(wire.id(), way);
    LegWays its = legs(wire);
    for (int i = 1; i < way.size(); i++) {
      its.ask(way.get(i - 1), way.get(i));
    }
  }

  private LegWays legs(Wire wire) {
    return legs.computeIfAbsent(Routes.loomOf(wire), loom -> new LegWays(pairs(loom)));
  }

  private PairWays pairs(String loom) {
    return pairs.computeIfAbsent(loom, id -> new PairWays(waysOf.apply(id)));
  }

  /** Draws all wires. */
  void find() {
    pairs.values().forEach(PairWays::find);
    for (Map.Entry<String, List<Stand>> entry : stops.entrySet()) {
      Wire wire = harness.wires().get(entry.getKey());
      if (wire != null) {
        draw(wire, entry.getValue());
      }
    }
    Map<String, List<Group>> cables = cables();
    for (Group group : harness.groups().values()) {
      if (!inCable(group, cables)) {
        keepTogether(group);
      }
    }
  }

  private void draw(Wire wire, List<Stand> way) {
    LegWays its = legs(wire);
    List<LegWays.Leg> done = new ArrayList<>();
    for (Stand stand : way) {
      if (stand instanceof Stand.OnSegment on && !its.reaches(stand)) {
        Stand end = way.get(way.size() - 1);
        missing.put(
            wire.id(), new NoRoute(NoRoute.Why.OTHER_LOOM, on.segment(), way.get(0), end, null));
        return;
      }
    }
    for (int i = 1; i < way.size(); i++) {
      Stand from = way.get(i - 1);
      Stand to = way.get(i);
      LegWays.Leg leg = its.leg(from, to).orElse(null);
      if (leg == null) {
        missing.put(wire.id(), broken(wire, its, way, from, to));
        return;
      }
      if (leg.unknown() != null) {
        missing.put(
            wire.id(),
            new NoRoute(
                NoRoute.Why.NO_LENGTH,
                "segment " + leg.unknown() + " gives no length",
                way.get(0),
                way.get(way.size() - 1),
                null));
        return;
      }
      done.add(leg);
    }
    drawn.put(wire.id(), drawn(wire, way, done));
  }

  private NoRoute broken(Wire wire, LegWays its, List<Stand> way, Stand from, Stand to) {
    String of = wire.loom() == null ? "loose segment" : "segment of loom " + wire.loom();
    String text = "no way joins " + from.text() + " and " + to.text();
    for (Stand stand : List.of(from, to)) {
      if (!its.reaches(stand)) {
        text = "no " + of + " reaches " + stand.text();
        break;
      }
    }
    return new NoRoute(
        NoRoute.Why.BROKEN,
        text,
        way.get(0),
        way.get(way.size() - 1),
        new NoRoute.Leg(node(from), node(to)));
  }

  /** A node for a stand: of one along a segment, the start of the segment. */
  private String node(Stand stand) {
    if (stand instanceof Stand.AtNode at) {
      return at.node();
    }
    Layout.Segment segment = harness.layout().segments().get(((Stand.OnSegment) stand).segment());
    return segment == null || segment.from() == null ? "" : segment.from();
  }

  private Drawn drawn(Wire wire, List<Stand> way, List<LegWays.Leg> done) {
    List<Piece> pieces = new ArrayList<>();
    List<String> equal = List.of();
    for (LegWays.Leg leg : done) {
      pieces.addAll(leg.pieces());
      equal = equal.isEmpty() ? leg.other() : equal;
    }
    Stand from = way.get(0);
    Stand to = way.get(way.size() - 1);
    return new Drawn(
        from, to, nodes(waysOf.apply(Routes.loomOf(wire)), from, pieces), pieces, equal);
  }

  /** The nodes that the pieces pass; those at which the wire begins and ends included. */
  private static List<String> nodes(LoomWays ways, Stand from, List<Piece> pieces) {
    List<String> nodes = new ArrayList<>();
    if (from instanceof Stand.AtNode at) {
      nodes.add(at.node());
    }
    for (Piece piece : pieces) {
      Layout.Segment segment = ways.segment(ways.rank(piece.segment()));
      Double length = LoomWays.length(segment);
      boolean forward = piece.toMm() >= piece.fromMm();
      @Nullable String entered = forward ? segment.from() : segment.to();
      @Nullable String left = forward ? segment.to() : segment.from();
      boolean fromEnd = forward ? piece.fromMm() <= 0 : length != null && piece.fromMm() >= length;
      boolean toEnd = forward ? length != null && piece.toMm() >= length : piece.toMm() <= 0;
      if (fromEnd && entered != null) {
        add(nodes, entered);
      }
      if (toEnd && left != null) {
        add(nodes, left);
      }
    }
    return nodes;
  }

  private static void add(List<String> nodes, String node) {
    if (nodes.isEmpty() || !nodes.get(nodes.size() - 1).equals(node)) {
      nodes.add(node);
    }
  }

  /** Whether the wires of a twisted group all lie in a cable, which then keeps them together. */
  private static boolean inCable(Group group, Map<String, List<Group>> cables) {
    return group.kind() == Group.Kind.TWISTED
        && !group.wires().isEmpty()
        && cables.getOrDefault(group.wires().get(0), List.of()).stream()
            .anyMatch(cable -> Set.copyOf(cable.wires()).containsAll(group.wires()));
  }

  private Map<String, List<Group>> cables() {
    Map<String, List<Group>> cables = new HashMap<>();
    for (Group group : harness.groups().values()) {
      if (group.kind() == Group.Kind.CABLE) {
        for (String wire : group.wires()) {
          cables.computeIfAbsent(wire, id -> new ArrayList<>(1)).add(group);
        }
      }
    }
    return cables;
  }

  private void keepTogether(Group group) {
    Set<String> members = new LinkedHashSet<>(group.wires());
    if (group.screen() != null) {
      members.add(group.screen());
    }
    List<Wire> free =
        members.stream()
            .sorted(NaturalOrder.NATURAL)
            .map(harness.wires()::get)
            .filter(wire -> wire != null && wire.via().isEmpty() && drawn.containsKey(wire.id()))
            .toList();
    if (free.size() < 2) {
      return;
    }
    Wire first = free.get(0);
    LoomWays ways = waysOf.apply(Routes.loomOf(first));
    if (!ways.hasLoops()) {
      return;
    }
    Together together = new Together(ways, pieces(first));
    for (Wire wire : free.subList(1, free.size())) {
      List<Stand> way = stops.getOrDefault(wire.id(), List.of());
      if (Routes.loomOf(wire).equals(Routes.loomOf(first)) && together.strays(pieces(wire))) {
        together
            .leg(way.get(0), way.get(1))
            .filter(leg -> leg.unknown() == null)
            .ifPresent(leg -> drawn.put(wire.id(), drawn(wire, way, List.of(leg))));
      }
    }
  }

  private List<Piece> pieces(Wire wire) {
    Drawn found = drawn.get(wire.id());
    return found == null ? List.of() : found.pieces();
  }

  /** A wire that has a route. */
  Optional<Drawn> of(String wire) {
    return Optional.ofNullable(drawn.get(wire));
  }

  /** Why a wire has none. */
  Optional<NoRoute> missing(String wire) {
    return Optional.ofNullable(missing.get(wire));
  }
}
