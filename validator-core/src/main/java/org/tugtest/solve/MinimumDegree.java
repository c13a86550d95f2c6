package org.tugtest.solve;

import java.util.Arrays;

/**
 * An order in which the nodes of a network are eliminated: always one with the fewest neighbours
 * left, so leaves come first. A loom is nearly a tree, and on a tree this order makes no fill at
 * all. Equal input gives an equal order.
 */
final class MinimumDegree {
  private static final int[] NOTHING = new int[0];
  private final int[][] neighbours;
  private final int[] length;
  private final int[] degree;
  private final boolean[] gone;
  private final IntQueue[] ofDegree;
  private int least;

  private MinimumDegree(int nodes, int[] a, int[] b) {
    neighbours = new int[nodes][];
    length = new int[nodes];
    degree = new int[nodes];
    gone = new boolean[nodes];
    int[] counts = new int[nodes];
    for (int i = 0; i < a.length; i++) {
      counts[a[i]]++;
      counts[b[i]]++;
    }
    for (int i = 0; i < nodes; i++) {
      neighbours[i] = new int[counts[i]];
    }
    for (int i = 0; i < a.length; i++) {
      if (a[i] != b[i]) {
        neighbours[a[i]][length[a[i]]++] = b[i];
        neighbours[b[i]][length[b[i]]++] = a[i];
      }
    }
    ofDegree = new IntQueue[nodes + 1];
    int[] seenBy = new int[nodes];
    Arrays.fill(seenBy, -1);
    for (int i = 0; i < nodes; i++) {
      dropRepeats(i, seenBy);
      degree[i] = length[i];
      enter(i);
    }
  }

  /** An order. */
  static final class Order {
    /** Node numbers, the first to be eliminated first. */
    final int[] nodes;

    /** For each step the nodes that its node is then joined to, in no order. */
    final int[][] left;

    private Order(int[] nodes, int[][] left) {
      this.nodes = nodes;
      this.left = left;
    }
  }

  /** An order of nodes of which {@code a[i]} and {@code b[i]} are joined. */
  static Order order(int nodes, int[] a, int[] b) {
    return new MinimumDegree(nodes, a, b).order();
  }

  private Order order() {
    int[] order = new int[gone.length];
    int[][] left = new int[gone.length][];
    for (int i = 0; i < order.length; i++) {
      order[i] = next();
      left[i] = eliminate(order[i]);
    }
    return new Order(order, left);
  }

  private void dropRepeats(int node, int[] seenBy) {
    int kept = 0;
    for (int i = 0; i < length[node]; i++) {
      int other = neighbours[node][i];
      if (seenBy[other] != node) {
        seenBy[other] = node;
        neighbours[node][kept++] = other;
      }
    }
    length[node] = kept;
  }

  private void enter(int node) {
    int at = degree[node];
    IntQueue queue = ofDegree[at];
    if (queue == null) {
      queue = new IntQueue();
      ofDegree[at] = queue;
    }
    queue.add(node);
    least = Math.min(least, at);
  }

  private int next() {
    while (true) {
      IntQueue queue = ofDegree[least];
      if (queue == null || queue.isEmpty()) {
        least++;
        continue;
      }
      int node = queue.remove();
      if (!gone[node] && degree[node] == least) {
        return node;
      }
    }
  }

  /** Joins what a node is joined to, and says what that is. */
  private int[] eliminate(int node) {
    gone[node] = true;
    int[] left = live(node);
    for (int other : left) {
      degree[other]--;
    }
    for (int i = 0; i < left.length; i++) {
      for (int j = i + 1; j < left.length; j++) {
        join(left[i], left[j]);
      }
    }
    for (int other : left) {
      enter(other);
    }
    neighbours[node] = NOTHING;
    length[node] = 0;
    return left;
  }

  /** The neighbours of a node that are not eliminated; what is gone is forgotten. */
  private int[] live(int node) {
    int kept = 0;
    int[] all = neighbours[node];
    for (int i = 0; i < length[node]; i++) {
      if (!gone[all[i]]) {
        all[kept++] = all[i];
      }
    }
    length[node] = kept;
    return Arrays.copyOf(all, kept);
  }

  private void join(int one, int other) {
    int shorter = length[one] <= length[other] ? one : other;
    int target = shorter == one ? other : one;
    for (int i = 0; i < length[shorter]; i++) {
      if (neighbours[shorter][i] == target) {
        return;
      }
    }
    append(one, other);
    append(other, one);
    degree[one]++;
    degree[other]++;
  }

  private void append(int node, int other) {
    if (length[node] == neighbours[node].length) {
      if (length[node] > 2 * degree[node]) {
        live(node);
      }
      if (length[node] == neighbours[node].length) {
        neighbours[node] = Arrays.copyOf(neighbours[node], 2 * length[node] + 2);
      }
    }
    neighbours[node][length[node]++] = other;
  }

  /** Numbers, first in, first out. */
  private static final class IntQueue {
    private int[] items = new int[8];
    private int head;
    private int tail;

    boolean isEmpty() {
      return head == tail;
    }

    void add(int item) {
      if (tail == items.length) {
        int[] room = head > items.length / 2 ? items : new int[2 * items.length];
        System.arraycopy(items, head, room, 0, tail - head);
        items = room;
        tail -= head;
        head = 0;
      }
      items[tail++] = item;
    }

    int remove() {
      return items[head++];
    }
  }
}
