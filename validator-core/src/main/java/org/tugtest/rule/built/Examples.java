package org.tugtest.rule.built;

/** The examples of the rules on what was built: a small loom, with a record or readings of it. */
final class Examples {
  private static final String CAR =
      """
      // car.harness.json
      {"format": 1, "uses": ["front.json"],
       "parts": {"wires": {"w0.5": {"areaMm2": 0.5, "maxC": 125}, "w1.0": {"areaMm2": 1.0, "maxC": 125}},
                 "housings": {"h3": {"side": "socket", "rows": [["1", "2", "3"]]},
                              "h3b": {"side": "socket", "rows": [["1", "2", "3"]], "sealed": true}}}}
      // front.json
      {"format": 1, "loom": {"id": "front", "revision": "C"},
       "connectors": {"X1": {"housing": "h3", "parked": "capped"}, "X2": {"housing": "h3", "parked": "capped"}},
       "wires": {"W1": {"from": "X1:1", "to": "X2:1", "part": "w1.0", "colour": "RD", "cutMm": 1000},
                 "W2": {"from": "X1:2", "to": "X2:2", "part": "w1.0", "colour": "BK", "cutMm": 1000}}}
      """;

  private Examples() {}

  /** The loom with a record of these entries. */
  static String with(String entries) {
    return CAR
        + """
        // built/41.record.json
        {"format": 1,
         "record": {"plan": "car.harness.json", "loom": "front", "revision": "C", "by": "bench 2", "date": "2026-11-20"},
         "entries": {\
        """
        + entries
        + "}}\n";
  }

  /** One entry. */
  static String entry(String kind, String at, String more) {
    return "\"1\": {\"kind\": \""
        + kind
        + "\", \"at\": \""
        + at
        + "\", "
        + more
        + ", \"reason\": \"found at the bench\"}";
  }

  /** The loom with these lines of readings. */
  static String reading(String line) {
    return CAR + "// readings/front.csv\nfrom,to,ohms,joined\n" + line + "\n";
  }
}
