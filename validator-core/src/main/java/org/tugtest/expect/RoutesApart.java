package org.tugtest.expect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.route.Route;
import org.tugtest.text.Series;

/** {@code routes-apart}: two lists of wires share no segment, connector, splice or stud. */
final class RoutesApart {
  private RoutesApart() {}

  static Verdict judge(Stated stated) {
    List<Wire> first = wires(stated, stated.expectation().first());
    List<Wire> second = wires(stated, stated.expectation().second());
    if (first.isEmpty() || second.isEmpty()) {
      return stated.notJudged("one of its lists names no wire of this harness");
    }
    Map<Subject, List<String>> taken = new LinkedHashMap<>();
    first.forEach(
        wire ->
            things(stated, wire)
                .forEach(
                    thing ->
                        taken.computeIfAbsent(thing, key -> new ArrayList<>()).add(wire.id())));
    for (Wire wire : second) {
      for (Subject thing : things(stated, wire)) {
        List<String> others = taken.get(thing);
        if (others != null) {
          return stated.fails(
              wire.id() + " and " + Series.and(others, 3) + " share " + word(thing),
              List.of(Subject.wire(wire.id()), Subject.wire(others.get(0)), thing));
        }
      }
    }
    List<String> unrouted = new ArrayList<>();
    for (List<Wire> list : List.of(first, second)) {
      for (Wire wire : list) {
        if (stated.facts().routes().of(wire.id()).isEmpty()) {
          unrouted.add(wire.id());
        }
      }
    }
    return unrouted.isEmpty()
        ? stated.holds("they share no segment, connector, splice or stud")
        : stated.notJudged("the way of " + Series.and(unrouted, 3) + " is not known");
  }

  private static List<Wire> wires(Stated stated, List<String> names) {
    List<Wire> wires = new ArrayList<>();
    for (Wire wire : stated.facts().harness().wires().values()) {
      boolean named =
          stated.expectation().byCircuit()
              ? wire.circuit() != null && names.contains(wire.circuit())
              : names.contains(wire.id());
      if (named) {
        wires.add(wire);
      }
    }
    return wires;
  }

  /** The segments a wire runs on, and the connectors, splices and studs it ends in. */
  private static Set<Subject> things(Stated stated, Wire wire) {
    Set<Subject> things = new LinkedHashSet<>();
    stated.facts().routes().of(wire.id()).map(Route::pieces).orElse(List.of()).stream()
        .map(piece -> Subject.of("segments", piece.segment()))
        .forEach(things::add);
    for (boolean from : new boolean[] {true, false}) {
      WireEnd end = new WireEnd(wire, from);
      if (end.ref() != null
          && stated.facts().wiring().resolve(end.ref()) instanceof Resolution.Found found) {
        Point point = found.point();
        things.add(
            point.kind() == Point.Kind.CAVITY ? Subject.connector(point.owner()) : point.subject());
      }
    }
    return things;
  }

  private static String word(Subject thing) {
    return switch (thing.section()) {
      case "segments" -> "segment " + thing.id();
      case "connectors" -> "connector " + thing.id();
      case "splices" -> "splice " + thing.id();
      default -> thing.id();
    };
  }
}
