package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class DeviceUnwiredTest {
  private static Judged judged(String more) {
    return Judged.of(
        new DeviceUnwired(),
        """
        {"format": 1, "sketch": true,
         "devices": {"WIRED": {}, "PLUGGED": {"ports": {"A": {}}}, "BOLTED": {"boltedTo":
                     {"case": "BLOCK:m8"}}, "BLOCK": {"pins": {"m8": {}}}, "D10": {}, "D9": {}},
         "connectors": {"X1": {"mates": "PLUGGED"}},
         "wires": {"W1": {"from": "WIRED:1", "to": "X1:1"}}%s}
        """
            .formatted(more));
  }

  @Test
  void devicesThatNothingReachesAreOneFinding() {
    Judged judged = judged("");
    assertThat(judged.messages())
        .containsExactly("nothing is wired, plugged or bolted to 2 devices: D9 and D10");
    assertThat(judged.subjects()).containsExactly("devices");
    assertThat(judged.coverage().judged()).isEqualTo(6);
  }

  @Test
  void oneMayBeLeftOutOfTheList() {
    assertThat(
            judged(
                    ", \"limits\": {\"device-unwired\": {\"places\": {\"devices/D9\":"
                        + " {\"level\": \"off\"}}}}")
                .messages())
        .containsExactly("nothing is wired, plugged or bolted to device D10");
  }

  @Test
  void deviceOfAnUnknownTypeOrBesideAnUnreadFileIsNotJudged() {
    assertThat(judged(", \"uses\": [\"gone.json\"]").messages()).isEmpty();
    Judged judged =
        Judged.of(new DeviceUnwired(), "{\"format\": 1, \"devices\": {\"D\": {\"type\": \"no\"}}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing()).containsOnlyKeys("what it is made of is not known");
  }

  private static Judged alternator(String more) {
    return Judged.of(
        new DeviceUnwired(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "BLOCK": {"elements": {"l": {"kind": "link", "a": "g1", "b": "alt"}}},
           "ALT": {%s"elements": {
             "gen": {"kind": "source", "plus": "w", "minus": "case", "volts": 14, "generator": true},
             "rect": {"kind": "diode", "a": "w", "b": "B+"},
             "field": {"kind": "load", "a": "w", "b": "case", "ohms": 6, "use": "free"}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "ALT:B+"}, "W2": {"from": "BAT:-", "to": "BLOCK:g1"}}}
        """
            .formatted(more));
  }

  @Test
  void aSourceWithoutAMinusIsFound() {
    assertThat(alternator("\"boltedTo\": {\"case\": \"BLOCK:alt\"}, ").messages()).isEmpty();
    assertThat(alternator("").messages())
        .containsExactly(
            "source ALT.gen gives nothing: its minus, ALT:case, is joined to nothing outside ALT");
  }
}
