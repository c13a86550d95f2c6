package org.tugtest.expect;

import java.util.List;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.route.Totals;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** {@code lighter-than}: the computed mass of a loom, or of all of them, is below a figure. */
final class LighterThan {
  private static final int NAMED = 3;

  private LighterThan() {}

  static Verdict judge(Stated stated) {
    Double grams = stated.expectation().grams();
    String loom = stated.expectation().loom();
    if (grams == null) {
      return stated.notJudged("it gives no grams");
    }
    Totals totals = stated.facts().totals();
    Totals.Sum sum = loom == null ? totals.whole() : totals.byLoom().get(loom);
    if (sum == null) {
      return stated.notJudged("no loom is called " + loom);
    }
    String what = loom == null ? "the looms weigh " : "loom " + loom + " weighs ";
    Measured measured = Measured.over(sum.grams(), grams, "g");
    if (sum.grams() >= grams) {
      return stated.fails(
          what + measured.actualShown() + " g, not less than " + measured.limitShown() + " g",
          loom == null ? List.of() : List.of(Subject.loom(loom)));
    }
    String figure = Quoted.number(Math.round(sum.grams() * 10) / 10.0) + " g";
    return sum.complete()
        ? stated.holds(what + figure)
        : stated.notJudged(
            what
                + "at least "
                + figure
                + "; not all is known: "
                + Series.and(sum.lacking(), NAMED));
  }
}
