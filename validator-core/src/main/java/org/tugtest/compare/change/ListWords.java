package org.tugtest.compare.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** What a list gains and loses; whole lists would hide it when they are long. */
final class ListWords {
  private static final int MOST_NAMED = 12;

  private ListWords() {}

  /**
   * Whether gains and losses tell the difference: not where one of them is empty, where whole rows
   * stand in them, or where only the order differs.
   */
  static boolean tell(Collection<?> before, Collection<?> after) {
    return !before.isEmpty()
        && !after.isEmpty()
        && before.stream().noneMatch(Collection.class::isInstance)
        && after.stream().noneMatch(Collection.class::isInstance)
        && !(without(before, after).isEmpty() && without(after, before).isEmpty());
  }

  /**
   * {@code gains GRIP}, {@code loses PUMP and gains HORN}.
   *
   * @param many whether the list is called by a plural: {@code coverings gain tape}
   */
  static String of(Collection<?> before, Collection<?> after, boolean many) {
    List<String> lost = without(before, after);
    List<String> gained = without(after, before);
    List<String> said = new ArrayList<>();
    if (!lost.isEmpty()) {
      said.add((many ? "lose " : "loses ") + Series.and(lost, MOST_NAMED));
    }
    if (!gained.isEmpty()) {
      said.add((many ? "gain " : "gains ") + Series.and(gained, MOST_NAMED));
    }
    return String.join(" and ", said);
  }

  /** What one has more of than the other, in its order. */
  private static List<String> without(Collection<?> one, Collection<?> other) {
    List<Object> left = new ArrayList<>(one);
    other.forEach(left::remove);
    return left.stream()
        .map(item -> Quoted.name(Objects.requireNonNullElse(ValueText.of(item), "")))
        .toList();
  }
}
