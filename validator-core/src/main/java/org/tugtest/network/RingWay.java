package org.tugtest.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The way of the fewest edges between two points of one ring. */
final class RingWay {
  private RingWay() {}

  /** The edges in order; none when the points are the same. */
  static List<Integer> of(Links links, int[] ring, int from, int to) {
    return without(links, ring, from, to, -1);
  }

  /** The same, but never by the edge {@code shut}. */
  static List<Integer> without(Links links, int[] ring, int from, int to, int shut) {
    Map<Integer, Integer> by = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>();
    open.add(from);
    by.put(from, -1);
    while (!open.isEmpty() && !by.containsKey(to)) {
      int at = open.remove();
      for (int i = 0; i < links.degree(at); i++) {
        int edge = links.edge(at, i);
        int next = links.across(edge, at);
        if (edge != shut && ring[next] == ring[from] && by.putIfAbsent(next, edge) == null) {
          open.add(next);
        }
      }
    }
    List<Integer> way = new ArrayList<>();
    int at = to;
    for (int edge = by.getOrDefault(at, -1); edge >= 0; edge = by.getOrDefault(at, -1)) {
      way.add(edge);
      at = links.across(edge, at);
    }
    Collections.reverse(way);
    return way;
  }
}
