package org.tugtest.report;

import java.util.List;
import java.util.Map;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Judged;
import org.tugtest.rule.connectors.CavityUnsealed;
import org.tugtest.rule.connectors.SpliceUnderfilled;
import org.tugtest.rule.written.CavityDoubled;

/**
 * The report that every format is tested with: two roots that share a bad loom, read and checked as
 * in earnest. File names, titles and messages hold what formats stumble over.
 */
public final class Sample {
  private static final String LOOM = "looms/nose loom #1 100%-ü.json";

  private static final String CAR =
      """
      {
        "format": 1, "sketch": true, "title": "Night <car> | \\"A&B\\" 🔋",
        "uses": ["looms/nose loom #1 100%-ü.json"],
        "limits": {"cavity-unsealed": {"level": "off"}},
        "waivers": {
          "tail": {"rule": "splice-underfilled", "at": "splices/S2", "reason": "The tail waits for the night lamp.", "until": "2027-03-31"}
        },
        "expectations": {
          "lamps-apart": {"that": "apart", "points": ["R1:1", "R1:3"], "reason": "event rules"}
        }
      }
      """;

  private static final String VAN =
      """
      {
        "format": 1, "sketch": true,
        "uses": ["looms/nose loom #1 100%-ü.json"],
        "limits": {"sample-volts": {"level": "note"}}
      }
      """;

  private static final String SHARED =
      """
      {
        "format": 1,
        "devices": {
          "LAMP-L": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}},
          "LAMP-R": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2"}}},
          "STUD": {"pins": {"1": {"family": "stud-m6"}}}
        },
        "splices": {
          "S1": {},
          "S2": {}
        },
        "wires": {
          "R014": {"from": "LAMP-L:1", "to": "R1:3"},
          "R022": {"from": "LAMP-R:1", "to": "R1:3", "areaMm2": 1},
          "W3": {"from": "R1:1", "to": "S1", "cutMm": 1200},
          "W4": {"from": "R1:2", "to": "S2"}
        }
      }
      """;

  private Sample() {}

  /** The report: findings of every level, waived ones, gaps, rules not run; nothing broke. */
  public static Report report() {
    return report(
        RuleCatalog.of(
            List.of(
                SampleRules.names(),
                new CavityDoubled(),
                new CavityUnsealed(),
                new SpliceUnderfilled(),
                SampleRules.earth(),
                SampleRules.volts(),
                SampleRules.idle())));
  }

  /** The same files, checked by a rule that breaks and one that does not. */
  public static Report broken() {
    return report(RuleCatalog.of(List.of(new CavityDoubled(), SampleRules.broken())));
  }

  private static Report report(RuleCatalog catalog) {
    HarnessReader reader =
        new HarnessReader(
            MemoryFiles.of(Map.of("car.harness.json", CAR, "van.harness.json", VAN, LOOM, SHARED)),
            ReadLimits.STANDARD);
    Checker checker = new Checker(catalog, Selection.ALL);
    List<HarnessReport> harnesses =
        reader.roots().stream()
            .map(root -> Facts.of(reader.read(root), Judged.TODAY, catalog.known()))
            .map(facts -> new HarnessReport(facts, checker.check(facts)))
            .toList();
    return new Report(
        "1.2.3",
        "src/main/harness",
        Reports.REVISION,
        new Gate(Level.ERROR, 0),
        catalog.infos(),
        harnesses);
  }
}
