package org.tugtest.compare.match;

/**
 * One thing in both revisions.
 *
 * @param section as in place strings: {@code wires}, {@code parts/housings}
 * @param before its id before
 * @param after its id after
 * @param why what shows that it is the same thing, in words: {@code same id}, {@code same ends,
 *     part and colour}
 */
public record Match(String section, String before, String after, String why) {
  /** Whether it has another id now. */
  public boolean renamed() {
    return !before.equals(after);
  }
}
