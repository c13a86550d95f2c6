package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class ReferenceShiftedTest {
  /** 10 A through a long, thick, cold shared wire of so many milliohm: 5 mohm make 50 mV. */
  private static Judged judged(double milliohm, String type) {
    return Judged.of(
        new ReferenceShifted(),
        """
        {"format": 1, "defaults": {"crimpMilliohm": 0, "spliceMilliohm": 0, "ambientC": 20},
         "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 20, "conductorMm": 19, "milliohmPerM": %s}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "%s", "reference": "2"},
                                "bar": {"kind": "link", "a": "2", "b": "31"}}},
           "SENSOR": {"elements": {"out": {"kind": "signal", "pin": "1", "type": "%s", "reference": "2"}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 10}}}},
         "splices": {"S1": {}},
         "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "part": "w", "cutMm": 10},
                   "W2": {"from": "FAN:2", "to": "S1", "part": "w", "cutMm": 10},
                   "W3": {"from": "S1", "to": "BAT:-", "part": "w", "cutMm": 100000},
                   "W4": {"from": "ECU:31", "to": "BAT:-", "part": "w", "cutMm": 10},
                   "W5": {"from": "S1", "to": "SENSOR:2", "part": "w", "cutMm": 10},
                   "W6": {"from": "ECU:1", "to": "SENSOR:1", "part": "w", "cutMm": 10}}}
        """
            .formatted(milliohm / 100, type, type));
  }

  @Test
  void fiftyMillivoltAreTheLimit() {
    assertThat(judged(4.99, "analog").findings()).isEmpty();
    assertThat(judged(4.99, "analog").coverage().judged()).isEqualTo(1);
    Judged over = judged(5.02, "analog");
    assertThat(over.messages())
        .containsExactly(
            "the references ECU:2 and SENSOR:2 of one signal stand 50.2 mV apart in state as drawn;"
                + " at most 50 mV");
  }

  @Test
  void digitalSignalsDoNotCount() {
    assertThat(judged(50, "digital").coverage().subjects()).isZero();
    assertThat(judged(50, "pulse").findings()).hasSize(1);
  }
}
