package org.tugtest.built.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Net;
import org.tugtest.network.Point;

/** Points, wires and joints of that part of a harness that some readings can speak of. */
final class Loom {
  private final List<Point> points = new ArrayList<>();
  private final Map<Point, Integer> numbers = new HashMap<>();
  private final List<Edge.OfWire> wires = new ArrayList<>();
  private final List<Edge> joints = new ArrayList<>();
  private final Facts facts;

  private Loom(Facts facts) {
    this.facts = facts;
  }

  /**
   * The nets of these points, and all nets with a cavity in a connector that those have one in: an
   * exchange in it moves them too.
   */
  static Loom around(Facts facts, Iterable<Point> starts) {
    Set<Point> all = new TreeSet<>();
    Set<String> connectors = new TreeSet<>();
    for (Point start : starts) {
      facts.nets().of(start).map(Net::points).ifPresent(all::addAll);
    }
    for (Point point : all) {
      if (point.kind() == Point.Kind.CAVITY) {
        connectors.add(point.owner());
      }
    }
    for (String connector : connectors) {
      for (String cavity : facts.wiring().cavitiesOf(connector)) {
        Point point = Point.cavity(connector, cavity);
        facts.nets().of(point).map(Net::points).ifPresent(all::addAll);
      }
    }
    Loom loom = new Loom(facts);
    for (Point point : all) {
      loom.numbers.put(point, loom.points.size());
      loom.points.add(point);
    }
    for (Edge edge : facts.network().edges()) {
      if (!loom.numbers.containsKey(edge.a()) || edge instanceof Edge.OfElement) {
        continue;
      }
      if (edge instanceof Edge.OfWire wire) {
        loom.wires.add(wire);
      } else {
        loom.joints.add(edge);
      }
    }
    return loom;
  }

  Facts facts() {
    return facts;
  }

  List<Point> points() {
    return points;
  }

  /** The number of a point; -1 when it is none of these. */
  int number(Point point) {
    return numbers.getOrDefault(point, -1);
  }

  List<Edge.OfWire> wires() {
    return wires;
  }

  /** Plugged contacts and bolted metal. */
  List<Edge> joints() {
    return joints;
  }
}
