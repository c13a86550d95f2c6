package org.tugtest.compare.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Net;
import org.tugtest.network.Network;
import org.tugtest.network.Point;

/** The nets of one revision with their labelled pins. */
final class Side {
  private final Facts facts;
  private final Renames names;
  private final List<List<String>> pins = new ArrayList<>();
  private final Map<String, Integer> netOfPin = new HashMap<>();
  private final Map<String, String> own = new HashMap<>();

  Side(Facts facts, Renames names) {
    this.facts = facts;
    this.names = names;
    Map<Point, String> labels = Labels.of(facts, names);
    for (Net net : facts.nets().all()) {
      List<String> its = new ArrayList<>();
      for (Point point : net.points()) {
        String label = labels.get(point);
        if (label != null) {
          its.add(label);
          own.put(label, point.text());
          netOfPin.put(label, pins.size());
        }
      }
      pins.add(its);
    }
  }

  /** How many nets there are. */
  int count() {
    return pins.size();
  }

  /** The labels in a net. */
  List<String> pins(int net) {
    return pins.get(net);
  }

  /** The net of a label; -1 when this side has no such pin. */
  int netOf(String label) {
    return netOfPin.getOrDefault(label, -1);
  }

  /** Whether a net joins anything. */
  boolean joins(int net) {
    return net >= 0 && pins.get(net).size() > 1;
  }

  /** What the files of this side call a label. */
  String own(String label) {
    return own.getOrDefault(label, label);
  }

  Facts facts() {
    return facts;
  }

  Net net(int net) {
    return facts.nets().all().get(net);
  }

  /** A point by the name that both sides know it by. */
  String common(Point point) {
    String owner = names.owner(point.owner());
    return point.kind() == Point.Kind.SPLICE ? owner : owner + ":" + point.name();
  }

  /** What joins the points of a net, elements left out, each once. */
  List<Edge> edges(int net) {
    List<Edge> edges = new ArrayList<>();
    for (Point point : net(net).points()) {
      for (Edge edge : facts.network().edgesAt(point)) {
        if (!(edge instanceof Edge.OfElement) && edge.a().equals(point)) {
          edges.add(edge);
        }
      }
    }
    return edges;
  }

  /** A tree for every net. */
  List<Certificate.Tree> trees() {
    Network network = facts.network();
    Set<Point> reached = new HashSet<>();
    List<Certificate.Tree> trees = new ArrayList<>();
    for (int i = 0; i < count(); i++) {
      Point first = net(i).first();
      List<String> points = new ArrayList<>();
      List<Certificate.Link> links = new ArrayList<>();
      Deque<Point> open = new ArrayDeque<>(List.of(first));
      reached.add(first);
      while (!open.isEmpty()) {
        Point point = open.remove();
        points.add(point.text());
        for (Edge edge : network.edgesAt(point)) {
          Point next = edge.across(point);
          if (!(edge instanceof Edge.OfElement) && reached.add(next)) {
            String wire = edge instanceof Edge.OfWire of ? of.wire().id() : null;
            links.add(new Certificate.Link(point.text(), next.text(), wire));
            open.add(next);
          }
        }
      }
      trees.add(new Certificate.Tree(points, pins.get(i), links));
    }
    return trees;
  }
}
