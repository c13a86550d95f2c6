package org.tugtest.compare.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.match.Matches;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/**
 * Which wires and contacts make pins one net on this side that are not one on the other: those that
 * the other side has not got between these points, and that lie on a way between pins that are
 * apart there.
 */
final class Joiners {
  private final Matches matches;
  private final Map<Side, Set<String>> links = new HashMap<>();
  private final Side before;

  /** Ids of wires, and plugged or bolted contacts as texts, in natural order. */
  record Found(List<String> wires, List<String> contacts) {}

  Joiners(Matches matches, Side before) {
    this.matches = matches;
    this.before = before;
  }

  /**
   * Those in one net of {@code side}.
   *
   * @param partOf what each pin of the net belongs to on the other side
   */
  Found in(Side side, int net, Side other, Map<String, Integer> partOf) {
    List<Point> points = side.net(net).points();
    Map<Point, Integer> indexes = new HashMap<>();
    points.forEach(point -> indexes.put(point, indexes.size()));
    int[] parent = new int[points.size()];
    Arrays.setAll(parent, i -> i);
    List<Edge> changed = new ArrayList<>();
    Set<String> there = links.computeIfAbsent(other, this::links);
    for (Edge edge : side.edges(net)) {
      if (there.contains(key(edge, side))) {
        join(parent, at(indexes, edge.a()), at(indexes, edge.b()));
      } else {
        changed.add(edge);
      }
    }
    Map<Integer, Integer> firstOfPart = new HashMap<>();
    for (int i = 0; i < points.size(); i++) {
      Integer part = partOf.get(side.common(points.get(i)));
      if (part != null) {
        Integer first = firstOfPart.putIfAbsent(part, i);
        if (first != null) {
          join(parent, first, i);
        }
      }
    }
    boolean[] holds = new boolean[points.size()];
    firstOfPart.values().forEach(i -> holds[find(parent, i)] = true);
    int[] froms = changed.stream().mapToInt(e -> find(parent, at(indexes, e.a()))).toArray();
    int[] tos = changed.stream().mapToInt(e -> find(parent, at(indexes, e.b()))).toArray();
    return found(changed, between(froms, tos, holds));
  }

  /** Which edges are left when ends that hold no pin are cut back. */
  private static boolean[] between(int[] froms, int[] tos, boolean[] holds) {
    List<List<Integer>> at = new ArrayList<>();
    for (int i = 0; i < holds.length; i++) {
      at.add(new ArrayList<>(2));
    }
    boolean[] left = new boolean[froms.length];
    int[] degree = new int[holds.length];
    for (int i = 0; i < froms.length; i++) {
      left[i] = froms[i] != tos[i];
      if (left[i]) {
        at.get(froms[i]).add(i);
        at.get(tos[i]).add(i);
        degree[froms[i]]++;
        degree[tos[i]]++;
      }
    }
    Deque<Integer> open = new ArrayDeque<>();
    for (int i = 0; i < holds.length; i++) {
      if (degree[i] == 1 && !holds[i]) {
        open.add(i);
      }
    }
    while (!open.isEmpty()) {
      int end = open.remove();
      for (int i : at.get(end)) {
        if (left[i]) {
          left[i] = false;
          int far = froms[i] == end ? tos[i] : froms[i];
          degree[end]--;
          if (--degree[far] == 1 && !holds[far]) {
            open.add(far);
          }
        }
      }
    }
    return left;
  }

  private static Found found(List<Edge> changed, boolean[] left) {
    Set<String> wires = new TreeSet<>(NaturalOrder.NATURAL);
    Set<String> contacts = new TreeSet<>(NaturalOrder.NATURAL);
    for (int i = 0; i < left.length; i++) {
      if (left[i]) {
        Edge edge = changed.get(i);
        (edge instanceof Edge.OfWire ? wires : contacts).add(edge.text());
      }
    }
    return new Found(List.copyOf(wires), List.copyOf(contacts));
  }

  /** All that joins two points on a side, by names that both sides know. */
  private Set<String> links(Side side) {
    Set<String> keys = new HashSet<>();
    for (Edge edge : side.facts().network().edges()) {
      if (!(edge instanceof Edge.OfElement)) {
        keys.add(key(edge, side));
      }
    }
    return keys;
  }

  private String key(Edge edge, Side side) {
    String one = side.common(edge.a());
    String other = side.common(edge.b());
    String ends = one.compareTo(other) <= 0 ? one + " " + other : other + " " + one;
    return ends + " " + wire(edge, side);
  }

  /** The id of a wire that both sides know it by; empty for other edges. */
  private String wire(Edge edge, Side side) {
    if (!(edge instanceof Edge.OfWire of)) {
      return "";
    }
    String id = of.wire().id();
    return side == before ? matches.renames().id("wires", id) : id;
  }

  private static int at(Map<Point, Integer> indexes, Point point) {
    @Nullable Integer at = indexes.get(point);
    return at == null ? -1 : at;
  }

  private static int find(int[] parent, int i) {
    int at = i;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private static void join(int[] parent, int one, int other) {
    parent[find(parent, one)] = find(parent, other);
  }
}
