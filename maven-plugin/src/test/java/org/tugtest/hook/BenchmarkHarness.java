package org.tugtest.hook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A whole harness of so many wires: fuse boxes, plugs half way, loads, earths, a layout. */
final class BenchmarkHarness {
  private static final int CIRCUITS = 12;

  private static final String HEAD =
      """
      {
        "format": 1, "title": "Benchmark",
        "parts": {
          "wires": {"w1": {"areaMm2": 1.0, "maxC": 125}, "w16": {"areaMm2": 16, "maxC": 125}, "w4": {"areaMm2": 4, "maxC": 125}},
          "fuses": {"blade-5": {"ratingA": 5, "style": "blade-regular"}},
          "housings": {
            "box-pin": {"side": "pin", "family": "t2.8", "rows": [[%1$s]]},
            "box-skt": {"side": "socket", "family": "t2.8", "rows": [[%1$s]], "matesWith": ["box-pin"]},
            "line-pin": {"side": "pin", "family": "t2.8", "rows": [[%2$s]]},
            "line-skt": {"side": "socket", "family": "t2.8", "rows": [[%2$s]], "matesWith": ["line-pin"]}
          },
          "coverings": {"sleeve": {"kind": "braided-sleeve", "innerMinMm": 3, "innerMaxMm": 40}}
        },
      """;

  private final List<String> devices = new ArrayList<>();
  private final List<String> fitted = new ArrayList<>();
  private final List<String> connectors = new ArrayList<>();
  private final List<String> wires = new ArrayList<>();
  private final List<String> nodes = new ArrayList<>();
  private final List<String> segments = new ArrayList<>();
  private final List<String> loads = new ArrayList<>();

  private BenchmarkHarness() {}

  /** The text of a root with at least so many wires; some findings stand, all of them notes. */
  static String of(int least) {
    BenchmarkHarness harness = new BenchmarkHarness();
    for (int block = 0; harness.wires.size() < least; block++) {
      harness.block(block);
    }
    return harness.text();
  }

  private void block(int i) {
    devices.add(
        "\"BAT%d\": {\"at\": \"a%d\", \"elements\": {\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": 12.6, \"ohms\": 0.01}}}"
            .formatted(i, i));
    devices.add(
        "\"FB%d\": {\"at\": \"a%d\", \"pins\": {\"in\": {\"family\": \"stud-m8\"}}, \"ports\": {\"out\": {\"housing\": \"box-pin\"}}, \"elements\": {%s}}"
            .formatted(
                i, i, each("\"f%1$d\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"%1$d\"}")));
    devices.add(
        "\"LB%d\": {\"at\": \"b%d\", \"ports\": {\"in\": {\"housing\": \"line-pin\"}}, \"elements\": {%s}}"
            .formatted(
                i,
                i,
                each(
                    "\"l%1$d\": {\"kind\": \"load\", \"a\": \"%1$d\", \"b\": \"%2$d\", \"amps\":"
                        + " 1.5}")));
    loads.add("\"LB" + i + "\"");
    IntStream.rangeClosed(1, CIRCUITS)
        .forEach(k -> fitted.add("\"FB" + i + ".f" + k + "\": \"blade-5\""));
    connectors.add("\"F%d\": {\"housing\": \"box-skt\", \"mates\": \"FB%d\"}".formatted(i, i));
    connectors.add(
        "\"XA%d\": {\"housing\": \"line-skt\", \"mates\": \"XB%d\", \"at\": \"m%d\"}"
            .formatted(i, i, i));
    connectors.add("\"XB%d\": {\"housing\": \"line-pin\"}".formatted(i));
    connectors.add("\"L%d\": {\"housing\": \"line-skt\", \"mates\": \"LB%d\"}".formatted(i, i));
    devices.add(
        "\"EB%d\": {\"at\": \"a%d\", \"pins\": {%s}, \"elements\": {%s}}"
            .formatted(
                i,
                i,
                "\"g\": {\"family\": \"stud-m8\"}, " + each("\"%1$d\": {\"family\": \"stud-m6\"}"),
                each("\"k%1$d\": {\"kind\": \"link\", \"a\": \"g\", \"b\": \"%1$d\"}")));
    wire("BAT" + i + ":+", "FB" + i + ":in", "w16", "RD");
    wire("EB" + i + ":g", "BAT" + i + ":-", "w16", "BK");
    for (int k = 1; k <= CIRCUITS; k++) {
      int back = k + CIRCUITS;
      wire("F" + i + ":" + k, "XA" + i + ":" + k, "w1", k == 1 ? "GN" : "RD/WH");
      wire("XB" + i + ":" + k, "L" + i + ":" + k, "w1", k == 1 ? "GN" : "RD/WH");
      wire("L" + i + ":" + back, "XB" + i + ":" + back, "w1", "BK");
      wire("XA" + i + ":" + back, "EB" + i + ":" + k, "w1", "BK");
    }
    for (String node : List.of("a", "m", "b")) {
      nodes.add("\"%s%d\": {}".formatted(node, i));
    }
    segment("am" + i, "a" + i, "m" + i);
    segment("mb" + i, "m" + i, "b" + i);
    if (i > 0) {
      segment("t" + i, "a" + (i - 1), "a" + i);
    }
  }

  private void wire(String from, String to, String part, String colour) {
    wires.add(
        "\"W%05d\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"%s\", \"colour\": \"%s\"}"
            .formatted(wires.size() + 1, from, to, part, colour));
  }

  private void segment(String id, String from, String to) {
    segments.add(
        "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"lengthMm\": 700, \"supports\": 3, \"coverings\": [\"sleeve\"]}"
            .formatted(id, from, to));
  }

  private static String each(String pattern) {
    return IntStream.rangeClosed(1, CIRCUITS)
        .mapToObj(k -> pattern.formatted(k, k + CIRCUITS))
        .collect(Collectors.joining(", "));
  }

  private static String cavities(int most) {
    return IntStream.rangeClosed(1, most)
        .mapToObj(cavity -> "\"" + cavity + "\"")
        .collect(Collectors.joining(", "));
  }

  private String text() {
    return HEAD.formatted(cavities(CIRCUITS), cavities(2 * CIRCUITS))
        + map("devices", devices)
        + map("fitted", fitted)
        + map("connectors", connectors)
        + map("wires", wires)
        + "  \"layout\": {\n  "
        + map("nodes", nodes)
        + "  "
        + map("segments", segments).strip().replaceAll(",$", "")
        + "\n  },\n  \"states\": {\"all\": {\"on\": ["
        + String.join(", ", loads)
        + "]}, \"none\": {\"on\": []}}\n}\n";
  }

  private static String map(String name, List<String> entries) {
    return entries.stream()
        .collect(Collectors.joining(",\n    ", "  \"" + name + "\": {\n    ", "\n  },\n"));
  }
}
