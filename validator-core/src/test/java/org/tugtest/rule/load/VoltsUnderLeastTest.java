package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class VoltsUnderLeastTest {
  /** A load of 1 ohm behind 1 ohm of battery: half of the open volts arrive, 8 of 16. */
  private static Judged judged(String load, String more) {
    return Judged.of(
        new VoltsUnderLeast(),
        """
        {"format": 1, "defaults": {"crimpMilliohm": 0},
         "parts": {"wires": {"w": {"areaMm2": 95, "maxC": 125, "milliohmPerM": 0.000001}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 16, "ohms": 1}}},
           "ECU": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "ohms": 1%s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "ECU:1", "part": "w", "cutMm": 10},
                   "W2": {"from": "ECU:2", "to": "BAT:-", "part": "w", "cutMm": 10}}%s}
        """
            .formatted(load, more));
  }

  @Test
  void justAboveTheLeastIsFineJustUnderIsNot() {
    assertThat(judged(", \"minV\": 7.99", "").findings()).isEmpty();
    assertThat(judged(", \"minV\": 7.99", "").coverage().judged()).isEqualTo(1);
    assertThat(judged(", \"minV\": 8.01", "").messages())
        .containsExactly("ECU.supply gets 8 V in state as drawn; it works from 8.01 V on");
  }

  @Test
  void withoutAFigureHalfOfNominalCounts() {
    assertThat(judged("", "").findings()).as("8 V of 12").isEmpty();
    Judged judged =
        Judged.of(
            new VoltsUnderLeast(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 11, "ohms": 1}}},
               "ECU": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "ohms": 1}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "ECU:1", "areaMm2": 25, "cutMm": 10},
                       "W2": {"from": "ECU:2", "to": "BAT:-", "areaMm2": 25, "cutMm": 10}}}
            """);
    assertThat(judged.messages()).hasSize(1);
    assertThat(judged.messages().get(0)).endsWith("it works from 6 V on (half of nominal)");
  }

  @Test
  void briefStatesCountToo() {
    String cranking =
        ", \"states\": {\"cranking\": {\"on\": [\"ECU\"], \"brief\": true, \"volts\": {\"BAT\":"
            + " 12}}}";
    assertThat(judged(", \"minV\": 6.5", cranking).messages()).hasSize(1);
    assertThat(judged(", \"minV\": 5.5", cranking).findings()).isEmpty();
  }

  @Test
  void aLoadWithoutFeedIsNotThisRulesMatter() {
    Judged judged = judged(", \"minV\": 20", ", \"states\": {\"off\": {}}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void aSensorOnTheFiveVoltsOfAControlUnitIsMadeForThose() {
    String car =
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.01}}},
           "ECU": {"elements": {"out": {"kind": "source", "plus": "5v", "minus": "g", "volts": 5, "ohms": %s,
                                        "maxA": 0.2, "selfLimiting": true}}},
           "TPS": {"elements": {"pot": {"kind": "load", "a": "1", "b": "2", "ohms": 50}}}},
         "wires": {"W1": {"from": "ECU:5v", "to": "TPS:1", "areaMm2": 0.5, "cutMm": 10},
                   "W2": {"from": "TPS:2", "to": "BAT:-", "areaMm2": 0.5, "cutMm": 10},
                   "W3": {"from": "ECU:g", "to": "BAT:-", "areaMm2": 0.5, "cutMm": 10}}}
        """;
    assertThat(Judged.of(new VoltsUnderLeast(), car.formatted("0.5")).findings()).isEmpty();
    assertThat(Judged.of(new VoltsUnderLeast(), car.formatted("0.5")).coverage().judged())
        .isEqualTo(1);
    assertThat(Judged.of(new VoltsUnderLeast(), car.formatted("60")).messages().get(0))
        .endsWith("it works from 2.5 V on (half of the 5 V that feed it)");
  }

  /** A coil of 1 ohm gets 8 V; fed through its own contact, or switched on by itself. */
  private static Judged coil(String pullIn, String states) {
    return Judged.of(
        new VoltsUnderLeast(),
        """
        {"format": 1, "defaults": {"crimpMilliohm": 0},
         "parts": {"wires": {"w": {"areaMm2": 95, "maxC": 125, "milliohmPerM": 0.000001}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 16, "ohms": 1}}},
           "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 1%s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "K:86", "part": "w", "cutMm": 10},
                   "W2": {"from": "K:85", "to": "BAT:-", "part": "w", "cutMm": 10}}%s}
        """
            .formatted(pullIn, states));
  }

  @Test
  void aCoilThatIsFedAndStaysReleased() {
    Judged fine = coil(", \"pullInV\": 7.99", "");
    assertThat(fine.messages()).isEmpty();
    assertThat(fine.coverage().judged()).isEqualTo(1);
    assertThat(coil(", \"pullInV\": 8.01", "").messages())
        .containsExactly(
            "coil K.coil stays released in state as drawn: it gets 8 V and pulls from 8.01 V on");
    assertThat(
            coil("", ", \"states\": {\"on\": {\"on\": [\"K\"], \"volts\": {\"BAT\": 14}}}")
                .messages())
        .containsExactly(
            "coil K.coil stays released in state on: it gets 7 V and pulls from 7.2 V on (0.6 of"
                + " nominal)");
    assertThat(coil(", \"pullInV\": 20", ", \"states\": {\"off\": {}}").coverage().subjects())
        .isZero();
  }

  /** Pulled in the state before, it holds at volts that would not pull it. */
  @Test
  void aCoilThatHoldsIsFine() {
    String states =
        ", \"states\": {\"start\": {\"on\": [\"K\"], \"volts\": {\"BAT\": 20}}, \"on\": {\"on\":"
            + " [\"K\"], \"from\": \"start\", \"volts\": {\"BAT\": 14}}}";
    assertThat(coil(", \"pullInV\": 9, \"dropOutV\": 3", states).messages()).isEmpty();
    assertThat(
            coil(
                    ", \"pullInV\": 9, \"dropOutV\": 3",
                    states
                        .replace(", \"from\": \"start\"", "")
                        .replace(" \"from\": \"start\",", ""))
                .messages())
        .hasSize(1);
  }
}
