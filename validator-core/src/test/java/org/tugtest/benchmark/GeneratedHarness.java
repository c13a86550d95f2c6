package org.tugtest.benchmark;

import java.util.List;
import java.util.Random;

/**
 * A harness of about as many wires as asked for, the same for the same seed, and clean: blocks of
 * 49 wires, each a fuse box, an inline connector pair, a box of loads, and earths on studs.
 */
public final class GeneratedHarness {
  private static final int CIRCUITS = 12;
  private static final List<String> COLOURS =
      List.of("RD", "BU", "GN", "YE", "WH", "BN", "OG", "GY", "VT", "PK", "TQ", "BK");
  private static final List<String> STRIPES =
      List.of("BK", "WH", "YE", "RD", "GN", "BU", "BN", "OG", "GY", "VT", "PK", "TQ");

  private final StringBuilder devices = new StringBuilder();
  private final StringBuilder fitted = new StringBuilder();
  private final StringBuilder connectors = new StringBuilder();
  private final StringBuilder wires = new StringBuilder();
  private final StringBuilder nodes = new StringBuilder();
  private final StringBuilder segments = new StringBuilder();
  private final Random random;
  private int wireCount;

  private GeneratedHarness(long seed) {
    random = new Random(seed);
  }

  /** The text of a root file with at least {@code least} wires. */
  public static String of(int least, long seed) {
    GeneratedHarness harness = new GeneratedHarness(seed);
    int block = 0;
    while (harness.wireCount < least) {
      harness.block(block++);
    }
    return harness.text(block);
  }

  private void block(int i) {
    String ways =
        numbered(CIRCUITS, "\"f%1$d\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"%1$d\"}");
    add(
        devices,
        "\"FB%d\": {\"at\": \"a%d\", \"pins\": {\"in\": {\"family\": \"stud-m6\"}}, \"ports\": {\"out\":"
                .formatted(i, i)
            + " {\"housing\": \"box-pin\"}}, \"elements\": {"
            + ways
            + "}}");
    String loads =
        numbered(
            CIRCUITS,
            "\"l%1$d\": {\"kind\": \"load\", \"a\": \"%1$d\", \"b\": \"%2$d\", \"amps\": 2.5}");
    add(
        devices,
        "\"LB%d\": {\"at\": \"b%d\", \"ports\": {\"in\": {\"housing\": \"load-pin\"}}, \"elements\": {"
                .formatted(i, i)
            + loads
            + "}}");
    String studs = numbered(CIRCUITS / 4, "\"e%1$d\": {\"family\": \"stud-m6\"}");
    String bars =
        numbered(
            CIRCUITS / 4, "\"k%1$d\": {\"kind\": \"link\", \"a\": \"e%1$d\", \"b\": \"case\"}");
    add(
        devices,
        "\"EB%d\": {\"at\": \"a%d\", \"pins\": {\"case\": {\"family\": \"face\"}, %s}, "
                .formatted(i, i, studs)
            + "\"elements\": {"
            + bars
            + "}, \"boltedTo\": {\"case\": \"CHASSIS:p"
            + i
            + "\"}}");
    for (int k = 1; k <= CIRCUITS; k++) {
      add(fitted, "\"FB%d.f%d\": \"blade-5\"".formatted(i, k));
    }
    add(connectors, "\"F%d\": {\"housing\": \"box-skt\", \"mates\": \"FB%d\"}".formatted(i, i));
    add(
        connectors,
        "\"XA%d\": {\"housing\": \"line-skt\", \"mates\": \"XB%d\", \"at\": \"m%d\"}"
            .formatted(i, i, i));
    add(connectors, "\"XB%d\": {\"housing\": \"line-pin\"}".formatted(i));
    add(connectors, "\"L%d\": {\"housing\": \"load-skt\", \"mates\": \"LB%d\"}".formatted(i, i));
    wire("BUS:p" + i, "FB" + i + ":in", "w4", "RD", "feed " + i);
    for (int k = 1; k <= CIRCUITS; k++) {
      String colour = COLOURS.get(k - 1) + "/" + stripe(k);
      String feed = "c" + i + "." + k;
      wire("F" + i + ":" + k, "XA" + i + ":" + k, "w1", colour, feed);
      wire("XB" + i + ":" + k, "L" + i + ":" + k, "w1", colour, feed);
      int back = k + CIRCUITS;
      String drawn = COLOURS.get(k - 1);
      wire("L" + i + ":" + back, "XB" + i + ":" + back, "w1", drawn, "return " + feed);
      wire(
          "XA" + i + ":" + back,
          "EB" + i + ":e" + (1 + (k - 1) / 4),
          "w1",
          drawn,
          "return " + feed);
    }
    for (String node : List.of("a", "m", "b")) {
      add(nodes, "\"%s%d\": {}".formatted(node, i));
    }
    segment("am" + i, "a" + i, "m" + i);
    segment("mb" + i, "m" + i, "b" + i);
    if (i > 0) {
      segment("t" + i, "a" + (i - 1), "a" + i);
    }
  }

  private static String stripe(int k) {
    String stripe = STRIPES.get(k - 1);
    return stripe.equals(COLOURS.get(k - 1)) ? "WH" : stripe;
  }

  private void wire(String from, String to, String part, String colour, String circuit) {
    wireCount++;
    add(
        wires,
        "\"W%06d\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"%s\", \"colour\": \"%s\", \"circuit\": \"%s\"}"
            .formatted(wireCount, from, to, part, colour, circuit));
  }

  private void segment(String id, String from, String to) {
    add(
        segments,
        "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"lengthMm\": %d, \"supports\": 3}"
            .formatted(id, from, to, 300 + random.nextInt(600)));
  }

  private static String numbered(int count, String pattern) {
    StringBuilder list = new StringBuilder();
    for (int k = 1; k <= count; k++) {
      list.append(k == 1 ? "" : ", ").append(pattern.formatted(k, k + CIRCUITS));
    }
    return list.toString();
  }

  private static void add(StringBuilder section, String entry) {
    section.append(section.isEmpty() ? "\n    " : ",\n    ").append(entry);
  }

  private static String rows(int count) {
    StringBuilder row = new StringBuilder();
    for (int k = 1; k <= count; k++) {
      row.append(k == 1 ? "" : ", ").append('"').append(k).append('"');
    }
    return row.toString();
  }

  private static String housing(String id, String side, int count, String mate) {
    String terminal = side.equals("pin") ? "p15" : "s15";
    return "\"%s\": {\"side\": \"%s\", \"family\": \"t1.5\", \"rows\": [[%s]], \"terminals\": [\"%s\"]%s}"
        .formatted(
            id,
            side,
            rows(count),
            terminal,
            mate.isEmpty() ? "" : ", \"matesWith\": [\"" + mate + "\"]");
  }

  private String text(int blocks) {
    StringBuilder pins = new StringBuilder();
    StringBuilder bus = new StringBuilder();
    for (int i = 0; i < blocks; i++) {
      pins.append(i == 0 ? "" : ", ").append("\"p%d\": {\"family\": \"stud-m6\"}".formatted(i));
      bus.append(", \"k%d\": {\"kind\": \"link\", \"a\": \"in\", \"b\": \"p%d\"}".formatted(i, i));
    }
    String bars = bus.substring(2);
    return """
        {
          "format": 1, "title": "Generated harness",
          "parts": {
            "wires": {"w1": {"areaMm2": 1.0, "maxC": 125}, "w4": {"areaMm2": 4.0, "maxC": 125},
                      "w16": {"areaMm2": 16.0, "maxC": 125}},
            "fuses": {"blade-5": {"ratingA": 5, "style": "blade-mini"}},
            "terminals": {
              "s15": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 1.5},
              "p15": {"family": "t1.5", "side": "pin", "areaMinMm2": 0.35, "areaMaxMm2": 1.5}},
            "housings": {
              %s,
              %s,
              %s,
              %s,
              %s,
              %s}
          },
          "devices": {
            "BAT": {"pins": {"+": {"family": "stud-m8"}, "-": {"family": "stud-m8"}}, "at": "a0",
              "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
            "BUS": {"at": "a0", "pins": {"in": {"family": "stud-m8"}, %s}, "elements": {%s}},
            "CHASSIS": {"at": "a0", "pins": {"in": {"family": "stud-m8"}, %s}, "elements": {%s}},%s
          },
          "fitted": {%s
          },
          "connectors": {%s
          },
          "wires": {
            "BAT-PLUS": {"from": "BAT:+", "to": "BUS:in", "part": "w16", "colour": "RD"},
            "BAT-MINUS": {"from": "BAT:-", "to": "CHASSIS:in", "part": "w16", "colour": "BK"},%s
          },
          "layout": {
            "nodes": {%s
            },
            "segments": {%s
            }
          }
        }
        """
        .formatted(
            housing("box-pin", "pin", CIRCUITS, ""),
            housing("box-skt", "socket", CIRCUITS, "box-pin"),
            housing("line-pin", "pin", 2 * CIRCUITS, ""),
            housing("line-skt", "socket", 2 * CIRCUITS, "line-pin"),
            housing("load-pin", "pin", 2 * CIRCUITS, ""),
            housing("load-skt", "socket", 2 * CIRCUITS, "load-pin"),
            pins,
            bars,
            pins,
            bars,
            devices,
            fitted,
            connectors,
            wires,
            nodes,
            segments);
  }
}
