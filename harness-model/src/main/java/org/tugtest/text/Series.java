package org.tugtest.text;

import java.util.List;

/** Names in a row, as people write them in a sentence. */
public final class Series {
  private Series() {}

  /** {@code A, B and C}; the empty text for no names. */
  public static String and(List<String> names) {
    if (names.size() < 2) {
      return String.join("", names);
    }
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /**
   * As {@link #and}, but with more than {@code most} names the rest is counted: {@code A, B and 7
   * more}.
   */
  public static String and(List<String> names, int most) {
    if (names.size() <= most) {
      return and(names);
    }
    return String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more";
  }
}
