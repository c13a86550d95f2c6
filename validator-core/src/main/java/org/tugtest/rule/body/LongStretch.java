package org.tugtest.rule.body;

import java.util.List;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.text.Series;

/**
 * A stretch that hangs free over more than its limit.
 *
 * @param segment on which it was found
 * @param moving whether the limit is the one of what flexes or is near moving parts
 * @param limit of good practice
 * @param most over which it is an error
 */
record LongStretch(
    Layout.Segment segment, FreeSpans.Span span, boolean moving, double limit, double most) {
  Subject subject() {
    return Subject.of("segments", segment.id());
  }

  boolean grave() {
    return span.mm() > most + GivenLength.SAME;
  }

  double over() {
    return span.mm() - limit;
  }

  Measured measured() {
    return Measured.over(span.mm(), grave() ? most : limit, "mm");
  }

  /** {@code segments s1 and s2 hang free over 400 mm; at most 300 mm is good practice}. */
  String sentence() {
    List<String> on = span.segments();
    return (on.size() > 1 ? "segments " : "segment ")
        + Series.and(on)
        + (on.size() > 1 ? " hang" : " hangs")
        + " free over "
        + Millimetres.actual(measured())
        + "; at most "
        + Millimetres.limit(measured())
        + (grave()
            ? " may be without support"
            : moving
                ? segment.flexes() ? " where it flexes" : " near moving parts"
                : " is good practice");
  }

  /** What mends it when no node could be held. */
  String remedy() {
    return "add "
        + clips()
        + " to "
        + segment.id()
        + " so that none of its stretches is longer than "
        + Millimetres.text(limit);
  }

  private String clips() {
    Double length = segment.lengthMm();
    int needed = length == null ? 1 : (int) Math.ceil(length / limit - GivenLength.SAME) - 1;
    return needed <= 1 ? "a clip" : "clips until there are " + needed;
  }
}
