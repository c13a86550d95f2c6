package org.tugtest.report.html;

import java.util.List;

/**
 * The first of a list, and how many more there are.
 *
 * @param shown those that stand in the page
 * @param more how many are left out; 0: none
 */
record FirstOf<T>(List<T> shown, int more) {
  FirstOf {
    shown = List.copyOf(shown);
  }

  static <T> FirstOf<T> of(List<T> all, int most) {
    int end = Math.min(Math.max(0, most), all.size());
    return new FirstOf<>(all.subList(0, end), all.size() - end);
  }

  boolean isEmpty() {
    return shown.isEmpty() && more == 0;
  }

  /** How many there are. */
  int all() {
    return shown.size() + more;
  }
}
