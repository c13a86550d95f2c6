package org.tugtest.compare;

import java.util.List;
import java.util.Map;
import org.tugtest.check.CheckResult;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.model.Defaults;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Parts;
import org.tugtest.read.ReadHarness;
import org.tugtest.text.Place;
import org.tugtest.text.Places;

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
    Harness nothing =
        new Harness(
            root,
            List.of(),
            null,
            null,
            false,
            Defaults.FORMAT,
            Map.of(),
            Parts.NONE,
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Layout.NONE,
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of());
    Places nowhere =
        new Places() {
          @Override
          public Place of(String thing, String... names) {
            return Place.point(root, 1, 1, "");
          }
        };
    ReadHarness read = new ReadHarness(nothing, nowhere, List.of(), Map.of(), List.of());
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
