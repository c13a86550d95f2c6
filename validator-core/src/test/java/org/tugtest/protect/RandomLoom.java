package org.tugtest.protect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

/** A random loom: a feed tree with fuses and some rings, loads, and a return tree with rings. */
final class RandomLoom {
  private final Random random;
  final List<Integer> cutMm = new ArrayList<>();
  private final List<String> wireEnds = new ArrayList<>();
  private final StringBuilder devices = new StringBuilder();

  RandomLoom(long seed, boolean alternator) {
    random = new Random(seed);
    device(
        "BAT",
        "\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": 12.6,"
            + " \"ohms\": 0.012, \"chargeOhms\": 0.012}");
    int feeds = 4 + random.nextInt(25);
    int returns = 1 + random.nextInt(8);
    wire("BAT:+", "N0");
    wire("BAT:-", "R0");
    for (int i = 1; i < feeds; i++) {
      joinFeed(i, random.nextInt(i));
    }
    for (int i = 1; i < returns; i++) {
      wire("R" + i, "R" + random.nextInt(i));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      joinFeed(random.nextInt(feeds), random.nextInt(feeds));
      wire("R" + random.nextInt(returns), "R" + random.nextInt(returns));
    }
    if (alternator && random.nextInt(2) == 0) {
      device(
          "ALT",
          "\"g\": {\"kind\": \"source\", \"plus\": \"B\", \"minus\": \"E\", \"volts\": 14.4,"
              + " \"ohms\": 0.03, \"generator\": true}");
      wire("ALT:B", "N" + random.nextInt(feeds));
      wire("ALT:E", "R" + random.nextInt(returns));
    }
    for (int i = 0; i < feeds; i++) {
      device("L" + i, "\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"amps\": 1}");
      wire("N" + i, "L" + i + ":1");
      wire("L" + i + ":2", "R" + random.nextInt(returns));
    }
  }

  private void joinFeed(int one, int other) {
    if (one != other && random.nextInt(3) == 0) {
      String fuse = "F" + wireEnds.size();
      device(
          fuse,
          "\"f\": {\"kind\": \"fuse\", \"a\": \"i\", \"b\": \"o\", \"ratingA\": "
              + (5 + 5 * random.nextInt(4))
              + ", \"style\": \"blade-mini\"}");
      wire("N" + other, fuse + ":i");
      wire(fuse + ":o", "N" + one);
    } else {
      wire("N" + other, "N" + one);
    }
  }

  private void device(String id, String elements) {
    devices.append(devices.isEmpty() ? "" : ",\n");
    devices.append("\"%s\": {\"elements\": {%s}}".formatted(id, elements));
  }

  private void wire(String from, String to) {
    double area = new double[] {0.5, 1, 2.5, 6}[random.nextInt(4)];
    wireEnds.add(
        String.format(
            Locale.ROOT, "\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": %.1f", from, to, area));
    cutMm.add(100 + random.nextInt(4000));
  }

  /** The facts of it as it is now. */
  Facts facts() {
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < wireEnds.size(); i++) {
      wires.append(i == 0 ? "" : ",\n");
      wires.append("\"W%d\": {%s, \"cutMm\": %d}".formatted(i, wireEnds.get(i), cutMm.get(i)));
    }
    return Judged.facts(
        Map.of(
            Judged.ROOT,
            "{\"format\": 1, \"sketch\": true, \"devices\": {%s}, \"wires\": {%s}}"
                .formatted(devices, wires)));
  }
}
