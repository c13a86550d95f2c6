package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

/**
 * A small random vehicle with all that can go another way under a fault: relays with and without
 * diodes, some fed through their own contacts, switches, trips, loads of every kind, rings, plugs
 * and earths, an isolator, an alternator, a second battery.
 */
final class RandomVehicle {
  private final Random random;
  private final StringBuilder devices = new StringBuilder();
  private final StringBuilder connectors = new StringBuilder();
  private final StringBuilder wires = new StringBuilder();
  private final List<String> feeds = new ArrayList<>();
  private final List<String> earths = new ArrayList<>();
  private final List<String> users = new ArrayList<>();
  private final List<String> switches = new ArrayList<>();
  private int wireCount;
  private final boolean alternator;

  RandomVehicle(long seed) {
    random = new Random(seed);
    device(
        "BAT",
        "\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": 12.6,"
            + " \"ohms\": 0.02}");
    device(
        "ISO", "\"main\": {\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\", \"isolator\": true}");
    wire("BAT:+", "ISO:1");
    feeds.add("ISO:2");
    earths.add("BAT:-");
    for (int i = 0; i < 2; i++) {
      devices.append(",\n\"E%d\": {\"pins\": {\"m6\": {\"family\": \"stud-m6\"}}}".formatted(i));
      wire("E" + i + ":m6", earths.get(random.nextInt(earths.size())));
      earths.add("E" + i + ":m6");
    }
    alternator = random.nextInt(2) == 0;
    if (alternator) {
      device(
          "ALT",
          "\"g\": {\"kind\": \"source\", \"plus\": \"B\", \"minus\": \"E\", \"volts\": 14.2,"
              + " \"ohms\": 0.05, \"maxA\": 60, \"generator\": true}");
      wire("ALT:B", random.nextBoolean() ? "BAT:+" : "ISO:2");
      wire("ALT:E", earth());
    }
    if (random.nextInt(4) == 0) {
      device(
          "AUX",
          "\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": 12.2,"
              + " \"ohms\": 0.03}");
      wire("AUX:+", feed());
      wire("AUX:-", earth());
    }
    int steps = 4 + random.nextInt(8);
    for (int i = 0; i < steps; i++) {
      step(i);
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      wire(feed(), feed());
    }
  }

  private void step(int i) {
    int kind = random.nextInt(10);
    if (kind < 2) {
      device(
          "F" + i,
          "\"f\": {\"kind\": \"fuse\", \"a\": \"i\", \"b\": \"o\", \"ratingA\": 15%s}"
              .formatted(random.nextBoolean() ? "" : ", \"electronic\": true"));
      wire(feed(), "F" + i + ":i");
      feeds.add("F" + i + ":o");
    } else if (kind < 3) {
      device("S" + i, "\"c\": {\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\"}");
      wire(feed(), "S" + i + ":1");
      feeds.add("S" + i + ":2");
      switches.add("S" + i);
    } else if (kind < 4) {
      device("D" + i, "\"d\": {\"kind\": \"diode\", \"a\": \"1\", \"b\": \"2\"}");
      wire(feed(), "D" + i + ":1");
      feeds.add("D" + i + ":2");
    } else if (kind < 6) {
      relay(i);
    } else {
      user(i);
    }
  }

  private void relay(int i) {
    String diode =
        random.nextBoolean() ? ", \"d\": {\"kind\": \"diode\", \"a\": \"85\", \"b\": \"86\"}" : "";
    String rest = random.nextInt(4) == 0 ? "closed" : "open";
    device(
        "K" + i,
        "\"coil\": {\"kind\": \"coil\", \"a\": \"86\", \"b\": \"85\", \"ohms\": 80}, \"c\":"
            + " {\"kind\": \"contact\", \"a\": \"30\", \"b\": \"87\", \"coil\": \"coil\", \"rest\":"
            + " \""
            + rest
            + "\"}"
            + diode);
    wire(feed(), "K" + i + ":30");
    feeds.add("K" + i + ":87");
    wire(feed(), "K" + i + ":86");
    wire("K" + i + ":85", earth());
    users.add("K" + i + ".coil");
  }

  private void user(int i) {
    double watts = 2 + random.nextInt(60);
    String draws =
        List.of(
                "\"amps\": " + number(watts / 12),
                "\"watts\": " + number(watts),
                "\"watts\": " + number(watts) + ", \"atVolts\": 12",
                "\"ohms\": " + number(144 / watts))
            .get(random.nextInt(4));
    String least = random.nextInt(3) == 0 ? ", \"minV\": 9" : "";
    String load = "\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", " + draws + least + "}";
    if (random.nextInt(3) == 0) {
      devices.append(
          ",\n\"L%d\": {\"ports\": {\"plug\": {\"housing\": \"p\"}}, \"elements\": {%s}}"
              .formatted(i, load));
      connectors.append(connectors.isEmpty() ? "" : ", ");
      connectors.append("\"X%1$d\": {\"housing\": \"s\", \"mates\": \"L%1$d\"}".formatted(i));
      wire(feed(), "X" + i + ":1");
      wire("X" + i + ":2", earth());
    } else {
      device("L" + i, load);
      wire(feed(), "L" + i + ":1");
      wire("L" + i + ":2", earth());
    }
    users.add("L" + i);
  }

  private String feed() {
    return feeds.get(random.nextInt(feeds.size()));
  }

  private String earth() {
    return earths.get(random.nextInt(earths.size()));
  }

  private void device(String id, String elements) {
    devices.append(devices.isEmpty() ? "" : ",\n");
    devices.append("\"%s\": {\"elements\": {%s}}".formatted(id, elements));
  }

  private void wire(String from, String to) {
    wires.append(wires.isEmpty() ? "" : ",\n");
    wires.append(
        "\"W%d\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": %s, \"cutMm\": %d}"
            .formatted(
                wireCount++,
                from,
                to,
                List.of("0.5", "1", "4").get(random.nextInt(3)),
                100 + random.nextInt(4000)));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  private String state(String isolator) {
    StringBuilder set = new StringBuilder("\"ISO\": \"" + isolator + "\"");
    switches.forEach(
        id -> set.append(", \"%s\": \"%s\"".formatted(id, random.nextBoolean() ? "on" : "off")));
    List<String> on =
        users.stream().filter(user -> random.nextInt(4) > 0).map(user -> '"' + user + '"').toList();
    return "{\"set\": {%s}, \"on\": [%s]%s}"
        .formatted(
            set,
            String.join(", ", on),
            alternator && random.nextBoolean() ? ", \"running\": [\"ALT\"]" : "");
  }

  Facts facts() {
    return Judged.facts(
        Map.of(
            Judged.ROOT,
            """
            {"format": 1, "sketch": true,
             "parts": {"housings": {"s": {"side": "socket", "family": "t1.5", "rows": [["1", "2"]]},
                                    "p": {"side": "pin", "family": "t1.5", "rows": [["2", "1"]]}}},
             "devices": {%s}, "connectors": {%s}, "wires": {%s},
             "states": {"one": %s, "two": %s, "stopped": %s}}
            """
                .formatted(devices, connectors, wires, state("on"), state("on"), state("off"))));
  }
}
