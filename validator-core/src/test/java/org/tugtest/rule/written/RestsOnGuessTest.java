package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class RestsOnGuessTest {
  private static final String DEVICES =
      """
      "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
        "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
        "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "critical": %s}}}}
      """;

  private static Judged judged(boolean critical, String more, String... evidence) {
    String[] runs = {"BAT:+ FB:in", "FB:1 X1:1", "X1:1 PUMP:1", "PUMP:2 S1", "S1 BAT:-"};
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < runs.length; i++) {
      String[] ends = runs[i].split(" ", -1);
      String word = evidence[i].isEmpty() ? "" : ", \"evidence\": \"" + evidence[i] + "\"";
      wires.append(
          "%s\"W%d\": {\"from\": \"%s\", \"to\": \"%s\"%s}"
              .formatted(i == 0 ? "" : ", ", i + 1, ends[0], ends[1], word));
    }
    return Judged.of(
        new RestsOnGuess(),
        "{\"format\": 1, \"sketch\": true, "
            + DEVICES.formatted(critical)
            + more
            + ", \"wires\": {"
            + wires
            + "}}");
  }

  @Test
  void whatIsRungOutOrDrawnOrSaysNothingIsFine() {
    Judged judged = judged(true, "", "rung-out", "drawing", "", "", "rung-out");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(5);
  }

  @Test
  void guessBeforeTheFuseOrInTheReturnOfAnOrdinaryLoadIsFine() {
    assertThat(judged(false, "", "guess", "", "", "guess", "guess").messages()).isEmpty();
  }

  @Test
  void guessBehindAFuseIsReported() {
    Judged judged = judged(false, "", "", "guess", "guess", "", "");
    assertThat(judged.messages())
        .containsExactly("wires W2 and W3 are guesses in protected or critical circuits");
    assertThat(judged.subjects()).containsExactly("harness");
    assertThat(judged.findings().get(0).details())
        .containsExactly("W2: it is behind a fuse", "W3: it is behind a fuse");
    assertThat(judged.coverage().judged()).isEqualTo(5);
  }

  @Test
  void guessAnywhereOnTheWayOfACriticalLoadIsReported() {
    Judged judged = judged(true, "", "guess", "", "", "guess", "");
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            "W1: it is on the way of PUMP.motor, which is critical",
            "W4: it is on the way of PUMP.motor, which is critical");
  }

  @Test
  void loomGivesItsWiresTheirEvidenceAndAWireItsOwn() {
    Judged judged =
        judged(
            false,
            ", \"loom\": {\"id\": \"rear\", \"evidence\": \"guess\"}",
            "",
            "",
            "rung-out",
            "",
            "");
    assertThat(judged.messages())
        .containsExactly("wire W2 of loom rear is a guess in protected or critical circuits");
    assertThat(judged.subjects()).containsExactly("looms/rear");
  }

  @Test
  void cavityMayBeTheGuess() {
    Judged judged =
        judged(
            false,
            ", \"connectors\": {\"X1\": {\"cavities\": {\"1\": {\"evidence\": \"guess\"}}}}",
            "",
            "rung-out",
            "rung-out",
            "",
            "");
    assertThat(judged.messages())
        .containsExactly("wires W2 and W3 are guesses in protected or critical circuits");
  }

  @Test
  void withoutASourceNothingCanBeSaid() {
    Judged judged =
        Judged.of(
            new RestsOnGuess(),
            """
            {"format": 1, "sketch": true,
             "wires": {"W1": {"from": "A:1", "to": "B:1", "evidence": "guess"},
                       "W2": {"from": "A:2", "evidence": "guess"}}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("no source is described", "its end names nothing that is known");
  }

  @Test
  void oneWireMayBeLeftOutOfTheList() {
    assertThat(
            judged(
                    false,
                    ", \"limits\": {\"rests-on-guess\": {\"places\": {\"wires/W2\":"
                        + " {\"level\": \"off\"}}}}",
                    "",
                    "guess",
                    "",
                    "",
                    "")
                .messages())
        .isEmpty();
  }
}
