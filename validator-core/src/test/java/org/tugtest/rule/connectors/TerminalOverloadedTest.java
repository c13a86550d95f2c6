package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class TerminalOverloadedTest {
  private static Judged judged(Object amps, String maxA, String mates) {
    return Judged.of(
        new TerminalOverloaded(),
        """
        {"format": 1,
         "parts": {
           "housings": {"s": {"side": "socket", "family": "t1.5", "rows": [["1", "2"]], "terminals": ["ts"]},
                        "p": {"side": "pin", "family": "t1.5", "rows": [["2", "1"]]}},
           "terminals": {"ts": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 1.5%s}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FAN": {"ports": {"plug": {"housing": "p"}},
                   "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
         "connectors": {"X1": {"housing": "s"%s}},
         "wires": {"W1": {"from": "BAT:+", "to": "X1:1", "areaMm2": 1},
                   "W2": {"from": "X1:2", "to": "BAT:-", "areaMm2": 1}}}
        """
            .formatted(maxA, amps, mates));
  }

  private static final String FAN = ", \"mates\": \"FAN\"";

  @Test
  void theTerminalsRatingIsTheLimit() {
    assertThat(judged(5, ", \"maxA\": 5", FAN).findings()).isEmpty();
    assertThat(judged(4.99, ", \"maxA\": 5", FAN).coverage().judged()).isEqualTo(2);
    assertThat(judged(5.01, ", \"maxA\": 5", FAN).messages())
        .containsExactly(
            "X1:1 carries 5.01 A in state as drawn; terminal ts is rated 5 A",
            "X1:2 carries 5.01 A in state as drawn; terminal ts is rated 5 A");
  }

  @Test
  void aDutyCountsByItsRootMeanSquare() {
    // 10 A for a quarter of the time warm as 5 A do all the time: 10 * sqrt(0.25).
    String quarter = "10, \"dutyPercent\": 25";
    assertThat(judged(quarter, ", \"maxA\": 5.1", FAN).findings()).isEmpty();
    assertThat(judged(quarter, ", \"maxA\": 4.9", FAN).messages().get(0)).contains("carries 5 A");
    assertThat(judged("10", ", \"maxA\": 5.1", FAN).findings()).hasSize(2);
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    assertThat(judged(5, "", FAN).coverage().missing().keySet())
        .containsExactly("its terminal gives no maxA");
    assertThat(judged(5, ", \"maxA\": 5", ", \"parked\": \"capped\"").coverage().missing().keySet())
        .containsExactly("nothing is plugged onto it");
  }
}
