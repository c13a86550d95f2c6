package org.tugtest.report.sheets.track;

import java.util.Random;

/** Small looms of odd shapes: fuses, relays, shared earths, loops and parallel wires; for tests. */
public final class GeneratedLoom {
  private final Random random;
  private final StringBuilder wires = new StringBuilder();
  private int wire;

  private GeneratedLoom(Random random) {
    this.random = random;
  }

  /** The text of a root file. */
  public static String of(Random random) {
    return new GeneratedLoom(random).json();
  }

  private String json() {
    int loads = 2 + random.nextInt(5);
    int fuses = 1 + random.nextInt(3);
    int earths = 1 + random.nextInt(2);
    StringBuilder devices = new StringBuilder();
    devices.append(
        """
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
        "ISO": {"elements": {"main": {"kind": "contact", "a": "1", "b": "2", "isolator": true}}},
        "SW": {"positions": ["off", "one", "both"], "elements": {
          "a": {"kind": "contact", "a": "1", "b": "2", "closedIn": ["one", "both"]},
          "b": {"kind": "contact", "a": "1", "b": "3", "closedIn": ["both"]}}},
        "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 90},
          "on": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"},
          "off": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}}\
        """);
    wire("BAT:+", "ISO:1");
    for (int i = 1; i <= fuses; i++) {
      devices
          .append(",\n\"F")
          .append(i)
          .append(
              "\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"out\","
                  + " \"ratingA\": 20}}}");
      wire(i > 1 && random.nextBoolean() ? "F1:in" : "ISO:2", "F" + i + ":in");
    }
    for (int i = 1; i <= earths; i++) {
      devices
          .append(",\n\"E")
          .append(i)
          .append("\": {\"pins\": {\"m6\": {\"family\": \"stud-m6\"}}}");
      wire("E" + i + ":m6", i > 1 && random.nextBoolean() ? "E1:m6" : "BAT:-");
    }
    wire("F1:out", "SW:1");
    wire("SW:2", "K:86");
    wire("K:85", earth(earths));
    wire("F" + fuses + ":out", "K:30");
    String[] feeds = {"SW:2", "SW:3", "K:87", "K:87a", "F1:out"};
    StringBuilder on = new StringBuilder();
    for (int i = 1; i <= loads; i++) {
      String use = random.nextInt(4) == 0 ? "\"amps\": 2" : "\"ohms\": " + (4 + random.nextInt(40));
      devices
          .append(",\n\"L")
          .append(i)
          .append("\": {\"elements\": {\"lamp\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", ")
          .append(use)
          .append("}}}");
      String feed = feeds[random.nextInt(feeds.length)];
      wire(feed, "L" + i + ":1");
      if (random.nextInt(4) == 0) {
        wire(feed, "L" + i + ":1");
      }
      wire("L" + i + ":2", i > 1 && random.nextInt(4) == 0 ? "L" + (i - 1) + ":2" : earth(earths));
      on.append(i > 1 ? ", " : "").append("\"L").append(i).append('"');
    }
    return "{\"format\": 1, \"devices\": {"
        + devices
        + "},\n\"wires\": {"
        + wires
        + "},\n\"states\": {"
        + "\"one\": {\"set\": {\"ISO\": \"on\", \"SW\": \"one\"}, \"on\": ["
        + on
        + "]},"
        + "\"both\": {\"set\": {\"ISO\": \"on\", \"SW\": \"both\"}, \"on\": ["
        + on
        + "]},"
        + "\"stopped\": {\"set\": {\"SW\": \"both\"}}}}";
  }

  private String earth(int earths) {
    return "E" + (1 + random.nextInt(earths)) + ":m6";
  }

  private void wire(String from, String to) {
    wires
        .append(wire == 0 ? "" : ",\n")
        .append("\"W")
        .append(++wire)
        .append("\": {\"from\": \"")
        .append(from)
        .append("\", \"to\": \"")
        .append(to)
        .append("\", \"areaMm2\": 1, \"cutMm\": ")
        .append(200 + random.nextInt(2000))
        .append('}');
  }
}
