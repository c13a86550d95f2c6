package org.tugtest.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.rule.Judged;

class WireProtectionTest {
  private static final Facts FACTS =
      Judged.facts(
          Map.of(
              Judged.ROOT,
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10},
                                     "g": {"kind": "fuse", "a": "in", "b": "2",
                                           "electronic": true}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2"}}},
                 "STR": {"elements": {"m": {"kind": "load", "a": "1", "b": "2"}}}},
               "wires": {
                 "FEED": {"from": "BAT:+", "to": "FB:in", "areaMm2": 4},
                 "FLEX": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1},
                 "TRIP": {"from": "FB:2", "to": "OUT:1"},
                 "EARTH": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1},
                 "START": {"from": "BAT:+", "to": "STR:1", "areaMm2": 35},
                 "START-EARTH": {"from": "STR:2", "to": "BAT:-", "areaMm2": 35},
                 "LOOSE": {"from": "A:1", "to": "B:1", "areaMm2": 1}}}
              """));

  private static String of(String id) {
    Wire wire = Objects.requireNonNull(FACTS.harness().wires().get(id));
    return WireProtection.limitA(FACTS, wire)
        + " "
        + WireProtection.unbounded(FACTS, wire)
        + " "
        + (WireProtection.ampacityA(FACTS, wire) != null);
  }

  @Test
  void everySortOfWire() {
    assertThat(of("FEED")).isEqualTo("null true true");
    assertThat(of("FLEX")).isEqualTo("10.0 false true");
    assertThat(of("TRIP")).isEqualTo("null false false");
    assertThat(of("EARTH")).isEqualTo("10.0 false true");
    assertThat(of("START")).isEqualTo("null true true");
    assertThat(of("START-EARTH")).isEqualTo("null true true");
    assertThat(of("LOOSE")).isEqualTo("null null true");
  }
}
