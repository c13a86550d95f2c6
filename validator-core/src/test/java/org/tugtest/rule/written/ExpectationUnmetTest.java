package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class ExpectationUnmetTest {
  private static Judged judged(String expectation) {
    return Judged.of(
        new ExpectationUnmet(),
        """
        {"format": 1, "sketch": true,
         "wires": {"W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "B:2"}},
         "expectations": {"e": %s}}
        """
            .formatted(expectation));
  }

  @Test
  void whatHoldsIsFine() {
    Judged judged = judged("{\"that\": \"joined\", \"points\": [\"A:1\", \"B:1\"]}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void whatFailsIsFoundAtTheExpectationAndAtWhatBreaksIt() {
    Judged judged =
        judged(
            "{\"that\": \"apart\", \"points\": [\"A:1\", \"B:1\"], \"reason\": \"event rules\"}");
    assertThat(judged.messages())
        .containsExactly(
            "expectation e does not hold: A:1 and B:1 are joined: A:1 -W1- B:1 (event rules)");
    assertThat(judged.subjects()).containsExactly("expectations/e");
    assertThat(judged.findings().get(0).at())
        .extracting(place -> place.pointer().toString())
        .containsExactly("/expectations/e", "/wires/W1");
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    Judged judged = judged("{\"that\": \"joined\", \"points\": [\"A:1\", \"C:9\"]}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
