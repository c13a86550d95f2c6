package org.tugtest.report;

import org.tugtest.check.CheckResult;
import org.tugtest.facts.Facts;

/** One root: what is known of it and what came of checking it. */
public record HarnessReport(Facts facts, CheckResult result) {
  /** Path of the root file, relative to the harness folder. */
  public String root() {
    return result.root();
  }

  /** The title of the harness; its root when it has none. */
  public String title() {
    String title = facts.harness().title();
    return title == null || title.isBlank() ? root() : title;
  }
}
