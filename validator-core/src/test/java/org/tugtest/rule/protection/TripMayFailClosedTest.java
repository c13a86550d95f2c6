package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class TripMayFailClosedTest {
  private static String json(String fuse, String more) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"wires": {"w20": {"areaMm2": 2.5, "maxA": 20}, "w15": {"areaMm2": 2.5, "maxA": 15}}},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
       "FB": {"elements": {"f1": %s}},
       "PDM": {"elements": {"o1": {"kind": "fuse", "a": "30", "b": "1", "ratingA": 10, "electronic": true},
                            "o2": {"kind": "fuse", "a": "30", "b": "2", "ratingA": 10, "electronic": true}}},
       "L1": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}},
       "L2": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}%s
       "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 25},
       "W2": {"from": "FB:1", "to": "PDM:30", "areaMm2": 25},
       "W3": {"from": "PDM:1", "to": "L1:1", "part": "w20"},
       "W5": {"from": "L1:2", "to": "BAT:-", "areaMm2": 2.5},
       "W6": {"from": "L2:2", "to": "BAT:-", "areaMm2": 2.5}}}
    """
        .formatted(fuse, more);
  }

  private static final String SECOND =
      "}, \"wires\": {\"W4\": {\"from\": \"PDM:2\", \"to\": \"L2:1\", \"part\": \"w15\"},";

  private static String fuse(double rating) {
    return "{\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"1\", \"ratingA\": " + rating + "}";
  }

  private static Judged judged(String fuse, String more) {
    return Judged.of(new TripMayFailClosed(), json(fuse, more));
  }

  @Test
  void oneNoteForADeviceWithTheWiresThatItsFuseDoesNotProtect() {
    Judged judged = judged(fuse(30), SECOND);
    assertThat(judged.messages())
        .containsExactly(
            "when a trip of PDM fails closed, FB.f1 (30 A) lets 30 A through: that does not protect"
                + " W3 and W4; W4 stands 15 A");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(judged.findings().get(0).details())
        .containsExactly("W3 stands 20 A, 30 A can flow", "W4 stands 15 A, 30 A can flow");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void theAmpacityIsTheLimit() {
    assertThat(judged(fuse(15), SECOND).findings()).isEmpty();
    assertThat(judged(fuse(15), SECOND).coverage().judged()).isEqualTo(2);
    assertThat(judged(fuse(15.01), SECOND).messages())
        .containsExactly(
            "when a trip of PDM fails closed, FB.f1 (15.01 A) lets 15.01 A through: that does not"
                + " protect W4; W4 stands 15 A");
    assertThat(judged(fuse(20), SECOND).findings()).hasSize(1);
  }

  @Test
  void withoutAFuseNothingBoundsIt() {
    String link = "{\"kind\": \"link\", \"a\": \"in\", \"b\": \"1\"}";
    assertThat(judged(link, SECOND).messages())
        .containsExactly(
            "when a trip of PDM fails closed, no fuse is before it: that does not protect W3 and"
                + " W4; W4 stands 15 A");
    String unrated = "{\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"1\", \"electronic\": true}";
    assertThat(judged(unrated, SECOND).coverage().notJudged()).isEqualTo(2);
  }

  /** A module behind a module: when the second fails, the trip of the first still opens. */
  @Test
  void aTripBeforeTheTripStillProtects() {
    String nested =
        ", \"PDN\": {\"elements\": {\"o\": {\"kind\": \"fuse\", \"a\": \"30\", \"b\": \"1\","
            + " \"ratingA\": 5, \"electronic\": true}}}}, \"wires\": {"
            + "\"W4\": {\"from\": \"PDM:2\", \"to\": \"PDN:30\", \"part\": \"w20\"},"
            + "\"W7\": {\"from\": \"PDN:1\", \"to\": \"L2:1\", \"part\": \"w15\"},";
    Judged judged = judged(fuse(30), nested);
    assertThat(judged.messages())
        .containsExactly(
            "when a trip of PDM fails closed, FB.f1 (30 A) lets 30 A through: that does not protect"
                + " W3 and W4; W3 stands 20 A");
    assertThat(judged.coverage().judged()).as("W7 is fine").isEqualTo(3);
  }

  @Test
  void blownFusesDoNotCount() {
    String plain = SECOND.replace("W4", "W8");
    Judged judged =
        Judged.of(
            new TripMayFailClosed(), json(fuse(30), plain).replace(", \"electronic\": true", ""));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void aWireWithoutAnAreaIsNotJudged() {
    String bare = SECOND.replace(", \"part\": \"w15\"", "");
    assertThat(judged(fuse(15), bare).coverage().notJudged()).isEqualTo(1);
  }
}
