package org.tugtest.expect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

/** A wire of 1 m and 27 g. */
class LighterThanTest {
  private static String judged(String fields, String wire) {
    Verdict verdict =
        Expectations.judge(
                Judged.facts(
                    Map.of(
                        Judged.ROOT,
                        """
                        {"format": 1, "sketch": true,
                         "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "gramsPerM": 27}}},
                         "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"%s}},
                         "expectations": {"e": {"that": "lighter-than"%s}}}
                        """
                            .formatted(wire, fields))))
            .get(0);
    return verdict.answer() + ": " + verdict.message();
  }

  @Test
  void belowTheFigureItHolds() {
    String metre = ", \"cutMm\": 1000";
    assertThat(judged(", \"grams\": 27.1", metre)).isEqualTo("HOLDS: the looms weigh 27 g");
    assertThat(judged(", \"grams\": 27", metre))
        .isEqualTo("FAILS: the looms weigh 27 g, not less than 27 g");
    assertThat(judged(", \"grams\": 20, \"reason\": \"budget\"", metre))
        .isEqualTo("FAILS: the looms weigh 27 g, not less than 20 g (budget)");
  }

  @Test
  void whatIsNotKnownIsNotJudged() {
    assertThat(judged(", \"grams\": 20", ""))
        .isEqualTo(
            "NOT_JUDGED: the looms weigh at least 0 g; not all is known: 1 of wires w: no length");
    assertThat(judged(", \"loom\": \"front\", \"grams\": 20", ""))
        .isEqualTo("NOT_JUDGED: no loom is called front");
  }
}
