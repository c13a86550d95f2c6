package org.tugtest.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A graph cut at its bridges: the pieces in which every two points have two ways between them, hung
 * on each other as a forest. Several edges between the same two points make a ring.
 *
 * <p>One walk without recursion (Tarjan, low points); linear in the size of the graph.
 */
final class Rings {
  private static final int NONE = -1;

  /** For each point the ring it is in; a point on no ring is one of its own. */
  final int[] ring;

  /** For each point the first point of its whole joined part. */
  final int[] part;

  /** For each edge whether it is the only way between its ends. */
  final boolean[] bridge;

  /** For each ring the bridge towards the root; -1: it holds the root. */
  final int[] up;

  /** For each ring its point at that bridge. */
  final int[] door;

  /** For each ring how many bridges lie between it and the root. */
  final int[] depth;

  /** All points, each after the one it was reached from. */
  final int[] order;

  /** For each point the edge it was reached by; -1: a root. */
  final int[] by;

  private final int[] seen;
  private final int[] low;
  private final int[] sizes;
  private int count;

  /** The pieces of a graph. */
  Rings(Links links) {
    int n = links.points();
    ring = filled(n);
    part = filled(n);
    bridge = new boolean[links.edges()];
    order = new int[n];
    by = filled(n);
    seen = filled(n);
    low = new int[n];
    int[] stack = new int[n];
    int[] next = new int[n];
    for (int start = 0; start < n; start++) {
      if (seen[start] == NONE) {
        walk(links, start, stack, next);
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      settle(links, order[i]);
    }
    int[] upwards = filled(n);
    int[] doors = new int[n];
    int[] depths = new int[n];
    int rings = 0;
    for (int point : order) {
      int edge = by[point];
      if (edge == NONE || bridge[edge]) {
        ring[point] = rings;
        upwards[rings] = edge;
        doors[rings] = point;
        depths[rings] = edge == NONE ? 0 : depths[ring[links.across(edge, point)]] + 1;
        rings++;
      } else {
        ring[point] = ring[links.across(edge, point)];
      }
    }
    up = Arrays.copyOf(upwards, rings);
    door = Arrays.copyOf(doors, rings);
    depth = Arrays.copyOf(depths, rings);
    sizes = new int[rings];
    for (int its : ring) {
      sizes[its]++;
    }
  }

  /** How many points a ring has. */
  int size(int number) {
    return sizes[number];
  }

  private void walk(Links links, int start, int[] stack, int[] next) {
    int top = 0;
    stack[0] = start;
    reach(start, NONE, start);
    while (top >= 0) {
      int at = stack[top];
      if (next[at] == links.degree(at)) {
        top--;
        continue;
      }
      int edge = links.edge(at, next[at]++);
      int to = links.across(edge, at);
      if (seen[to] == NONE) {
        reach(to, edge, start);
        stack[++top] = to;
      }
    }
  }

  private void reach(int point, int edge, int start) {
    seen[point] = count;
    order[count++] = point;
    by[point] = edge;
    part[point] = start;
  }

  /** Lowest point that can be reached from below; all below are settled already. */
  private void settle(Links links, int point) {
    low[point] = seen[point];
    for (int i = 0; i < links.degree(point); i++) {
      int edge = links.edge(point, i);
      int other = links.across(edge, point);
      if (edge == by[point]) {
        continue;
      }
      low[point] = Math.min(low[point], by[other] == edge ? low[other] : seen[other]);
    }
    if (by[point] != NONE) {
      bridge[by[point]] = low[point] == seen[point];
    }
  }

  private static int[] filled(int n) {
    int[] values = new int[n];
    Arrays.fill(values, NONE);
    return values;
  }

  /** What is done along a way. */
  interface Walker {
    /** A bridge is passed. */
    void bridge(int edge);

    /** A ring is passed from one of its points to another, which may be the same. */
    void ring(int ring, int from, int to);
  }

  /** Goes from one point to the other through the forest of rings. */
  void walk(Links links, int from, int to, Walker walker) {
    List<int[]> back = new ArrayList<>();
    int a = from;
    int b = to;
    while (ring[a] != ring[b]) {
      int ringA = ring[a];
      int ringB = ring[b];
      if (depth[ringA] >= depth[ringB]) {
        walker.ring(ringA, a, door[ringA]);
        walker.bridge(up[ringA]);
        a = links.across(up[ringA], door[ringA]);
      } else {
        back.add(new int[] {ringB, b});
        b = links.across(up[ringB], door[ringB]);
      }
    }
    walker.ring(ring[a], a, b);
    for (int i = back.size() - 1; i >= 0; i--) {
      int its = back.get(i)[0];
      walker.bridge(up[its]);
      walker.ring(its, door[its], back.get(i)[1]);
    }
  }
}
