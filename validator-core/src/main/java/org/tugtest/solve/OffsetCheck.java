package org.tugtest.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Islands that only open diodes hang between have no fixed volts against each other. The diodes can
 * all stay open when some such volts exist at which each has less than it begins to conduct at; a
 * ring of diodes for which none exist carries current (shortest ways by Bellman and Ford: a ring of
 * negative length).
 */
final class OffsetCheck {
  private static final int NONE = -1;

  /**
   * An open diode between two islands.
   *
   * @param branch its number
   * @param high island of its anode
   * @param low island of its cathode
   * @param room by how much the anode's island may still rise over the cathode's
   */
  record Limit(int branch, int high, int low, double room) {}

  private OffsetCheck() {}

  /** Rings of diodes that cannot all stay open, each with its branches; no branch is in two. */
  static List<List<Integer>> broken(int islands, List<Limit> limits, double tolerance) {
    List<List<Integer>> rings = new ArrayList<>();
    if (limits.isEmpty()) {
      return rings;
    }
    double[] rise = new double[islands];
    int[] by = new int[islands];
    Arrays.fill(by, NONE);
    boolean moved = true;
    for (int round = 0; round <= islands && moved; round++) {
      moved = false;
      for (int i = 0; i < limits.size(); i++) {
        Limit limit = limits.get(i);
        double most = rise[limit.low()] + limit.room() + tolerance;
        if (rise[limit.high()] > most) {
          rise[limit.high()] = most;
          by[limit.high()] = i;
          moved = true;
        }
      }
      if (moved) {
        rings.addAll(rings(limits, by));
        if (!rings.isEmpty()) {
          return rings;
        }
      }
    }
    return rings;
  }

  /** Rings among the last steps to each island: such a ring is of negative length. */
  private static List<List<Integer>> rings(List<Limit> limits, int[] by) {
    List<List<Integer>> rings = new ArrayList<>();
    int[] seenIn = new int[by.length];
    for (int start = 0; start < by.length; start++) {
      int at = start;
      while (at != NONE && seenIn[at] == 0) {
        seenIn[at] = start + 1;
        at = by[at] == NONE ? NONE : limits.get(by[at]).low();
      }
      if (at != NONE && seenIn[at] == start + 1) {
        List<Integer> ring = new ArrayList<>();
        int first = at;
        do {
          Limit limit = limits.get(by[at]);
          ring.add(limit.branch());
          at = limit.low();
        } while (at != first);
        rings.add(ring.stream().sorted().toList());
      }
    }
    return rings;
  }
}
