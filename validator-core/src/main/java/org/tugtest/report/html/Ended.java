package org.tugtest.report.html;

import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;

/**
 * How the check of a root ended, as a symbol and a word.
 *
 * @param sign name of the symbol
 */
record Ended(String sign, String word) {
  static final Ended NOT_CHECKED = new Ended("broken", "Not checked");
  private static final Ended BLOCKED = new Ended("error", "Blocked");
  private static final Ended PASSES = new Ended("ok", "Passes");

  static Ended of(Report report, HarnessReport harness) {
    if (report.failed(harness)) {
      return NOT_CHECKED;
    }
    return report.blocked(harness) ? BLOCKED : PASSES;
  }
}
