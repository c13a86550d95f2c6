package org.tugtest.compare;

import java.util.List;
import org.tugtest.check.CheckResult;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.model.Harness;
import org.tugtest.read.ReadHarness;

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

  /** A revision without this harness: against it, everything is new. */
  public static Snapshot absent(String label, Facts other) {
    String root = other.harness().root();
    ReadHarness read = ReadHarness.unwritten(Harness.empty(root));
    return new Snapshot(
        label,
        Facts.of(read, other.today(), KnownRules.NONE),
        new CheckResult(root, List.of(), List.of(), List.of(), List.of(), List.of()),
        false);
  }

  /** What the files say. */
  public Harness harness() {
    return facts.harness();
  }
}
