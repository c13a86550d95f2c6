package org.tugtest.rule.connectors;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.text.NaturalOrder;

/**
 * What findings with a list are made for, one each: a loom, or all that belongs to none.
 *
 * @param loom id of the loom; empty for what is loose
 */
record LoomKey(String loom) implements Comparable<LoomKey> {
  static LoomKey of(@Nullable String loom) {
    return new LoomKey(loom == null ? "" : loom);
  }

  /** The loom, or the harness for what is loose. */
  Subject subject() {
    return loom.isEmpty() ? Subject.HARNESS : Subject.loom(loom);
  }

  /** In a sentence, after what is counted. */
  String where() {
    return loom.isEmpty() ? "outside any loom" : "of loom " + loom;
  }

  @Override
  public int compareTo(LoomKey other) {
    return NaturalOrder.NATURAL.compare(loom, other.loom);
  }
}
