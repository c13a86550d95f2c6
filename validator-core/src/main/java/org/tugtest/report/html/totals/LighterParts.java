package org.tugtest.report.html.totals;

import org.tugtest.bench.lighter.Lighter;
import org.tugtest.check.RuleCatalog;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Figures;

/**
 * Wires that are thicker than they need be, ready for a page.
 *
 * @param rows the most grams first
 * @param saved by all of them together, in words
 * @param unlooked why none was looked for; empty when they were
 */
public record LighterParts(Few<Row> rows, String saved, String unlooked) {
  private static final int MOST = 60;

  /** One wire, the part it is of, the part that would do, and what that saves. */
  public record Row(String wire, String now, String then, String saved) {}

  /** Those of a root. */
  public static LighterParts of(HarnessReport harness) {
    Lighter lighter = Lighter.of(harness.facts(), harness.result(), RuleCatalog.standard());
    return new LighterParts(
        Few.of(
            lighter.changes().stream()
                .map(
                    change ->
                        new Row(
                            change.wire().id(),
                            change.now().id(),
                            change.then().id(),
                            grams(change.grams())))
                .toList(),
            MOST),
        grams(lighter.grams()),
        lighter.unlooked() == null ? "" : lighter.unlooked());
  }

  private static String grams(double grams) {
    return Figures.three(grams) + " g";
  }
}
