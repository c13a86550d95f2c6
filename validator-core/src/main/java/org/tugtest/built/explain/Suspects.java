package org.tugtest.built.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.model.Housing;
import org.tugtest.network.Edge;
import org.tugtest.network.Mate;
import org.tugtest.network.Point;
import org.tugtest.text.Series;

/** Everything that could be wrong and bears on the nets of two points. */
final class Suspects {
  private final Loom loom;
  private final Map<String, Map<String, int[]>> faces = new TreeMap<>();

  Suspects(Loom loom) {
    this.loom = loom;
  }

  /** What could be wrong besides, so that the reading between two points comes out otherwise. */
  List<Step> of(Bench bench, int from, int to) {
    List<Step> steps = new ArrayList<>();
    Set<Integer> nets = new HashSet<>(List.of(bench.net(from), bench.net(to)));
    boolean joined = bench.joined(from, to);
    Set<Long> exchanged = new HashSet<>();
    Map<String, BitSet> plugs = new LinkedHashMap<>();
    for (int point = 0; point < loom.points().size(); point++) {
      if (nets.contains(bench.net(point))) {
        exchanges(steps, bench, point, exchanged);
      }
    }
    for (int joint = 0; joint < loom.joints().size(); joint++) {
      Edge edge = loom.joints().get(joint);
      if (joined && !bench.isJointOpen(joint) && nets.contains(bench.net(loom.number(edge.a())))) {
        contact(steps, bench, joint, plugs);
      }
    }
    if (joined) {
      plugs.keySet().forEach(plug -> unplugged(steps, bench, plug));
      wires(steps, bench, nets);
    } else {
      touches(steps, bench, from, to);
    }
    return steps;
  }

  private void exchanges(List<Step> steps, Bench bench, int number, Set<Long> done) {
    Point point = loom.points().get(number);
    if (point.kind() != Point.Kind.CAVITY) {
      return;
    }
    for (String cavity : loom.facts().wiring().cavitiesOf(point.owner())) {
      Point otherPoint = Point.cavity(point.owner(), cavity);
      int other = loom.number(otherPoint);
      int low = Math.min(number, other);
      boolean any = bench.holds(number) || (other >= 0 && bench.holds(other));
      long key = (long) low * loom.points().size() + Math.max(number, other);
      if (other < 0 || other == number || !any || !done.add(key)) {
        continue;
      }
      Point first = loom.points().get(low);
      Point second = low == number ? otherPoint : point;
      steps.add(new Step(exchange(bench, first, second), bench.exchanged(number, other)));
    }
  }

  private Suspect exchange(Bench bench, Point one, Point other) {
    boolean near = sideBySide(one, other);
    List<String> wires = wires(bench, loom.number(one));
    List<String> others = wires(bench, loom.number(other));
    List<String> things = List.of(one.subject().place(), other.subject().place());
    if (!wires.isEmpty() && !others.isEmpty()) {
      return new Suspect(
          near ? Suspect.Kind.NEIGHBOURS_EXCHANGED : Suspect.Kind.EXCHANGED,
          Series.and(wires)
              + " and "
              + Series.and(others)
              + " are exchanged in "
              + one.owner()
              + " (cavities "
              + one.name()
              + " and "
              + other.name()
              + (near ? ", side by side)" : ")"),
          things);
    }
    boolean first = others.isEmpty();
    List<String> moved = first ? wires : others;
    return new Suspect(
        near ? Suspect.Kind.IN_NEIGHBOUR : Suspect.Kind.ELSEWHERE,
        Series.and(moved)
            + (moved.size() == 1 ? " sits in " : " sit in ")
            + (first ? other : one)
            + " instead of "
            + (first ? one : other),
        things);
  }

  private List<String> wires(Bench bench, int point) {
    return Arrays.stream(bench.wiresAt(point))
        .mapToObj(wire -> loom.wires().get(wire).text())
        .toList();
  }

  private boolean sideBySide(Point one, Point other) {
    Map<String, int[]> face = faces.computeIfAbsent(one.owner(), this::face);
    int[] a = face.get(one.name());
    int[] b = face.get(other.name());
    return a != null && b != null && Math.abs(a[0] - b[0]) <= 1 && Math.abs(a[1] - b[1]) <= 1;
  }

  private Map<String, int[]> face(String connector) {
    Map<String, int[]> face = new TreeMap<>();
    List<List<String>> rows =
        loom.facts().wiring().mating().housingOf(connector).map(Housing::rows).orElse(List.of());
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        face.putIfAbsent(rows.get(row).get(column), new int[] {row, column});
      }
    }
    return face;
  }

  private void contact(List<Step> steps, Bench bench, int joint, Map<String, BitSet> plugs) {
    Edge edge = loom.joints().get(joint);
    BitSet one = new BitSet();
    one.set(joint);
    boolean plugged = edge instanceof Edge.OfMating;
    steps.add(
        new Step(
            new Suspect(
                Suspect.Kind.CONTACT_OPEN,
                edge.a() + (plugged ? " does not meet " : " is not bolted to ") + edge.b(),
                List.of(edge.a().subject().place(), edge.b().subject().place())),
            bench.openJoints(one)));
    if (plugged) {
      plugs.putIfAbsent(edge.a().owner(), one);
    }
  }

  private void unplugged(List<Step> steps, Bench bench, String plug) {
    BitSet all = new BitSet();
    for (int joint = 0; joint < loom.joints().size(); joint++) {
      Edge edge = loom.joints().get(joint);
      if (edge instanceof Edge.OfMating && edge.a().owner().equals(plug)) {
        all.set(joint);
      }
    }
    String mate = loom.facts().wiring().mating().mateOf(plug).map(Mate::text).orElse("its mate");
    if (all.cardinality() > 1) {
      steps.add(
          new Step(
              new Suspect(
                  Suspect.Kind.NOT_PLUGGED,
                  plug + " is not plugged into " + mate,
                  List.of("connectors/" + plug)),
              bench.openJoints(all)));
    }
  }

  private void wires(List<Step> steps, Bench bench, Set<Integer> nets) {
    for (int wire = 0; wire < loom.wires().size(); wire++) {
      Edge edge = loom.wires().get(wire);
      if (!bench.isOpen(wire) && nets.contains(bench.net(bench.seat(wire)))) {
        steps.add(
            new Step(
                new Suspect(
                    Suspect.Kind.OPEN,
                    edge.text() + " is open (broken, or a terminal of it not home)",
                    List.of(edge.subject().place())),
                bench.openWire(wire)));
      }
    }
  }

  private void touches(List<Step> steps, Bench bench, int from, int to) {
    boolean near = false;
    for (int one = 0; one < loom.points().size(); one++) {
      Point point = loom.points().get(one);
      if (bench.net(one) != bench.net(from) || point.kind() != Point.Kind.CAVITY) {
        continue;
      }
      for (String cavity : loom.facts().wiring().cavitiesOf(point.owner())) {
        Point otherPoint = Point.cavity(point.owner(), cavity);
        int other = loom.number(otherPoint);
        if (other >= 0 && bench.net(other) == bench.net(to) && sideBySide(point, otherPoint)) {
          near = true;
          steps.add(touch(bench, Suspect.Kind.NEIGHBOURS_TOUCH, one, other));
        }
      }
    }
    if (!near) {
      steps.add(touch(bench, Suspect.Kind.TOUCH, from, to));
    }
  }

  private Step touch(Bench bench, Suspect.Kind kind, int one, int other) {
    Point a = loom.points().get(Math.min(one, other));
    Point b = loom.points().get(Math.max(one, other));
    String where =
        kind == Suspect.Kind.TOUCH ? "what hangs on " + a + " and on " + b : a + " and " + b;
    return new Step(
        new Suspect(
            kind,
            where + (kind == Suspect.Kind.TOUCH ? " touches somewhere" : " touch"),
            List.of(a.subject().place(), b.subject().place())),
        bench.touching(one, other));
  }
}
