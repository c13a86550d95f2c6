package org.tugtest.compare.match;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What things hold, each content as a number, so that many of them are compared quickly. */
final class Contents {
  private final Map<String, Integer> numbers = new HashMap<>();

  /** The numbers of these contents, sorted; the same text has the same number. */
  int[] of(List<String> contents) {
    return contents.stream()
        .mapToInt(
            text -> {
              Integer known = numbers.putIfAbsent(text, numbers.size());
              return known == null ? numbers.size() - 1 : known;
            })
        .sorted()
        .toArray();
  }

  /** How many contents two have in common, each counted as often as both have it. */
  static int common(int[] one, int[] other) {
    int same = 0;
    int i = 0;
    int k = 0;
    while (i < one.length && k < other.length) {
      int order = Integer.compare(one[i], other[k]);
      same += order == 0 ? 1 : 0;
      i += order <= 0 ? 1 : 0;
      k += order >= 0 ? 1 : 0;
    }
    return same;
  }
}
