package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class SensorEarthSharedTest {
  private static Judged judged(String wires) {
    return judged("", wires);
  }

  private static Judged judged(String ofSensor, String wires) {
    return Judged.of(
        new SensorEarthShared(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"},
                                "oil": {"kind": "signal", "pin": "3", "type": "pulse", "reference": "2"},
                                "key": {"kind": "signal", "pin": "4", "type": "digital", "reference": "2"},
                                "bar": {"kind": "link", "a": "2", "b": "31"}}},
           "SENSOR": {"elements": {"out": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"}%s}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 8}}}},
         "splices": {"S1": {}, "S2": {}},
         "wires": {"W4": {"from": "ECU:31", "to": "BAT:-"}, %s}}
        """
            .formatted(ofSensor, wires));
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  @Test
  void aReferenceOfItsOwnIsFine() {
    Judged judged = judged(wire("W1", "ECU:2", "SENSOR:2") + ", " + wire("W2", "FAN:2", "BAT:-"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aLoadOnTheReferencesSpliceIsFound() {
    Judged judged =
        judged(
            String.join(
                ", ",
                wire("W1", "ECU:2", "S1"),
                wire("W2", "S1", "SENSOR:2"),
                wire("W3", "S1", "FAN:2")));
    assertThat(judged.messages())
        .containsExactly(
            "the return of load FAN.motor takes W1 and S1, over which ECU.oil, ECU.temp and"
                + " SENSOR.out are measured");
    assertThat(judged.subjects()).containsExactly("devices/FAN.motor");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void sharingOnlyAStudIsFine() {
    Judged judged =
        judged(
            String.join(
                ", ",
                wire("W1", "BAT:-", "SENSOR:2"),
                wire("W2", "FAN:2", "BAT:-"),
                wire("W5", "ECU:2", "BAT:-")));
    assertThat(judged.findings()).isEmpty();
  }

  @Test
  void aLoadThatBranchesOffBesideTheReferenceIsFine() {
    Judged judged =
        judged(
            String.join(
                ", ",
                wire("W1", "ECU:2", "S1"),
                wire("W2", "S1", "SENSOR:2"),
                wire("W3", "FAN:2", "S2"),
                wire("W5", "S2", "BAT:-")));
    assertThat(judged.findings()).isEmpty();
  }

  @Test
  void theSensorsOwnSupplyIsNoStranger() {
    Judged judged =
        judged(
            ", \"feed\": {\"kind\": \"load\", \"a\": \"5\", \"b\": \"2\", \"amps\": 0.01}",
            wire("W1", "ECU:2", "SENSOR:2"));
    assertThat(judged.findings()).isEmpty();
  }

  @Test
  void aReferenceThatNothingElseNamesCountsByItsOwnWire() {
    Judged judged =
        Judged.of(
            new SensorEarthShared(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"},
                                    "bar": {"kind": "link", "a": "2", "b": "31"}}},
               "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 8}}}},
             "wires": {"W1": {"from": "ECU:31", "to": "BAT:-"}, "W2": {"from": "FAN:2", "to": "ECU:2"}}}
            """);
    assertThat(judged.messages())
        .containsExactly("the return of load FAN.motor takes W2, over which ECU.temp is measured");
  }
}
