package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class EarthSingleTest {
  private static Judged judged(String wires) {
    return Judged.of(
        new EarthSingle(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "E1": {"pins": {"m6": {"family": "stud-m6"}}},
           "E2": {"pins": {"m6": {"family": "stud-m6"}}},
           "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 2}}},
           "ECU": {"pins": {"30": {}, "31": {}, "31a": {}, "in": {"inside": true}},
                   "elements": {"supply": {"kind": "load", "a": "30", "b": "in", "amps": 2, "critical": true},
                                "l1": {"kind": "link", "a": "in", "b": "31"},
                                "l2": {"kind": "link", "a": "in", "b": "31a"}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "ECU:30"}, %s}}
        """
            .formatted(wires));
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  @Test
  void twoPinsToTheBatteryAreFine() {
    Judged judged = judged(wire("W2", "ECU:31", "BAT:-") + ", " + wire("W3", "ECU:31a", "BAT:-"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void onePinIsNoted() {
    Judged judged = judged(wire("W2", "ECU:31", "BAT:-"));
    assertThat(judged.messages())
        .containsExactly("critical load ECU.supply returns through ECU:31 alone");
    assertThat(judged.findings().get(0).details())
        .containsExactly("ECU:in -ECU.l1- ECU:31 -W2- BAT:-");
  }

  @Test
  void aPinThatTheLoadHangsOnMayComeOutWhenABarJoinsItToAnother() {
    String unit =
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"elements": {"supply": {"kind": "load", "a": "30", "b": "31", "amps": 2, "critical": true},
                                "bar": {"kind": "link", "a": "31", "b": "31a"}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "ECU:30"}, "W2": {"from": "ECU:31", "to": "BAT:-"}%s}}
        """;
    assertThat(
            Judged.of(new EarthSingle(), unit.formatted(", " + wire("W3", "ECU:31a", "BAT:-")))
                .findings())
        .isEmpty();
    assertThat(Judged.of(new EarthSingle(), unit.formatted("")).messages())
        .containsExactly("critical load ECU.supply returns through ECU:31 alone");
  }

  @Test
  void twoPinsOnOneStudAreNoted() {
    String oneStud =
        String.join(
            ", ",
            wire("W2", "ECU:31", "E1:m6"),
            wire("W3", "ECU:31a", "E1:m6"),
            wire("W4", "E1:m6", "BAT:-"));
    assertThat(judged(oneStud + ", " + wire("W5", "LAMP:2", "BAT:-")).messages())
        .containsExactly("critical load ECU.supply returns through E1:m6 alone");
    assertThat(judged(oneStud + ", " + wire("W5", "LAMP:2", "E1:m6")).findings())
        .as("all loads return through the stud at the end of the battery's cable")
        .isEmpty();
    String twoStuds =
        String.join(
            ", ",
            wire("W2", "ECU:31", "E1:m6"),
            wire("W3", "ECU:31a", "E2:m6"),
            wire("W4", "E1:m6", "BAT:-"),
            wire("W5", "E2:m6", "BAT:-"));
    assertThat(judged(twoStuds).findings()).isEmpty();
  }

  @Test
  void aLoadWithoutReturnIsNotJudgedHere() {
    Judged judged = judged(wire("W2", "LAMP:2", "BAT:-"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
