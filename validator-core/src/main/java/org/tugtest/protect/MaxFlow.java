package org.tugtest.protect;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * The greatest flow from one node to another, by shortest augmenting paths (Edmonds and Karp 1972).
 * Capacities may be infinite; a flow that nothing bounds is infinite. The cut that is found is the
 * one nearest to the sink.
 */
final class MaxFlow {
  private static final int NONE = -1;
  private final List<List<Integer>> into = new ArrayList<>();
  private final List<Integer> from = new ArrayList<>();
  private final List<Double> left = new ArrayList<>();
  private BitSet sinkSide = new BitSet();

  /** A flow between nodes 0 to {@code nodes - 1}. */
  MaxFlow(int nodes) {
    for (int i = 0; i < nodes; i++) {
      into.add(new ArrayList<>(2));
    }
  }

  /** Joins two nodes; what it lets through each way is at least 0. */
  void join(int one, int other, double capacity, double capacityBack) {
    half(one, other, capacity);
    half(other, one, capacityBack);
  }

  private void half(int tail, int head, double capacity) {
    into.get(head).add(left.size());
    from.add(tail);
    left.add(capacity);
  }

  /** The greatest flow; infinite when there is a way without a bound. To be asked once. */
  double greatest(int source, int sink) {
    if (source == sink) {
      return Double.POSITIVE_INFINITY;
    }
    double total = 0;
    int[] by = new int[into.size()];
    while (reached(source, sink, by)) {
      double most = Double.POSITIVE_INFINITY;
      for (int at = source; at != sink; at = head(by[at])) {
        most = Math.min(most, left.get(by[at]));
      }
      if (Double.isInfinite(most)) {
        return most;
      }
      for (int at = source; at != sink; at = head(by[at])) {
        left.set(by[at], left.get(by[at]) - most);
        left.set(by[at] ^ 1, left.get(by[at] ^ 1) + most);
      }
      total += most;
    }
    return total;
  }

  /** After a finite flow: the nodes behind the cut. */
  BitSet sinkSide() {
    return sinkSide;
  }

  private int head(int half) {
    return from.get(half ^ 1);
  }

  /** Goes back from the sink; {@code by} then leads from the source to it. */
  private boolean reached(int source, int sink, int[] by) {
    Arrays.fill(by, NONE);
    BitSet seen = new BitSet();
    seen.set(sink);
    Deque<Integer> open = new ArrayDeque<>(List.of(sink));
    while (!open.isEmpty()) {
      int at = open.remove();
      for (int half : into.get(at)) {
        int tail = from.get(half);
        if (left.get(half) > 0 && !seen.get(tail)) {
          seen.set(tail);
          by[tail] = half;
          open.add(tail);
        }
      }
    }
    sinkSide = seen;
    return seen.get(source);
  }
}
