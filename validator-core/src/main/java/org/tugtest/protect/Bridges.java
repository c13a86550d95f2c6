package org.tugtest.protect;

import java.util.Arrays;

/**
 * Depth-first trees of a graph that may have parallel edges and loops, and the edges without which
 * it would fall apart (Tarjan 1974). Linear, without recursion.
 */
final class Bridges {
  private static final int NONE = -1;
  private final int[] order;
  private final int[] number;
  private final int[] last;
  private final int[] low;
  private final int[] by;
  private final int[] parent;
  private int numbered;

  /**
   * The trees of a graph.
   *
   * @param nodes how many there are
   * @param one one end of each edge
   * @param other the other end of each edge
   * @param root where to begin; what is not joined to it follows by number
   */
  Bridges(int nodes, int[] one, int[] other, int root) {
    order = new int[nodes];
    number = new int[nodes];
    last = new int[nodes];
    low = new int[nodes];
    by = new int[nodes];
    parent = new int[nodes];
    Arrays.fill(number, NONE);
    Ends ends = new Ends(nodes, one, other);
    for (int i = 0; i <= nodes; i++) {
      int start = i == 0 ? root : i - 1;
      if (start < nodes && number[start] == NONE) {
        tree(start, ends);
      }
    }
  }

  /** The edges at each node, of which those before its cursor were followed; not kept. */
  private static final class Ends {
    final int[] one;
    final int[] other;
    final int[] behind;
    final int[] edgesAt;
    final int[] cursor;

    Ends(int nodes, int[] one, int[] other) {
      this.one = one;
      this.other = other;
      int[] counts = new int[nodes + 1];
      for (int i = 0; i < one.length; i++) {
        counts[one[i] + 1]++;
        counts[other[i] + 1]++;
      }
      Arrays.parallelPrefix(counts, Integer::sum);
      cursor = counts.clone();
      edgesAt = new int[2 * one.length];
      for (int i = 0; i < one.length; i++) {
        edgesAt[counts[one[i]]++] = i;
        edgesAt[counts[other[i]]++] = i;
      }
      behind = counts;
    }

    /** The next edge at a node; -1 behind the last. */
    int next(int node) {
      return cursor[node] == behind[node] ? NONE : edgesAt[cursor[node]++];
    }

    int across(int edge, int node) {
      return one[edge] == node ? other[edge] : one[edge];
    }
  }

  private void tree(int root, Ends ends) {
    int at = enter(root, NONE, NONE);
    while (at != NONE) {
      int edge = ends.next(at);
      if (edge == NONE) {
        last[at] = numbered - 1;
        int up = parent(at);
        if (up != NONE) {
          low[up] = Math.min(low[up], low[at]);
        }
        at = up;
        continue;
      }
      if (edge != by[at]) {
        int there = ends.across(edge, at);
        if (number[there] == NONE) {
          at = enter(there, edge, at);
        } else {
          low[at] = Math.min(low[at], number[there]);
        }
      }
    }
  }

  private int enter(int node, int edge, int from) {
    order[numbered] = node;
    number[node] = numbered;
    low[node] = numbered;
    by[node] = edge;
    parent[node] = from;
    numbered++;
    return node;
  }

  /** All nodes, each after the one it was reached from. */
  int[] order() {
    return order;
  }

  /** The edge a node was reached by; -1 at the root of a tree. */
  int by(int node) {
    return by[node];
  }

  /** The node it was reached from; -1 at the root of a tree. */
  int parent(int node) {
    return parent[node];
  }

  /** Whether nothing but the edge it was reached by joins a node to the rest of its tree. */
  boolean hangs(int node) {
    return by[node] != NONE && low[node] == number[node];
  }

  /**
   * Whether all simple ways from a node to the root of its tree pass the node it was reached from:
   * the edge it was reached by then begins another block (Hopcroft and Tarjan 1973).
   */
  boolean beginsBlock(int node) {
    return by[node] != NONE && low[node] >= number[parent(node)];
  }

  /** Whichever of two nodes was reached later. */
  int later(int node, int other) {
    return number[node] > number[other] ? node : other;
  }

  /** Whether a node was reached through another, or is that other. */
  boolean below(int node, int other) {
    return number[node] >= number[other] && number[node] <= last[other];
  }
}
