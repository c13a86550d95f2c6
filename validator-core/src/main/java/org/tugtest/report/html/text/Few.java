package org.tugtest.report.html.text;

import java.util.ArrayList;
import java.util.List;

/**
 * The first of many things, as far as a page takes them.
 *
 * @param more how many are left out
 */
public record Few<T>(List<T> shown, int more) {
  public Few {
    shown = List.copyOf(shown);
  }

  /** So many of them at most. */
  public static <T> Few<T> of(List<T> all, int most) {
    int some = Math.min(most, all.size());
    return new Few<>(all.subList(0, some), all.size() - some);
  }

  /** Nothing of nothing. */
  public static <T> Few<T> none() {
    return new Few<>(List.of(), 0);
  }

  /** Whether some are left out. */
  public boolean cut() {
    return more > 0;
  }

  /** How many there are in all. */
  public int count() {
    return shown.size() + more;
  }

  /** Whether there is nothing. */
  public boolean isEmpty() {
    return count() == 0;
  }

  /** {@code and 4,312 more}; empty when none is left out. */
  public String said() {
    return cut() ? "and " + Figures.count(more) + " more" : "";
  }

  /** {@code and 4,312 more segments}, {@code and 1 more segment}; empty when none is left out. */
  public String said(String noun) {
    return cut() ? said() + " " + noun + (more == 1 ? "" : "s") : "";
  }

  /** Those shown, in stretches that a browser lays out one by one. */
  public List<List<T>> stretches(int length) {
    List<List<T>> stretches = new ArrayList<>();
    for (int i = 0; i < shown.size(); i += length) {
      stretches.add(shown.subList(i, Math.min(shown.size(), i + length)));
    }
    return stretches;
  }
}
