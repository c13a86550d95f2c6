package org.tugtest.rule.built;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tugtest.built.Intake;
import org.tugtest.built.Told;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;

/** A front loom, and what is told of it as built; for tests. */
record Front(Map<String, String> files) {
  private static final String CAR =
      """
      {"format": 1, "uses": ["front.json"], %s
       "parts": {"wires": {"w0.5": {"areaMm2": 0.5, "maxC": 125}, "w1.0": {"areaMm2": 1.0, "maxC": 125, "milliohmPerM": 20}},
                 "housings": {"h3": {"side": "socket", "rows": [["1", "2", "3"]]}}},
       "defaults": {"crimpMilliohm": 0, "contactMilliohm": 10},
       "devices": {"BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.001}}},
                   "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 2}}}},
       "layout": {"nodes": {"nose": {}, "dash": {}}, "segments": {"s1": {"from": "nose", "to": "dash", "lengthMm": 800}}}}
      """;
  private static final String LOOM =
      """
      {"format": 1, "loom": {"id": "front", "revision": "C"},
       "connectors": {"X1": {"housing": "h3", "parked": "capped", "at": "nose"}, "X2": {"housing": "h3", "mates": "X3"}, "X3": {"housing": "h3"}},
       "splices": {"S1": {"at": "nose", "part": "sp"}, "S2": {}, "S3": {}},
       "wires": {"W1": {"from": "X1:1", "to": "X2:1", "part": "w1.0", "colour": "RD", "cutMm": 5000},
                 "W2": {"from": "X1:2", "to": "X2:2", "part": "w1.0", "colour": "BK", "cutMm": 1000},
                 "W3": {"from": "X3:1", "to": "X3:3", "part": "w1.0", "cutMm": 1000},
                 "W4": {"from": "X1:3", "to": "S1"}, "W7": {"from": "S2", "to": "S3"}, "W5": {"from": "S1", "to": "LAMP:1", "areaMm2": 1, "cutMm": 500},
                 "B1": {"from": "BAT:+", "to": "LAMP:1", "part": "w1.0", "cutMm": 1000}, "B2": {"from": "BAT:-", "to": "LAMP:2", "part": "w1.0", "cutMm": 1000}}}
      """;

  /** With a record of these entries. */
  static Front entries(String entries) {
    return new Front(Map.of()).with("", entries, null);
  }

  /** With these lines of readings. */
  static Front readings(String... lines) {
    return new Front(Map.of()).with("", null, String.join("\n", lines));
  }

  Front with(String root, String entries, String readings) {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(Judged.ROOT, CAR.formatted(root));
    all.put("front.json", LOOM);
    if (entries != null) {
      all.put(
          "built/41.record.json",
          """
          {"format": 1, "record": {"plan": "car.harness.json", "loom": "front", "revision": "C", "by": "bench 2", "date": "2026-11-20"},
           "entries": {%s}}
          """
              .formatted(entries));
    }
    if (readings != null) {
      all.put("readings/front.csv", "from,to,ohms,joined,method,date\n" + readings + "\n");
    }
    return new Front(all);
  }

  /** With limits written in the root. */
  Front limits(String rule, String settings) {
    Map<String, String> all = new LinkedHashMap<>(files);
    all.put(Judged.ROOT, CAR.formatted("\"limits\": {\"" + rule + "\": {" + settings + "}},"));
    return new Front(all);
  }

  /** One entry that nobody accepted. */
  static String entry(String id, String kind, String at, String more) {
    return "\"%s\": {\"kind\": \"%s\", \"at\": \"%s\", %s, \"reason\": \"found at the bench\"}"
        .formatted(id, kind, at, more);
  }

  Intake intake() {
    return Told.of(files).orElseThrow().intake(Judged.facts(files));
  }

  Judged judged(Rule rule) {
    Facts plan = Judged.facts(files);
    Intake intake = Told.of(files).orElseThrow().intake(plan);
    org.assertj.core.api.Assertions.assertThat(intake.refused()).isEmpty();
    return Judged.of(rule, plan.with(intake.asBuilt()));
  }
}
