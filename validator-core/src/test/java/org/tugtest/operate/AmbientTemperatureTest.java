package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;

class AmbientTemperatureTest {
  private static double celsius(String wire, String... sections) {
    Operated car =
        Operated.json("{\"format\": 1, \"sketch\": true, " + String.join(", ", sections) + "}");
    Facts facts = car.facts();
    return new AmbientTemperature(facts.harness(), facts.wiring(), facts.network())
        .celsius(Objects.requireNonNull(facts.harness().wires().get(wire)));
  }

  private static final String LAYOUT =
      """
      "zones": {"bay": {"ambientC": 90}, "cabin": {"ambientC": 35}, "damp": {"moisture": "wet"}},
      "layout": {"nodes": {"n1": {"zone": "bay"}, "n2": {"zone": "cabin"}, "n3": {"zone": "damp"}},
                 "segments": {"s": {"from": "n2", "to": "n1", "lengthMm": 100},
                              "t": {"from": "n2", "to": "n3", "lengthMm": 100, "zone": "cabin"}}},
      "devices": {"A": {"at": "n1", "pins": {"1": {}, "2": {"at": "n2"}}}, "B": {"at": "n2", "pins": {"1": {}}}, "C": {"at": "n3", "pins": {"1": {}}}},
      "splices": {"S": {"on": "s", "offsetMm": 50}, "T": {"on": "t", "offsetMm": 50}}
      """;

  private static String wire(String from, String to) {
    return "\"wires\": {\"W\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1}}"
        .formatted(from, to);
  }

  @Test
  void theWarmerEndCounts() {
    assertThat(celsius("W", LAYOUT, wire("A:1", "B:1"))).isEqualTo(90);
    assertThat(celsius("W", LAYOUT, wire("A:2", "B:1"))).isEqualTo(35);
    assertThat(celsius("W", LAYOUT, wire("B:1", "S"))).isEqualTo(90);
    assertThat(celsius("W", LAYOUT, wire("B:1", "T"))).isEqualTo(35);
  }

  @Test
  void whatNoZoneTellsIsTheDefault() {
    assertThat(celsius("W", LAYOUT, wire("C:1", "X:1"))).isEqualTo(40);
    assertThat(celsius("W", "\"defaults\": {\"ambientC\": 55}", wire("C:1", "X:1"))).isEqualTo(55);
    assertThat(celsius("W", LAYOUT, wire("C:1", "B:1"))).isEqualTo(40);
  }
}
