package org.tugtest.report.html;

import org.tugtest.expect.Verdict;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.html.text.Few;

/**
 * An expectation of the team and whether it holds.
 *
 * @param sign name of the symbol
 * @param place where it is written
 */
record ExpectationView(String id, String sign, String word, String message, String place) {
  private static final int MOST = 300;

  static Few<ExpectationView> of(Report report, HarnessReport harness) {
    return Few.of(
        harness.result().expectations().stream().map(it -> of(report, it)).toList(), MOST);
  }

  private static ExpectationView of(Report report, Verdict verdict) {
    String place = report.shown(verdict.at().get(0));
    return switch (verdict.answer()) {
      case HOLDS -> new ExpectationView(verdict.id(), "ok", "yes", verdict.message(), place);
      case FAILS -> new ExpectationView(verdict.id(), "error", "no", verdict.message(), place);
      case NOT_JUDGED ->
          new ExpectationView(verdict.id(), "guess", "not judged", verdict.message(), place);
    };
  }
}
