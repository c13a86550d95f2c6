package org.tugtest.benchmark;

import java.util.List;
import java.util.Random;

/**
 * A harness of about as many wires as asked for, the same for the same seed, and nearly clean.
 *
 * <p>A block has 49 wires: a fuse box, an inline connector pair, a box of loads, and earths on
 * studs. Ten blocks make a section with a battery, a main fuse, a bus, an earth and a relay that
 * feeds half of its blocks. The sections stand along one trunk, each a circuit of its own, so that
 * no bundle and no circuit grows with the harness. There are six states. How single circuits of any
 * size are solved is measured by {@link SolveBenchmark}.
 */
public final class GeneratedHarness {
  private static final int CIRCUITS = 12;
  private static final int SPARE = 4;
  private static final int BLOCKS = 10;
  private static final List<String> COLOURS =
      List.of("RD", "BU", "GN", "YE", "WH", "BN", "OG", "GY", "VT", "PK", "TQ", "BK");
  private static final List<String> STRIPES =
      List.of("BK", "WH", "YE", "RD", "GN", "BU", "BN", "OG", "GY", "VT", "PK", "TQ");

  private final StringBuilder devices = new StringBuilder();
  private final StringBuilder fitted = new StringBuilder();
  private final StringBuilder connectors = new StringBuilder();
  private final StringBuilder wires = new StringBuilder();
  private final StringBuilder steady = new StringBuilder();
  private final StringBuilder switched = new StringBuilder();
  private final StringBuilder relays = new StringBuilder();
  private final StringBuilder batteries = new StringBuilder();
  private final StringBuilder keysOn = new StringBuilder();
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
      if (block % BLOCKS == 0) {
        harness.section(block / BLOCKS);
      }
      harness.block(block++);
    }
    return harness.text();
  }

  /** A battery with its main fuse, bus and earth, and the relay of the switched half. */
  private void section(int s) {
    String at = "a" + s * BLOCKS;
    add(
        devices,
        """
        "BAT%1$d": {"at": "%2$s", "pins": {"+": {"family": "stud-m8"}, "-": {"family": "stud-m8"}}, \
        "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.02}}}\
        """
            .formatted(s, at));
    add(devices, fuse("MF" + s, at));
    add(devices, fuse("FK" + s, at));
    add(fitted, "\"MF%d.f\": \"bolt-40\"".formatted(s));
    add(devices, bar("BUS" + s, at, "p%d", List.of("in", "key", "relay")));
    add(devices, bar("LIVE" + s, at, "p%d", List.of("in")));
    add(devices, bar("CHASSIS" + s, at, "p%d", List.of("in", "coil")));
    add(
        devices,
        """
        "KEY%1$d": {"at": "%2$s", "pins": {"in": {"family": "stud-m6"}, "out": {"family": "stud-m6"}}, \
        "elements": {"key": {"kind": "contact", "a": "in", "b": "out"}}}\
        """
            .formatted(s, at));
    add(fitted, "\"FK%d.f\": \"blade-5\"".formatted(s));
    add(
        devices,
        """
        "K%1$d": {"at": "%2$s", "pins": {"30": {"family": "stud-m6"}, "87": {"family": "stud-m6"}, \
        "85": {"family": "stud-m6"}, "86": {"family": "stud-m6"}}, \
        "elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80}, \
        "main": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"}}}\
        """
            .formatted(s, at));
    wire("BAT" + s + ":+", "MF" + s + ":a", "w16", "RD", "battery " + s);
    wire("MF" + s + ":b", "BUS" + s + ":in", "w16", "RD", "main " + s);
    wire("BAT" + s + ":-", "CHASSIS" + s + ":in", "w16", "BK", "earth " + s);
    wire("BUS" + s + ":relay", "K" + s + ":30", "w16", "RD", "main " + s);
    wire("K" + s + ":87", "LIVE" + s + ":in", "w16", "RD", "live " + s);
    wire("BUS" + s + ":key", "FK" + s + ":a", "w4", "RD", "main " + s);
    wire("FK" + s + ":b", "KEY" + s + ":in", "w1", "YE", "key " + s);
    wire("KEY" + s + ":out", "K" + s + ":86", "w1", "YE", "key " + s);
    wire("K" + s + ":85", "CHASSIS" + s + ":coil", "w1", "BN", "earth " + s);
    listed(relays, "K" + s + ".coil");
    add(batteries, "\"BAT%d\": 13.8".formatted(s));
    add(keysOn, "\"KEY%d\": \"on\"".formatted(s));
  }

  private static String fuse(String id, String at) {
    return """
    "%s": {"at": "%s", "pins": {"a": {"family": "stud-m8"}, "b": {"family": "stud-m8"}}, \
    "elements": {"f": {"kind": "fuse", "a": "a", "b": "b"}}}\
    """
        .formatted(id, at);
  }

  private static String bar(String id, String at, String pin, List<String> others) {
    StringBuilder pins = new StringBuilder();
    StringBuilder links = new StringBuilder();
    for (String other : others) {
      add(pins, "\"%s\": {\"family\": \"stud-m8\"}".formatted(other));
      if (!other.equals("in")) {
        add(links, link(other));
      }
    }
    for (int i = 0; i < BLOCKS; i++) {
      add(pins, "\"%s\": {\"family\": \"stud-m6\"}".formatted(pin.formatted(i)));
      add(links, link(pin.formatted(i)));
    }
    return "\"%s\": {\"at\": \"%s\", \"pins\": {%s}, \"elements\": {%s}}"
        .formatted(id, at, pins, links);
  }

  private static String link(String pin) {
    return "\"to-%1$s\": {\"kind\": \"link\", \"a\": \"in\", \"b\": \"%1$s\"}".formatted(pin);
  }

  private static void listed(StringBuilder list, String id) {
    list.append(list.isEmpty() ? "" : ", ").append('"').append(id).append('"');
  }

  private void block(int i) {
    int section = i / BLOCKS;
    boolean always = i % 2 == 0;
    listed(always ? steady : switched, "LB" + i);
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
            "\"l%1$d\": {\"kind\": \"load\", \"a\": \"%1$d\", \"b\": \"%2$d\", \"amps\": 0.2}");
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
            + "}, \"boltedTo\": {\"case\": \"CHASSIS"
            + section
            + ":p"
            + i % BLOCKS
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
    String bus = (always ? "BUS" : "LIVE") + section + ":p" + i % BLOCKS;
    wire(bus, "FB" + i + ":in", "w4", "RD", "feed " + i);
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
        "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"lengthMm\": %d, \"supports\": 3, \"coverings\": [\"sleeve\"]}"
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

  /** Two rows; those of a socket housing are the mirror image, as seen from the wires. */
  private static String rows(int count, boolean mirrored) {
    StringBuilder rows = new StringBuilder();
    for (int row = 0; row < 2; row++) {
      StringBuilder cells = new StringBuilder();
      for (int k = 0; k < count / 2; k++) {
        int column = mirrored ? count / 2 - 1 - k : k;
        listed(cells, Integer.toString(1 + row * (count / 2) + column));
      }
      rows.append(row == 0 ? "[" : ", [").append(cells).append(']');
    }
    return rows.toString();
  }

  private static String housing(String id, String side, int count, String mate) {
    String terminal = side.equals("pin") ? "p15" : "s15";
    return "\"%s\": {\"side\": \"%s\", \"family\": \"t1.5\", \"rows\": [%s], \"terminals\": [\"%s\"]%s}"
        .formatted(
            id,
            side,
            rows(count + SPARE, side.equals("socket")),
            terminal,
            mate.isEmpty() ? "" : ", \"matesWith\": [\"" + mate + "\"]");
  }

  private String states() {
    String all = steady + (switched.isEmpty() ? "" : ", " + switched) + ", " + relays;
    return """
    "key off": {"on": [%1$s]},
        "all on": {"set": {%3$s}, "on": [%2$s]},
        "charging": {"set": {%3$s}, "on": [%2$s], "volts": {%4$s}},
        "charging with the key off": {"on": [%1$s], "volts": {%4$s}},
        "all on briefly": {"set": {%3$s}, "on": [%2$s], "brief": true},
        "key off briefly": {"on": [%1$s], "brief": true}\
    """
        .formatted(steady, all, keysOn, batteries);
  }

  private String text() {
    return """
    {
      "format": 1, "title": "Generated harness",
      "parts": {
        "wires": {"w1": {"areaMm2": 1.0, "maxC": 125}, "w4": {"areaMm2": 4.0, "maxC": 125},
                  "w16": {"areaMm2": 16.0, "maxC": 125}},
        "fuses": {"blade-5": {"ratingA": 5, "style": "blade-mini"},
                  "bolt-40": {"ratingA": 40, "style": "bolt-m8"}},
        "coverings": {"sleeve": {"kind": "braided-sleeve", "innerMinMm": 1, "innerMaxMm": 30,
                                 "wallMm": 0.6, "maxC": 150, "gramsPerM": 20}},
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
      "devices": {%s
      },
      "fitted": {%s
      },
      "connectors": {%s
      },
      "wires": {%s
      },
      "layout": {
        "nodes": {%s
        },
        "segments": {%s
        }
      },
      "states": {
        %s
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
            devices,
            fitted,
            connectors,
            wires,
            nodes,
            segments,
            states());
  }
}
