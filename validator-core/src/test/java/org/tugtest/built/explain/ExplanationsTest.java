package org.tugtest.built.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.model.Reading;
import org.tugtest.model.Ref;
import org.tugtest.rule.Judged;
import org.tugtest.text.Place;

class ExplanationsTest {
  private static final String HEAD =
      """
      {"format": 1, "parts": {"housings": {"h": {"side": "socket", "rows": [["1", "2", "3"], ["4", "5", "6"]]}, "p": {"side": "pin", "rows": [["1", "2", "3"], ["4", "5", "6"]]}}},
       "connectors": {"A": {"housing": "h", "mates": "M"}, "M": {"housing": "p"}, "B": {"housing": "h"}, "C": {"housing": "h"}, "Y": {"housing": "h"}, "Z": {"housing": "h"}},
       "splices": {"S1": {}, "S2": {}},
      """;
  private static final Map<String, String[]> WIRES = new LinkedHashMap<>();

  static {
    WIRES.put("W1", new String[] {"A:1", "B:1"});
    WIRES.put("W2", new String[] {"A:2", "B:2"});
    WIRES.put("W3", new String[] {"A:3", "S1"});
    WIRES.put("W4", new String[] {"S1", "B:3"});
    WIRES.put("W5", new String[] {"S1", "C:1"});
    WIRES.put("W6", new String[] {"M:1", "C:2"});
    WIRES.put("W7", new String[] {"M:2", "C:3"});
    WIRES.put("W8", new String[] {"B:5", "C:5"});
    WIRES.put("W9", new String[] {"B:6", "C:6"});
    WIRES.put("W10", new String[] {"M:3", "C:4"});
    WIRES.put("Z1", new String[] {"Y:1", "Z:1"});
  }

  private static Facts facts() {
    String wires =
        WIRES.entrySet().stream()
            .map(
                w ->
                    "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}"
                        .formatted(w.getKey(), w.getValue()[0], w.getValue()[1]))
            .collect(Collectors.joining(", "));
    return Judged.facts(Map.of(Judged.ROOT, HEAD + "\"wires\": {" + wires + "}}"));
  }

  /** A loom as it may be in truth, in plain maps. */
  private record Truth(Map<String, String[]> wires, List<String[]> joints) {
    static Truth planned() {
      Map<String, String[]> wires = new LinkedHashMap<>();
      WIRES.forEach((id, ends) -> wires.put(id, ends.clone()));
      List<String[]> joints = new ArrayList<>();
      for (int i = 1; i <= 6; i++) {
        joints.add(new String[] {"A:" + i, "M:" + i});
      }
      return new Truth(wires, joints);
    }

    Truth exchanged(String one, String other) {
      for (String[] ends : wires.values()) {
        for (int i = 0; i < 2; i++) {
          ends[i] = ends[i].equals(one) ? other : ends[i].equals(other) ? one : ends[i];
        }
      }
      return this;
    }

    Truth without(String wire) {
      wires.remove(wire);
      return this;
    }

    Truth touching(String one, String other) {
      joints.add(new String[] {one, other});
      return this;
    }

    boolean joined(String from, String to) {
      Map<String, String> net = new HashMap<>();
      List<String[]> pairs = new ArrayList<>(wires.values());
      pairs.addAll(joints);
      pairs.forEach(pair -> List.of(pair).forEach(p -> net.put(p, p)));
      for (boolean more = true; more; ) {
        more = false;
        for (String[] pair : pairs) {
          String least =
              net.get(pair[0]).compareTo(net.get(pair[1])) < 0
                  ? net.get(pair[0])
                  : net.get(pair[1]);
          more |= !net.put(pair[0], least).equals(least);
          more |= !net.put(pair[1], least).equals(least);
        }
      }
      return from.equals(to) || (net.containsKey(from) && net.get(from).equals(net.get(to)));
    }
  }

  private static Explanations.Shown shown(
      Facts facts, String from, String to, boolean joined, int line) {
    Reading reading =
        new Reading(Ref.parse(from), Ref.parse(to), null, joined, null, null, null, null);
    return new Explanations.Shown(
        new TakenReading(
            reading,
            facts.wiring().pointOf(reading.from()).orElseThrow(),
            facts.wiring().pointOf(reading.to()).orElseThrow(),
            Place.point("readings/x.csv", line, 1, "")),
        joined);
  }

  private static List<Explanations.Shown> read(Facts facts, Truth truth, String... pairs) {
    List<Explanations.Shown> readings = new ArrayList<>();
    for (String pair : pairs) {
      String[] ends = pair.split(" ", -1);
      readings.add(
          shown(facts, ends[0], ends[1], truth.joined(ends[0], ends[1]), readings.size() + 2));
    }
    return readings;
  }

  private static final String[] LIST = {
    "A:1 B:1", "A:2 B:2", "A:3 B:3", "B:3 C:1", "A:1 C:2", "A:2 C:3", "B:5 C:5", "B:6 C:6",
    "B:1 B:2", "B:2 B:3", "C:1 C:2", "C:2 C:3", "B:5 B:6", "C:5 C:6", "A:1 A:2", "A:2 A:3",
    "A:3 C:4", "Y:1 Z:1"
  };

  private static List<String> first(List<Explanation> explanations) {
    return explanations.stream()
        .map(
            e ->
                e.sets().isEmpty()
                    ? "nothing"
                    : e.sets().get(0).stream().map(Suspect::what).collect(Collectors.joining("; ")))
        .toList();
  }

  @Test
  void readingsThatAgreeNeedNoExplanation() {
    Facts facts = facts();
    assertThat(Explanations.of(facts, read(facts, Truth.planned(), LIST))).isEmpty();
    assertThat(Explanations.of(facts, List.of())).isEmpty();
  }

  @Test
  void exchangedNeighboursAreFound() {
    Facts facts = facts();
    List<Explanation> found =
        Explanations.of(facts, read(facts, Truth.planned().exchanged("B:1", "B:2"), LIST));
    assertThat(first(found))
        .as("in A or in B: a meter shows the same")
        .containsExactly("W1 and W2 are exchanged in A (cavities 1 and 2, side by side)");
    assertThat(found.get(0).sets().get(1))
        .extracting(Suspect::what)
        .containsExactly("W1 and W2 are exchanged in B (cavities 1 and 2, side by side)");
    assertThat(found.get(0).telling()).isEmpty();
    assertThat(found.get(0).readings()).hasSize(2);
    assertThat(found.get(0).smallest()).isTrue();
  }

  /** Two open readings alone: swapped at either plug, or both wires open; the swap is likelier. */
  @Test
  void neighboursExchangedAreLikelierThanAnythingAndAReadingTellsWhichPlug() {
    Facts facts = facts();
    List<Explanation> found =
        Explanations.of(
            facts,
            List.of(shown(facts, "B:5", "C:5", false, 2), shown(facts, "B:6", "C:6", false, 3)));
    assertThat(first(found))
        .containsExactly("W8 and W9 are exchanged in B (cavities 5 and 6, side by side)");
    assertThat(found.get(0).sets().get(1))
        .extracting(Suspect::what)
        .containsExactly("W8 and W9 are exchanged in C (cavities 5 and 6, side by side)");
    assertThat(found.get(0).telling()).as("both swaps show the same to a meter").isEmpty();
  }

  /** The loom of A and P lies elsewhere; its plug P would name itself first. */
  @Test
  void aReadingBeginsWhereOneWasTakenAlready() {
    Facts facts =
        Judged.facts(
            Map.of(
                Judged.ROOT,
                """
                {"format": 1, "sketch": true,
                 "connectors": {"P": {"mates": "Q"}, "Q": {}},
                 "splices": {"S": {}},
                 "wires": {"W1": {"from": "A:1", "to": "P:1"}, "W2": {"from": "A:2", "to": "P:2"},
                           "W3": {"from": "Q:1", "to": "S"}, "W4": {"from": "S", "to": "H:1"},
                           "W5": {"from": "S", "to": "K:1"}, "W6": {"from": "K:2", "to": "Q:2"}}}
                """));
    Explanation found =
        Explanations.of(
                facts,
                List.of(
                    shown(facts, "K:2", "Q:2", false, 2),
                    shown(facts, "K:2", "Q:1", true, 3),
                    shown(facts, "K:1", "Q:2", true, 4),
                    shown(facts, "K:1", "Q:1", false, 5)))
            .get(0);
    assertThat(found.sets()).hasSizeGreaterThan(1);
    Telling telling = found.telling().orElseThrow();
    assertThat(List.of(telling.from().text(), telling.to().text())).containsExactly("H:1", "K:1");
  }

  @Test
  void oneOpenReadingIsTwoThingsAndAReadingTellsThemApart() {
    Facts facts = facts();
    Explanation found =
        Explanations.of(facts, List.of(shown(facts, "A:1", "C:2", false, 2))).get(0);
    assertThat(found.sets().get(0).get(0).kind()).isEqualTo(Suspect.Kind.NEIGHBOURS_EXCHANGED);
    assertThat(found.sets()).hasSize(3);
    Telling telling = found.telling().orElseThrow();
    assertThat(telling.from()).isNotEqualTo(telling.to());
  }

  @Test
  void brokenWireTouchAndPlugAreFound() {
    Facts facts = facts();
    assertThat(first(Explanations.of(facts, read(facts, Truth.planned().without("W4"), LIST))))
        .containsExactly("W4 is open (broken, or a terminal of it not home)");
    assertThat(
            first(
                Explanations.of(facts, read(facts, Truth.planned().touching("B:5", "B:6"), LIST))))
        .containsExactly("B:5 and B:6 touch");
    Truth unplugged = Truth.planned();
    unplugged.joints().clear();
    assertThat(first(Explanations.of(facts, read(facts, unplugged, LIST))))
        .containsExactly("A is not plugged into M");
  }

  @Test
  void independentFaultsAreExplainedApart() {
    Facts facts = facts();
    Truth truth = Truth.planned().without("Z1").without("W4");
    List<Explanation> found = Explanations.of(facts, read(facts, truth, LIST));
    assertThat(first(found))
        .containsExactly(
            "W4 is open (broken, or a terminal of it not home)",
            "Z1 is open (broken, or a terminal of it not home)");
  }

  /** One or two random faults: what is found explains all readings and is no larger. */
  @Test
  void whatIsFoundExplainsEverythingAndIsNoLargerThanWhatWasDone() {
    Random random = new Random(11);
    Facts facts = facts();
    List<String> plugs = List.of("A", "M", "B", "C");
    for (int round = 0; round < 150; round++) {
      Truth truth = Truth.planned();
      int faults = 1 + random.nextInt(2);
      for (int i = 0; i < faults; i++) {
        String plug = plugs.get(random.nextInt(4));
        String one = plug + ":" + (1 + random.nextInt(6));
        String other = plug + ":" + (1 + random.nextInt(6));
        switch (random.nextInt(3)) {
          case 0 -> truth.exchanged(one, other);
          case 1 -> truth.without("W" + (1 + random.nextInt(10)));
          default -> truth.touching(one, other);
        }
      }
      List<Explanations.Shown> readings = read(facts, truth, LIST);
      List<Explanation> found = Explanations.of(facts, readings);
      int size =
          found.stream().mapToInt(e -> e.sets().isEmpty() ? 99 : e.sets().get(0).size()).sum();
      assertThat(size).isLessThanOrEqualTo(faults);
      Truth explained = Truth.planned();
      found.forEach(e -> e.sets().get(0).forEach(s -> apply(explained, s)));
      for (Explanations.Shown shown : readings) {
        assertThat(explained.joined(shown.reading().from().text(), shown.reading().to().text()))
            .as("%s explained by %s", shown.reading(), first(found))
            .isEqualTo(shown.joined());
      }
    }
  }

  /** Does to plain maps what a suspect says in its own words. */
  private static void apply(Truth truth, Suspect suspect) {
    List<String> things =
        suspect.things().stream().map(t -> t.substring(t.indexOf('/') + 1)).toList();
    switch (suspect.kind()) {
      case NEIGHBOURS_EXCHANGED, EXCHANGED, IN_NEIGHBOUR, ELSEWHERE ->
          truth.exchanged(things.get(0), things.get(1));
      case OPEN -> truth.without(things.get(0));
      case CONTACT_OPEN -> truth.joints().removeIf(j -> List.of(j).containsAll(things));
      case NOT_PLUGGED ->
          truth.joints().removeIf(j -> j[0].startsWith("A:") && j[1].startsWith("M:"));
      case NEIGHBOURS_TOUCH, TOUCH -> truth.touching(things.get(0), things.get(1));
    }
  }

  @Test
  void manyContradictionsEndInABoundedSearch() {
    StringBuilder wires = new StringBuilder();
    List<String> ends = new ArrayList<>();
    for (int i = 1; i <= 60; i++) {
      wires
          .append(i == 1 ? "" : ", ")
          .append("\"W%d\": {\"from\": \"P:%d\", \"to\": \"Q:%d\"}".formatted(i, i, i));
      ends.add("P:" + i + " Q:" + (60 - i + 1));
    }
    Facts facts =
        Judged.facts(
            Map.of(Judged.ROOT, "{\"format\": 1, \"sketch\": true, \"wires\": {" + wires + "}}"));
    List<Explanations.Shown> readings = new ArrayList<>();
    for (String pair : ends) {
      String[] its = pair.split(" ", -1);
      readings.add(shown(facts, its[0], its[1], true, readings.size() + 2));
    }
    Explanation found = Explanations.of(facts, readings).get(0);
    assertThat(found.readings()).hasSize(60);
    assertThat(found.smallest()).isFalse();
  }
}
