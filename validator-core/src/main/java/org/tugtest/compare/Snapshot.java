package org.tugtest.compare;

import org.tugtest.check.CheckResult;
import org.tugtest.facts.Facts;
import org.tugtest.model.Harness;

/**
 * One revision of one root: what is known of it and what came of checking it with this version of
 * the tool, by its own limits and waivers.
 *
 * @param label what people call it: {@code abc1234}, {@code the index}, {@code car.harness.json}
 * @param present false when there is no such harness in that revision
 */
public record Snapshot(String label, Facts facts, CheckResult result, boolean present) {
  /** A revision that has the harness. */
  public static Snapshot of(String label, Facts facts, CheckResult result) {
    return new Snapshot(label, facts, result, true);
  }

  /** What the files say. */
  public Harness harness() {
    return facts.harness();
  }
}
