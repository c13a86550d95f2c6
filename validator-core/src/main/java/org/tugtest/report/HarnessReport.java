package org.tugtest.report;

import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.facts.Facts;
import org.tugtest.model.Harness;

/**
 * One root: what is known of it and what came of checking it.
 *
 * @param baseline what it is held against; null when it is held against nothing
 * @param built what is told of it as built; null when it is the plan that is judged
 */
public record HarnessReport(
    Facts facts, CheckResult result, @Nullable Baseline baseline, @Nullable AsBuiltReport built) {
  /** A root that is held against a base. */
  public HarnessReport(Facts facts, CheckResult result, @Nullable Baseline baseline) {
    this(facts, result, baseline, null);
  }

  /** A root that is held against nothing. */
  public HarnessReport(Facts facts, CheckResult result) {
    this(facts, result, null, null);
  }

  /** Whether a finding of this root was there before; all are new without a baseline. */
  public Age age(CheckedFinding finding) {
    return baseline == null ? Age.NEW : baseline.age(finding);
  }

  /** Whether a rule broke, or something told of the loom as built could not be used. */
  public boolean failed() {
    return !result.crashes().isEmpty() || (built != null && !built.refused().isEmpty());
  }

  /** Whether it was read and holds nothing that a rule could judge: a lost file looks like that. */
  public boolean holdsNothing() {
    Harness harness = facts.harness();
    return !facts.unread().contains(root())
        && harness.wires().isEmpty()
        && harness.devices().isEmpty()
        && harness.connectors().isEmpty();
  }

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
