package org.tugtest.report.sheets.ringout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Point;

/**
 * Something to measure.
 *
 * @param from one point; of many that are tied together the first that stands for them in a file of
 *     readings; null with {@code to}: no two of them may stand there, since the vehicle joins them
 * @param one points on one lead, {@code other} those on the other
 * @param says the wires that are proven, or why two nets could touch
 * @param ohms what the meter should show; null when it is not known, or nothing should be joined
 * @param limitOhms the greatest good reading; null with {@code ohms}
 * @param remark what is missing; empty: nothing
 */
record Row(
    Kind kind,
    int number,
    @Nullable Point from,
    @Nullable Point to,
    List<Point> one,
    List<Point> other,
    String says,
    @Nullable Double ohms,
    @Nullable Double limitOhms,
    String remark) {
  /** What a row proves. */
  enum Kind {
    /** Two points are joined. */
    JOINED("joined"),
    /** Two nets are apart. */
    APART("apart"),
    /** Many nets are apart. */
    TIE("tie");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  Row {
    one = List.copyOf(one);
    other = List.copyOf(other);
  }
}
