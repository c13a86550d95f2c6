package org.tugtest.bench.ringout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;

/** What a list of readings cannot show, wire by wire. */
final class BlindSpots {
  private BlindSpots() {}

  static List<Blind> of(Facts facts, Scope scope, BenchNets nets) {
    Map<String, Edge> edges = new HashMap<>();
    for (Edge edge : scope.edges()) {
      if (edge instanceof Edge.OfWire wire) {
        edges.put(wire.wire().id(), edge);
      }
    }
    Set<Edge> telling = scope.meter().telling(scope.probes());
    List<Blind> blind = new ArrayList<>();
    for (Wire wire : scope.wires()) {
      Edge edge = edges.get(wire.id());
      if (edge == null) {
        blind.add(open(wire, unplaced(facts, wire)));
      } else if (!telling.contains(edge)) {
        blind.add(open(wire, why(scope, edge)));
      }
    }
    for (List<Point> hidden : nets.hidden()) {
      Point first = hidden.get(0);
      blind.add(
          new Blind(
              first.subject(),
              Blind.Fault.JOINED,
              "no probe reaches "
                  + hidden.stream().map(Point::text).collect(Collectors.joining(", "))));
    }
    return blind;
  }

  private static Blind open(Wire wire, String why) {
    return new Blind(Subject.wire(wire.id()), Blind.Fault.OPEN, why);
  }

  private static String unplaced(Facts facts, Wire wire) {
    boolean both =
        facts.wiring().pointOf(new WireEnd(wire, true).ref()).isPresent()
            && facts.wiring().pointOf(new WireEnd(wire, false).ref()).isPresent();
    return both ? "both its ends sit on one contact" : "an end of it names nothing known";
  }

  private static String why(Scope scope, Edge edge) {
    if (scope.meter().single(edge)) {
      return "nothing can be probed beyond it";
    }
    List<String> others =
        scope.meter().around(edge).map(Path::edges).orElse(List.of()).stream()
            .map(Edge::text)
            .toList();
    if (others.isEmpty()) {
      return "it is one of many ways in parallel";
    }
    return others.size() == 1
        ? "it lies in parallel with " + others.get(0)
        : "the same points are joined through " + String.join(", ", others);
  }
}
