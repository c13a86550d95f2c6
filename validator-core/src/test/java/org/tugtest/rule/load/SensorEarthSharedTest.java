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

  /** A sensor whose reference goes to an earth point, while the unit has a pin for it. */
  private static Judged earthed(String reference, String bolted) {
    return Judged.of(
        new SensorEarthShared(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "BODY": {"elements": {"l": {"kind": "link", "a": "bat", "b": "nose"}}},
           "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"},
                                "idle": {"kind": "signal", "pin": "7", "type": "digital"},
                                "supply": {"kind": "load", "a": "30", "b": "31", "amps": 1},
                                "out": {"kind": "contact", "a": "5", "b": "31"},
                                "bar": {"kind": "link", "a": "2", "b": "31"}}},
           "SENSOR": {%s"elements": {"out": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"}}},
           "VALVE": {"elements": {"v": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 8}}}},
         "splices": {"E": {}},
         "wires": {"W1": {"from": "ECU:1", "to": "SENSOR:1"}%s,
                   "W3": {"from": "ECU:31", "to": "E"}, "W4": {"from": "E", "to": "BODY:bat"},
                   "W5": {"from": "BODY:bat", "to": "BAT:-"}, "W6": {"from": "FAN:2", "to": "BODY:nose"},
                   "W7": {"from": "BAT:+", "to": "FAN:1"}, "W8": {"from": "BAT:+", "to": "ECU:30"},
                   "W9": {"from": "BAT:+", "to": "VALVE:1"}, "W10": {"from": "VALVE:2", "to": "ECU:5"}}}
        """
            .formatted(bolted, reference));
  }

  @Test
  void aReferenceThatComesFromAnEarthPointIsFound() {
    assertThat(earthed(", \"W2\": {\"from\": \"SENSOR:2\", \"to\": \"ECU:2\"}", "").messages())
        .isEmpty();
    Judged nose = earthed(", \"W2\": {\"from\": \"SENSOR:2\", \"to\": \"BODY:nose\"}", "");
    assertThat(nose.messages())
        .containsExactly(
            "the reference of SENSOR.out comes to ECU:2 by way of W4, W3 and E, where VALVE.v"
                + " returns");
    assertThat(nose.coverage().judged()).isEqualTo(2);
    assertThat(earthed(", \"W2\": {\"from\": \"SENSOR:2\", \"to\": \"E\"}", "").messages())
        .containsExactly(
            "the reference of SENSOR.out comes to ECU:2 by way of W3 and E, where VALVE.v returns");
  }

  @Test
  void aSensorBoltedToTheEngineIsItsMakersMatter() {
    assertThat(earthed("", "\"boltedTo\": {\"2\": \"BODY:nose\"}, ").messages()).isEmpty();
  }

  /** A unit with as many signals as its sensor is the unit all the same. */
  @Test
  void theDeviceThatHoldsLessIsTheSensor() {
    Judged judged =
        Judged.of(
            new SensorEarthShared(),
            """
            {"format": 1, "sketch": true,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "INV": {"elements": {"thr": {"kind": "signal", "pin": "t", "type": "analog", "reference": "t0"},
                                    "bar": {"kind": "link", "a": "t0", "b": "31"},
                                    "con": {"kind": "contact", "a": "cd", "b": "31"}}},
               "THR": {"elements": {"o": {"kind": "signal", "pin": "3", "type": "analog", "reference": "2"}}},
               "HVC": {"elements": {"coil": {"kind": "coil", "a": "1", "b": "2", "ohms": 30}}}},
             "splices": {"E": {}},
             "wires": {"W1": {"from": "INV:t", "to": "THR:3"}, "W2": {"from": "THR:2", "to": "E"},
                       "W3": {"from": "INV:31", "to": "E"}, "W4": {"from": "E", "to": "BAT:-"},
                       "W5": {"from": "HVC:2", "to": "INV:cd"}, "W6": {"from": "BAT:+", "to": "HVC:1"}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "the reference of THR.o comes to INV:t0 by way of W3 and E, where HVC.coil returns");
  }
}
