package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class AreaReadsAsGaugeTest {
  /** A lamp of some amperes behind a fuse, on a feed wire of some size and length. */
  private static Judged lamp(String size, double amps, double fuse, int mm) {
    return lamp(size, amps, fuse, mm, "");
  }

  private static Judged lamp(String size, double amps, double fuse, int mm, String parts) {
    return Judged.of(
        new AreaReadsAsGauge(),
        """
        {"format": 1, %s
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": %s}}},
           "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 25, "cutMm": 300},
                   "W2": {"from": "FB:1", "to": "LAMP:1", %s, "cutMm": %d},
                   "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 25, "cutMm": 300}}}
        """
            .formatted(parts, fuse, amps, size, mm));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1.5, 6, 8, 10, 16, 25, 35, 50, 20.5, 13, 100})
  void areasThatAreMadeAreFine(double area) {
    Judged judged = lamp("\"areaMm2\": " + area, 1, 5, 1000);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aThinLoadOnTwentyIsAGauge() {
    Judged judged = lamp("\"areaMm2\": 20", 1, 5, 1000);
    // ASTM B258: AWG 20 is 0.5176 mm2
    assertThat(judged.messages())
        .containsExactly(
            "wire W2 gives 20 mm2, but it carries 1.00 A at most and is fused for 5 A; did you mean"
                + " AWG 20 (0.52 mm2)?");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo("write \"awg\": \"20\" in place of \"areaMm2\": 20");
  }

  @ParameterizedTest
  @CsvSource({"12, 3.31", "14, 2.08", "18, 0.82", "22, 0.33"})
  void soAreOtherNumbers(int number, String area) {
    assertThat(lamp("\"areaMm2\": " + number, 0.5, 3, 500).messages())
        .singleElement()
        .asString()
        .endsWith("did you mean AWG " + number + " (" + area + " mm2)?");
  }

  @Test
  void anHonestCableIsFine() {
    Judged judged = lamp("\"areaMm2\": 20", 80, 100, 1000);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void whatNothingSpeaksForIsNotJudged() {
    assertThat(lamp("\"areaMm2\": 20", 1, 100, 1000).coverage().missing())
        .containsOnlyKeys("nothing tells whether mm2 or a gauge is meant");
    assertThat(lamp("\"areaMm2\": 20", 8, 10, 1000).findings()).isEmpty();
  }

  @Test
  void aLongWireMayBeThickForItsVolts() {
    // AWG 20 has 33 milliohms a metre, so 2 A lose half a volt on some 7 m
    assertThat(lamp("\"areaMm2\": 20", 2, 5, 5000).findings()).hasSize(1);
    assertThat(lamp("\"areaMm2\": 20", 2, 5, 10000).findings()).isEmpty();
  }

  @Test
  void copperThatDoesNotGoIntoItsInsulationIsAnError() {
    // 20 mm2 of copper are sqrt(4 * 20 / pi) = 5.05 mm wide
    String part =
        "\"parts\": {\"wires\": {\"w\": {\"areaMm2\": 20, \"maxC\": 105, \"outerMm\": %s}}},";
    Judged judged = lamp("\"part\": \"w\"", 80, 100, 1000, part.formatted("1.8"));
    assertThat(judged.messages())
        .containsExactly(
            "wire part w gives 20 mm2, but copper of that area is 5.0 mm wide and its outerMm is"
                + " 1.8; did you mean AWG 20 (0.52 mm2)?");
    assertThat(judged.subjects()).containsExactly("parts/wires/w");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(lamp("\"part\": \"w\"", 80, 100, 1000, part.formatted("5.1")).findings()).isEmpty();
    assertThat(lamp("\"part\": \"w\"", 80, 100, 1000, part.formatted("5.0")).findings()).hasSize(1);
  }

  @Test
  void wiresOfOneNumberAreOneFinding() {
    Judged judged =
        Judged.of(
            new AreaReadsAsGauge(),
            """
            {"format": 1, "sketch": true,
             "devices": {
               "ECU": {"elements": {"t": {"kind": "signal", "pin": "1", "type": "analog"},
                                    "p": {"kind": "signal", "pin": "2", "type": "analog"}}},
               "S": {"elements": {"o": {"kind": "signal", "pin": "1", "type": "analog"}}}},
             "wires": {"W1": {"from": "ECU:1", "to": "S:1", "areaMm2": 22},
                       "W2": {"from": "ECU:2", "to": "T:1", "areaMm2": 22},
                       "W3": {"from": "A:1", "to": "B:1", "areaMm2": 22}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "wires W1 and W2 give 22 mm2, but it carries a signal; did you mean AWG 22 (0.33"
                + " mm2)?");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aTerminalThatTakesTheGaugeSaysSo() {
    Judged judged =
        Judged.of(
            new AreaReadsAsGauge(),
            """
            {"format": 1,
             "parts": {
               "housings": {"h": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                                  "terminals": ["t"]}},
               "terminals": {"t": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.5,
                                   "areaMaxMm2": 1}}},
             "devices": {"A": {"pins": {"1": {}}}},
             "connectors": {"X1": {"housing": "h", "parked": "open"}},
             "wires": {"W1": {"from": "X1:1", "to": "A:1", "areaMm2": 18}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 gives 18 mm2, but terminal t at X1:1 takes at most 1 mm2; did you mean AWG 18"
                + " (0.82 mm2)?");
  }
}
