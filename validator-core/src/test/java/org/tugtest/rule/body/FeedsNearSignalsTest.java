package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class FeedsNearSignalsTest {
  /** Segments s1 a-b and s2 b-c; a starter of so many amps at c, a sensor at c, a wire each. */
  private static Judged judged(String area, double amps, String type, String signal, String more) {
    return Judged.of(
        new FeedsNearSignals(),
        """
        {"format": 1,
         "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900},
           "s2": {"from": "b", "to": "c", "lengthMm": 300}}},
         "devices": {
           "BAT": {"at": "a", "pins": {"+": {}, "-": {}}, "elements": {
             "cell": {"kind": "source", "plus": "+", "minus": "-"}}},
           "STR": {"at": "c", "pins": {"30": {}, "31": {}}, "elements": {
             "motor": {"kind": "load", "a": "30", "b": "31", "amps": %s}}},
           "CRANK": {"at": "c", "pins": {"1": {}}, "elements": {
             "coil": {"kind": "signal", "pin": "1", "type": "%s"}}},
           "ECU": {"at": "b", "pins": {"5": {}, "6": {}}}},
         "wires": {"P1": {"from": "BAT:+", "to": "STR:30"%s},
                   "W1": {"from": "%s", "to": "ECU:5", "areaMm2": 0.35}%s}}
        """
            .formatted(amps, type, area, signal, more));
  }

  @Test
  void tenSquareMillimetresAreHeavy() {
    String beside = "wire P1 (10 mm2) shares 300 mm of segment s2 with the signal wire W1";
    assertThat(judged(", \"areaMm2\": 10", 1, "pulse", "CRANK:1", "").messages())
        .containsExactly(beside);
    assertThat(judged(", \"areaMm2\": 9.9", 1, "pulse", "CRANK:1", "").coverage().subjects())
        .isZero();
  }

  @Test
  void sixtyAmpsAreHeavyWhateverTheArea() {
    assertThat(judged(", \"areaMm2\": 6", 60, "analog", "CRANK:1", "").messages())
        .containsExactly("wire P1 (6 mm2) shares 300 mm of segment s2 with the signal wire W1");
    assertThat(judged("", 60, "analog", "CRANK:1", "").messages())
        .containsExactly("wire P1 shares 300 mm of segment s2 with the signal wire W1");
    assertThat(judged(", \"areaMm2\": 6", 59, "analog", "CRANK:1", "").coverage().subjects())
        .isZero();
  }

  @Test
  void onlyAnalogAndPulseSignalsCount() {
    assertThat(judged(", \"areaMm2\": 25", 1, "digital", "CRANK:1", "").messages()).isEmpty();
    assertThat(judged(", \"areaMm2\": 25", 1, "can-high", "CRANK:1", "").coverage().judged())
        .isEqualTo(1);
  }

  @Test
  void anotherWayIsFine() {
    Judged judged = judged(", \"areaMm2\": 25", 1, "pulse", "ECU:6", "");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void allWiresBesideItAreOneFindingForTheCable() {
    Judged judged =
        judged(
            ", \"areaMm2\": 25",
            1,
            "pulse",
            "S",
            ", \"W2\": {\"from\": \"CRANK:1\", \"to\": \"S\"}}, \"splices\":"
                + " {\"S\": {\"on\": \"s2\", \"offsetMm\": 100}");
    assertThat(judged.messages())
        .containsExactly(
            "wire P1 (25 mm2) shares 300 mm of segment s2 with the signal wires W1 and W2");
  }

  @Test
  void aCableWithoutRouteIsNotJudged() {
    Judged judged =
        Judged.of(
            new FeedsNearSignals(),
            """
            {"format": 1, "sketch": true,
             "wires": {"P1": {"from": "BAT:1", "to": "STR:1", "areaMm2": 25}}}
            """);
    assertThat(judged.coverage().missing().keySet()).containsExactly("the harness has no layout");
  }
}
