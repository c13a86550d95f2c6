package org.tugtest.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.built.Told;
import org.tugtest.check.RuleCatalog;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

/** Reports on a small loom as it was built; for tests. */
public final class AsBuiltSample {
  private static final String CAR =
      """
      {"format": 1, "title": "Test car", "uses": ["front.json"],
       "parts": {"wires": {"w0.5": {"areaMm2": 0.5, "maxC": 125}, "w1.0": {"areaMm2": 1.0, "maxC": 125, "milliohmPerM": 20}},
                 "housings": {"h6": {"side": "socket", "rows": [["1", "2", "3"], ["4", "5", "6"]]}}},
       "layout": {"nodes": {"nose": {}}, "segments": {}}}
      """;
  private static final String LOOM =
      """
      {"format": 1, "loom": {"id": "front", "revision": "C"},
       "connectors": {"X1": {"housing": "h6", "parked": "capped"}, "X2": {"housing": "h6", "parked": "capped"}},
       "wires": {"W1": {"from": "X1:1", "to": "X2:1", "part": "w1.0", "colour": "RD", "cutMm": 1000},
                 "W2": {"from": "X1:2", "to": "X2:2", "part": "w1.0", "colour": "BK", "cutMm": 1000},
                 "W3": {"from": "X1:4", "to": "X2:4", "part": "w1.0", "colour": "BU", "cutMm": 1000},
                 "W4": {"from": "X1:6", "to": "X2:6", "part": "w1.0", "colour": "WH", "cutMm": 1000}}}
      """;

  /** A colour that is accepted until a day, a size that nobody accepted, a length in its band. */
  public static final String ENTRIES =
      """
      "1": {"kind": "re-coloured", "at": "wires/W3", "planned": "BU", "built": "VT", "reason": "no blue in stock", "accepted": true, "until": "2027-03-31"},
      "2": {"kind": "re-gauged", "at": "wires/W4", "planned": "w1.0", "built": "w0.5", "reason": "the drum was empty"},
      "3": {"kind": "length", "at": "wires/W1", "builtMm": 1004, "reason": "measured at the bench"}
      """;

  /** Two wires exchanged, one joint with too much resistance, two readings as planned. */
  public static final List<String> READINGS =
      List.of("X1:1,X2:1,,no,", "X1:2,X2:2,,no,", "X1:4,X2:4,0.5,yes,", "X1:6,X2:6,0.04,yes,seen");

  private AsBuiltSample() {}

  /** The report on these entries of a record and these readings. */
  public static Report of(String entries, List<String> readings) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(Judged.ROOT, CAR);
    files.put("front.json", LOOM);
    files.put(
        "built/41.record.json",
        """
        {"format": 1, "record": {"plan": "car.harness.json", "loom": "front", "revision": "C", "by": "bench 2", "date": "2026-11-20"},
         "entries": {%s}}
        """
            .formatted(entries));
    if (!readings.isEmpty()) {
      files.put(
          "readings/front.csv", "from,to,ohms,joined,note\n" + String.join("\n", readings) + "\n");
    }
    Facts plan = Judged.facts(files);
    RuleCatalog catalog = AsBuiltReport.rules(RuleCatalog.standard());
    HarnessReport harness =
        AsBuiltReport.harness(
            plan, "the plan", Told.of(files).orElseThrow().intake(plan), List.of(), catalog);
    return new Report(
        "1.2.3",
        "src/main/harness",
        Reports.REVISION,
        new Gate(Level.ERROR, 0),
        catalog.infos(),
        List.of(harness));
  }
}
