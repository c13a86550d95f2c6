package org.tugtest.protect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

/**
 * A small random network on the pins of one device, kept in a plain form of its own so that tests
 * can work out by trying everything what the checked code computes cleverly.
 */
final class RandomCar {
  static final double[] RATINGS = {2, 3, 5, 7.5, 10, 15, 20, 30};

  /** Something between two pins. */
  record Link(String kind, String name, int a, int b, double amps, int position) {}

  final int pins;
  final List<Link> links = new ArrayList<>();

  /** Pins without anything between them. */
  RandomCar(int pins) {
    this.pins = pins;
  }

  /** The feed side of a car: wires, fuses, sources to a common minus that nothing else joins. */
  static RandomCar feed(Random random) {
    int pins = 4 + random.nextInt(7);
    RandomCar car = new RandomCar(pins + 1);
    int minus = pins;
    int sources = 1 + random.nextInt(3);
    for (int i = 0; i < sources; i++) {
      double most = random.nextInt(3) == 0 ? RATINGS[random.nextInt(RATINGS.length)] : 0;
      car.add("source", random.nextInt(pins), minus, most, 0);
    }
    int wires = 2 + random.nextInt(pins + 2);
    for (int i = 0; i < wires; i++) {
      car.add("wire", random.nextInt(pins), random.nextInt(pins), 0, 0);
    }
    int fuses = 1 + random.nextInt(7);
    for (int i = 0; i < fuses; i++) {
      double rating = RATINGS[random.nextInt(RATINGS.length)];
      car.add("fuse", random.nextInt(pins), random.nextInt(pins), rating, 0);
    }
    if (random.nextInt(3) == 0) {
      car.add("diode", random.nextInt(pins), random.nextInt(pins), 0, 0);
    }
    if (random.nextInt(3) == 0) {
      int common = random.nextInt(pins);
      car.add("contact", common, random.nextInt(pins), 0, 0);
      car.add("contact", common, random.nextInt(pins), 0, 1);
    }
    return car;
  }

  void add(String kind, int a, int b, double amps, int position) {
    if (a != b) {
      links.add(new Link(kind, kind.charAt(0) + "" + links.size(), a, b, amps, position));
    }
  }

  List<Link> of(String kind) {
    return links.stream().filter(link -> link.kind().equals(kind)).toList();
  }

  Facts facts() {
    return Judged.facts(Map.of(Judged.ROOT, json()));
  }

  String json() {
    StringBuilder names = new StringBuilder();
    for (int i = 0; i < pins; i++) {
      names.append(i == 0 ? "" : ", ").append("\"p").append(i).append("\": {}");
    }
    StringBuilder elements = new StringBuilder();
    StringBuilder wires = new StringBuilder();
    for (Link link : links) {
      String text = link.kind().equals("wire") ? null : element(link);
      if (text == null) {
        wires.append(wires.isEmpty() ? "" : ",\n");
        wires.append(
            "\"%s\": {\"from\": \"D:p%d\", \"to\": \"D:p%d\", \"areaMm2\": 1}"
                .formatted(link.name(), link.a(), link.b()));
      } else {
        elements.append(elements.isEmpty() ? "" : ",\n").append(text);
      }
    }
    return """
    {"format": 1,
     "devices": {"D": {"pins": {%s}, "positions": ["0", "1"], "elements": {%s}}},
     "wires": {%s}}
    """
        .formatted(names, elements, wires);
  }

  private static @Nullable String element(Link link) {
    String ends = "\"a\": \"p%d\", \"b\": \"p%d\"".formatted(link.a(), link.b());
    String more =
        switch (link.kind()) {
          case "source" ->
              "\"plus\": \"p%d\", \"minus\": \"p%d\"".formatted(link.a(), link.b())
                  + (link.amps() > 0
                      ? ", \"selfLimiting\": true, \"maxA\": " + number(link.amps())
                      : "");
          case "fuse" -> ends + ", \"ratingA\": " + number(link.amps());
          case "contact" -> ends + ", \"closedIn\": [\"" + link.position() + "\"]";
          case "load" -> ends + ", \"amps\": 1";
          default -> ends;
        };
    return "\"%s\": {\"kind\": \"%s\", %s}".formatted(link.name(), link.kind(), more);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
