package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

/**
 * A loom for tests, said in plain lists so that nothing is taken from what is tested: wires with
 * their seats, and the housing of each connector.
 */
record Loom(Map<String, Wire> wires, Map<String, String> housings, Map<String, Boolean> blanked) {
  /** A wire. */
  record Wire(String from, String to, String colour) {}

  /** Cavities of each housing with their families. */
  static final Map<String, Map<String, String>> HOUSINGS = new TreeMap<>();

  static {
    HOUSINGS.put("small", cavities(6, "t1.5"));
    HOUSINGS.put("small2", cavities(6, "t1.5"));
    Map<String, String> mixed = cavities(8, "t1.5");
    mixed.put("7", "t2.8");
    mixed.put("8", "t2.8");
    HOUSINGS.put("mixed", mixed);
    HOUSINGS.put("wide", cavities(3, "t2.8"));
    HOUSINGS.put("double", cavities(2, "t6"));
  }

  private static Map<String, String> cavities(int count, String family) {
    Map<String, String> cavities = new LinkedHashMap<>();
    for (int i = 1; i <= count; i++) {
      cavities.put(String.valueOf(i), family);
    }
    return cavities;
  }

  static String familyAt(Map<String, String> housings, String seat) {
    String owner = seat.substring(0, seat.indexOf(':'));
    return HOUSINGS.get(housings.get(owner)).get(seat.substring(seat.indexOf(':') + 1));
  }

  /** How many ends may sit there. */
  static int room(String seat) {
    if (seat.startsWith("S") || seat.equals("E:stud")) {
      return 99;
    }
    return seat.startsWith("D:") ? 2 : 1;
  }

  static Loom random(Random random) {
    Map<String, String> housings =
        new TreeMap<>(Map.of("A", "small", "B", "mixed", "C", "wide", "D", "double"));
    Loom loom = new Loom(new TreeMap<>(), housings, blanks(random));
    int count = 1 + random.nextInt(12);
    for (int i = 0; i < count; i++) {
      loom.add("W" + i, random);
    }
    return loom;
  }

  private static Map<String, Boolean> blanks(Random random) {
    Map<String, Boolean> blanks = new TreeMap<>();
    for (String connector : List.of("A", "B", "C", "D", "F")) {
      blanks.put(connector, random.nextInt(3) == 0);
    }
    return blanks;
  }

  private void add(String id, Random random) {
    wires.put(id, new Wire("", "", "RD"));
    String from = free(random);
    wires.put(id, new Wire(from, "", random.nextBoolean() ? "RD" : "BU"));
    wires.put(id, new Wire(from, free(random), wires.get(id).colour()));
  }

  private String free(Random random) {
    List<String> seats = new ArrayList<>(List.of("S1", "S2", "S3", "E:stud", "E:stud", "E:blade"));
    housings.forEach(
        (connector, housing) ->
            HOUSINGS.get(housing).keySet().forEach(cavity -> seats.add(connector + ":" + cavity)));
    while (true) {
      String seat = seats.get(random.nextInt(seats.size()));
      if (held(seat) < room(seat)) {
        return seat;
      }
    }
  }

  private long held(String seat) {
    return wires.values().stream()
        .flatMap(w -> Stream.of(w.from(), w.to()))
        .filter(seat::equals)
        .count();
  }

  /** Another loom that this one shall become. */
  Loom changed(Random random) {
    Map<String, String> other = new TreeMap<>(housings);
    if (random.nextInt(4) == 0) {
      other.put("A", "small2");
    }
    if (random.nextInt(4) == 0) {
      other.remove("C");
      other.put("F", "mixed");
    }
    Loom loom = new Loom(new TreeMap<>(), other, random.nextBoolean() ? blanked : blanks(random));
    double moving = random.nextDouble();
    List<String> ids = new ArrayList<>(wires.keySet());
    Collections.shuffle(ids, random);
    for (String id : ids) {
      if (random.nextInt(8) > 0) {
        Wire is = wires.get(id);
        loom.wires.put(id, new Wire("", "", "RD"));
        String from = loom.keepOrMove(is.from(), random, moving);
        loom.wires.put(id, new Wire(from, "", "RD"));
        String to = loom.keepOrMove(is.to(), random, moving);
        String colour = random.nextInt(12) == 0 ? "GN" : is.colour();
        loom.wires.put(
            id, random.nextInt(5) == 0 ? new Wire(to, from, colour) : new Wire(from, to, colour));
      }
    }
    for (int i = random.nextInt(4); i > 0; i--) {
      loom.add("N" + i, random);
    }
    return loom;
  }

  private String keepOrMove(String seat, Random random, double moving) {
    boolean there =
        !seat.contains(":")
            || seat.startsWith("E:")
            || HOUSINGS
                .getOrDefault(housings.getOrDefault(seat.substring(0, 1), ""), Map.of())
                .containsKey(seat.substring(2));
    return there && held(seat) < room(seat) && random.nextDouble() >= moving ? seat : free(random);
  }

  Facts facts() {
    return Judged.facts(Map.of(Judged.ROOT, json()));
  }

  String json() {
    String parts =
        HOUSINGS.entrySet().stream()
            .map(h -> housing(h.getKey(), h.getValue()))
            .collect(Collectors.joining(",\n"));
    String connectors =
        housings.entrySet().stream()
            .map(
                c ->
                    "\"%s\": {\"housing\": \"%s\", \"blanked\": %s}"
                        .formatted(c.getKey(), c.getValue(), blanked.get(c.getKey())))
            .collect(Collectors.joining(", "));
    String lines =
        wires.entrySet().stream()
            .map(
                w ->
                    "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 0.5, \"colour\": \"%s\"}"
                        .formatted(
                            w.getKey(),
                            w.getValue().from(),
                            w.getValue().to(),
                            w.getValue().colour()))
            .collect(Collectors.joining(",\n"));
    return """
    {"format": 1, "parts": {"housings": {%s},
      "terminals": {
       "t1.5-s": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.2, "areaMaxMm2": 3},
       "t2.8-s": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.2, "areaMaxMm2": 3},
       "t6-s": {"family": "t6", "side": "socket", "areaMinMm2": 0.2, "areaMaxMm2": 3, "maxWires": 2}}},
     "devices": {"E": {"pins": {"stud": {"family": "stud-m6", "maxTerminals": 99}, "blade": {"family": "b6.3", "side": "pin"}}}},
     "connectors": {%s}, "splices": {"S1": {}, "S2": {}, "S3": {}},
     "wires": {%s}}
    """
        .formatted(parts, connectors, lines);
  }

  private static String housing(String id, Map<String, String> cavities) {
    String row =
        cavities.keySet().stream().map(c -> "\"" + c + "\"").collect(Collectors.joining(", "));
    String families =
        cavities.entrySet().stream()
            .map(c -> "\"%s\": {\"family\": \"%s\"}".formatted(c.getKey(), c.getValue()))
            .collect(Collectors.joining(", "));
    return "\"%1$s\": {\"side\": \"socket\", \"keying\": \"%1$s\", \"rows\": [[%2$s]], \"cavities\": {%3$s}, \"secondaryLock\": true, \"terminals\": [\"t1.5-s\", \"t2.8-s\", \"t6-s\"]}"
        .formatted(id, row, families);
  }
}
