package org.tugtest.bench.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

/** By hand: an end takes 60 + 30 + 6 mm, 30 mm of it spare; an end at a splice 6 mm. */
class WaysTest {
  private static Facts loom(int lengthMm, int offsetMm, String w3) {
    return Judged.facts(
        Map.of(
            Judged.ROOT,
            """
            {"format": 1, "sketch": true,
             "devices": {"A": {"at": "a", "pins": {"1": {}, "2": {}}},
                         "B": {"at": "b", "pins": {"1": {}, "2": {}}}},
             "layout": {"nodes": {"a": {}, "b": {}},
                        "segments": {"s": {"from": "a", "to": "b", "lengthMm": %d}}},
             "splices": {"S1": {"on": "s", "offsetMm": %d}},
             "wires": {
               "W1": {"from": "A:1", "to": "S1", "areaMm2": 1},
               "W2": {"from": "S1", "to": "B:1", "areaMm2": 1},
               "W3": {"from": "A:2", "to": "B:2", "areaMm2": 1%s}}}
            """
                .formatted(lengthMm, offsetMm, w3)));
  }

  private static Rework of(Facts now, Facts target) {
    return Rework.of(now, target, Matching.byId(now, target), Order.BY_CONNECTOR);
  }

  private static List<String> ways(Facts now, Facts target) {
    Rework rework = of(now, target);
    assertThat(rework.steps()).isEmpty();
    return rework.besides();
  }

  private static List<String> back(Facts built, Facts target) {
    return Rework.back(built, target, Matching.byId(built, target), Order.BY_CONNECTOR).besides();
  }

  @Test
  void aSegmentThatGetsLongerLeavesItsWiresShort() {
    Facts now = loom(500, 200, "");
    assertThat(ways(now, now)).isEmpty();
    assertThat(ways(now, loom(530, 200, "")))
        .containsExactly(
            "W2 reaches by its spare at the ends: 402 mm are there, 432 mm planned, spare 30 mm",
            "W3 reaches by its spare at the ends: 692 mm are there, 722 mm planned, spare 60 mm");
    assertThat(ways(now, loom(560, 200, ""))).hasSize(2).last().asString().contains("by its spare");
    assertThat(ways(now, loom(561, 200, "")))
        .containsExactly(
            "W2 no longer reaches: 402 mm are there, 463 mm planned; splice a piece in, or fit a"
                + " new wire",
            "W3 no longer reaches: 692 mm are there, 753 mm planned; splice a piece in, or fit a"
                + " new wire");
  }

  @Test
  void aWireThatWasBuiltTooShortOrTooLongIsNamedThoughItsWayIsThePlannedOne() {
    Facts plan = loom(500, 200, "");
    // 500 + 2 x 96 = 692 are planned, 60 of them spare
    assertThat(back(loom(500, 200, ", \"builtMm\": 692"), plan)).isEmpty();
    assertThat(back(loom(500, 200, ", \"builtMm\": 632"), plan))
        .containsExactly(
            "W3 reaches by its spare at the ends: 632 mm are there, 692 mm planned, spare 60 mm");
    assertThat(back(loom(500, 200, ", \"builtMm\": 631"), plan))
        .containsExactly(
            "W3 does not reach: 631 mm are there, 692 mm planned; splice a piece in, or fit a new"
                + " wire");
    assertThat(back(loom(500, 200, ", \"builtMm\": 752"), plan)).isEmpty();
    assertThat(back(loom(500, 200, ", \"builtMm\": 753"), plan))
        .containsExactly(
            "W3 is 61 mm too long: 753 mm are there, 692 mm planned; shorten it, or tie the slack"
                + " where nothing catches it");
    // what stays as it was built is no work
    String built = ", \"builtMm\": 631";
    assertThat(back(loom(500, 200, built), loom(500, 200, built))).isEmpty();
  }

  @Test
  void aSpliceThatStandsElsewhereIsMadeAnew() {
    Facts now = loom(500, 200, "");
    assertThat(ways(now, loom(500, 230, "")))
        .containsExactly(
            "S1 moves from segment s at 200 mm to segment s at 230 mm: cut it out, join it there",
            "W1 reaches by its spare at the ends: 302 mm are there, 332 mm planned, spare 30 mm");
    assertThat(ways(now, loom(500, 231, "")))
        .containsExactly(
            "S1 moves from segment s at 200 mm to segment s at 231 mm: cut it out, join it there",
            "W1 no longer reaches: 302 mm are there, 333 mm planned; splice a piece in, or fit a"
                + " new wire",
            "W2 is 31 mm too long: 402 mm are there, 371 mm planned; shorten it, or tie the slack"
                + " where nothing catches it");
  }

  @Test
  void aWireThatWasCutLongerReachesAndOneWhoseWayStaysIsNotSpokenOf() {
    Facts cut = loom(500, 200, ", \"cutMm\": 800");
    assertThat(ways(cut, loom(600, 200, ", \"cutMm\": 800")))
        .singleElement()
        .asString()
        .startsWith("W2 no longer reaches");
    assertThat(ways(loom(500, 200, ", \"builtMm\": 600"), loom(500, 200, ""))).isEmpty();
  }

  @Test
  void withoutALayoutThePlannedLengthTells() {
    String wires =
        """
        {"format": 1, "sketch": true,
         "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1, "cutMm": %d%s}}}
        """;
    Facts now = Judged.facts(Map.of(Judged.ROOT, wires.formatted(900, "")));
    Facts longer = Judged.facts(Map.of(Judged.ROOT, wires.formatted(961, "")));
    assertThat(ways(now, longer))
        .containsExactly(
            "W1 no longer reaches: 900 mm are there, 961 mm planned; splice a piece in, or fit a"
                + " new wire");
    Facts built = Judged.facts(Map.of(Judged.ROOT, wires.formatted(900, ", \"builtMm\": 800")));
    assertThat(ways(built, now)).isEmpty();
  }

  @Test
  void whatHasToBeFittedAnewIsMeasuredAgain() {
    Facts now = loom(500, 200, "");
    Facts longer = loom(561, 200, "");
    assertThat(Touched.of(now, longer, Matching.byId(now, longer)).wires())
        .containsExactly("W2", "W3");
    Facts spare = loom(530, 200, "");
    assertThat(Touched.of(now, spare, Matching.byId(now, spare)).wires()).isEmpty();
  }
}
