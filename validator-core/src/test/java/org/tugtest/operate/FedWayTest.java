package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FedWayTest {
  /** A generator that stands still beside the load is not what feeds it. */
  @Test
  void theWayBeginsAtASourceThatGives() {
    Operated car =
        Operated.json(
            """
            {"format": 1, "sketch": true,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "INV": {"elements": {
                 "drive": {"kind": "load", "a": "p", "b": "m", "amps": 5},
                 "brake": {"kind": "source", "plus": "p", "minus": "m", "volts": 13, "generator": true}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "INV:p", "areaMm2": 4, "cutMm": 500},
                       "W2": {"from": "INV:m", "to": "BAT:-", "areaMm2": 4, "cutMm": 500}},
             "states": {"drive": {"on": ["INV"]}}}
            """);
    OperatingPoint drive = car.in("drive");
    assertThat(FedWay.to(car.facts().network(), drive, car.element("INV.drive")))
        .hasValueSatisfying(way -> assertThat(way.text()).isEqualTo("BAT:+ -W1- INV:p"));
  }
}
