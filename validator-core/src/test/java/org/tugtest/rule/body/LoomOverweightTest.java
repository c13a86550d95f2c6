package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

/** One wire of 1 m and 27 g in loom front. */
class LoomOverweightTest {
  private static Judged judged(String limits, String more) {
    return Judged.of(
        new LoomOverweight(),
        Map.of(
            Judged.ROOT,
            """
            {"format": 1, "sketch": true, "uses": ["front.json"],
             "limits": {"loom-overweight": {%s}},
             "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "gramsPerM": 27}}}}
            """
                .formatted(limits),
            "front.json",
            """
            {"format": 1, "loom": {"id": "front"},
             "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w", "cutMm": 1000}%s}}
            """
                .formatted(more)));
  }

  @Test
  void theBudgetItselfIsFineAndAGramLessIsNot() {
    assertThat(judged("\"grams\": 27", "").messages()).isEmpty();
    assertThat(judged("\"grams\": 28", "").coverage().judged()).isEqualTo(1);
    Judged heavy = judged("\"grams\": 26.9", "");
    assertThat(heavy.messages()).containsExactly("the looms weigh 27 g; the budget is 26.9 g");
    assertThat(heavy.subjects()).containsExactly("harness");
    assertThat(heavy.findings().get(0).details().get(0)).isEqualTo("heaviest: wires w 27 g");
  }

  @Test
  void aLoomHasABudgetOfItsOwn() {
    Judged heavy = judged("\"places\": {\"looms/front\": {\"grams\": 20}}", "");
    assertThat(heavy.subjects()).containsExactly("looms/front");
    assertThat(
            judged("\"grams\": 30, \"places\": {\"looms/front\": {\"grams\": 20}}", "").subjects())
        .containsExactly("looms/front");
  }

  @Test
  void withoutABudgetThereIsNothingToJudge() {
    assertThat(judged("", "").coverage().subjects()).isZero();
  }

  @Test
  void whatIsNotCompleteAndStillWithinIsNotJudged() {
    Judged judged =
        judged("\"grams\": 28", ", \"W2\": {\"from\": \"A:2\", \"to\": \"B:2\", \"part\": \"w\"}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly("lengths or masses are missing from its sum");
  }
}
