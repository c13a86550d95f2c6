package org.tugtest.compare.match;

import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/**
 * Where a wire ends, by the ids after. Which end is which does not matter.
 *
 * @param from null when the file gives no such end
 * @param to null when the file gives no such end
 */
public record WireEnds(@Nullable Ref from, @Nullable Ref to) {
  /** The ends of a wire, called as {@code names} says. */
  public static WireEnds of(Wire wire, Renames names) {
    Ref from = wire.from();
    Ref to = wire.to();
    return new WireEnds(from == null ? null : names.ref(from), to == null ? null : names.ref(to));
  }

  /**
   * Whether {@code from} of these ends has become {@code to} of the others: turned round, more of
   * them stay.
   */
  public boolean turned(WireEnds other) {
    return stay(from, other.to) + stay(to, other.from)
        > stay(from, other.from) + stay(to, other.to);
  }

  /** How many ends stay on their contact, 0 to 2. */
  public int staying(WireEnds other) {
    return Math.max(
        same(from, other.from) + same(to, other.to), same(from, other.to) + same(to, other.from));
  }

  /** How many ends stay in their connector, device or splice, 0 to 2. */
  int stayingNear(WireEnds other) {
    return Math.max(
        near(from, other.from) + near(to, other.to), near(from, other.to) + near(to, other.from));
  }

  /** Both ends as one text, the lesser first. */
  String key() {
    String one = text(from);
    String two = text(to);
    return one.compareTo(two) <= 0 ? one + " " + two : two + " " + one;
  }

  /** Both owners as one text, the lesser first. */
  String owners() {
    String one = from == null ? "" : from.owner();
    String two = to == null ? "" : to.owner();
    return one.compareTo(two) <= 0 ? one + " " + two : two + " " + one;
  }

  static String text(@Nullable Ref end) {
    return end == null ? "" : end.text();
  }

  private static int stay(@Nullable Ref one, @Nullable Ref other) {
    return 3 * same(one, other) + near(one, other);
  }

  private static int same(@Nullable Ref one, @Nullable Ref other) {
    return one != null && one.equals(other) ? 1 : 0;
  }

  private static int near(@Nullable Ref one, @Nullable Ref other) {
    return one != null && other != null && one.owner().equals(other.owner()) ? 1 : 0;
  }
}
