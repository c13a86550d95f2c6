package org.tugtest.route;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A way along whole segments from one node to another. Its arrays are not to be changed. */
final class Way {
  /** The way of no segments, from a node to itself. */
  static final Way NONE = new Way(new int[0], 0, null);

  private final int[] ranks;
  private final long cost;
  private final int @Nullable [] other;

  /**
   * A way.
   *
   * @param ranks the segments in the order of the way
   * @param cost sum of what the segments cost
   * @param other the first of the other ways of the same cost; null when there is none
   */
  Way(int[] ranks, long cost, int @Nullable [] other) {
    this.ranks = ranks;
    this.cost = cost;
    this.other = other;
  }

  int[] ranks() {
    return ranks;
  }

  long cost() {
    return cost;
  }

  int @Nullable [] other() {
    return other;
  }

  /** The same way from its other end. */
  Way turned() {
    return new Way(turned(ranks), cost, other == null ? null : turned(other));
  }

  private static int[] turned(int[] ranks) {
    int[] turned = new int[ranks.length];
    for (int i = 0; i < ranks.length; i++) {
      turned[i] = ranks[ranks.length - 1 - i];
    }
    return turned;
  }

  /**
   * Which of two ways of equal cost is taken: the one of fewer segments, then the one that has the
   * first segment, in natural order, which the other has not. The direction does not matter.
   */
  static int compare(int[] one, int[] two) {
    int byCount = Integer.compare(one.length, two.length);
    if (byCount != 0) {
      return byCount;
    }
    int[] a = one.clone();
    int[] b = two.clone();
    Arrays.sort(a);
    Arrays.sort(b);
    return Arrays.compare(a, b);
  }
}
