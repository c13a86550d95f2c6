package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SpliceUnderfilledTest {
  private static String sketch(String splices, String wires) {
    return """
    {"format": 1, "sketch": true, "splices": %s, "wires": %s}
    """
        .formatted(splices, wires);
  }

  private static Judged judged(String splices, String wires) {
    return Judged.of(new SpliceUnderfilled(), sketch(splices, wires));
  }

  @Test
  void twoEndsAreEnough() {
    Judged judged =
        judged(
            "{\"S1\": {}}",
            """
            {"W1": {"from": "A:1", "to": "S1"}, "W2": {"from": "S1", "to": "B:1"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void oneEndIsTooFew() {
    Judged judged = judged("{\"S1\": {}}", "{\"W1\": {\"from\": \"A:1\", \"to\": \"S1\"}}");
    assertThat(judged.messages())
        .containsExactly("splice S1 holds only wire W1; it needs at least 2");
    assertThat(judged.subjects()).containsExactly("splices/S1");
  }

  @Test
  void noEndIsTooFewForAnEndCapAndOneIsEnough() {
    assertThat(judged("{\"E1\": {\"kind\": \"end-cap\"}}", "{}").messages())
        .containsExactly("end cap E1 holds no wire; it needs at least 1");
    assertThat(
            judged(
                    "{\"E1\": {\"kind\": \"end-cap\"}}",
                    "{\"W1\": {\"from\": \"A:1\", \"to\": \"E1\"}}")
                .messages())
        .isEmpty();
  }

  @Test
  void bothEndsOfOneWireCountAsTwo() {
    assertThat(judged("{\"S1\": {}}", "{\"W1\": {\"from\": \"S1\", \"to\": \"S1\"}}").messages())
        .isEmpty();
  }

  @Test
  void bareNamesOfASketchThatOneWireNamesAreOneWarning() {
    Judged judged =
        judged(
            "{}",
            """
            {"W1": {"from": "GND", "to": "A:1"}, "W2": {"from": "GND", "to": "A:2"},
             "W3": {"from": "A:3", "to": "HORN"}, "W4": {"from": "PUMP", "to": "A:4"}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "2 names of this sketch are no contacts and stand on one wire each: open ends?");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).details())
        .containsExactly("HORN (\"to\" of wire W3)", "PUMP (\"from\" of wire W4)");
    assertThat(judged("{}", "{\"W3\": {\"from\": \"A:3\", \"to\": \"HORN\"}}").messages())
        .containsExactly(
            "HORN (\"to\" of wire W3) names no contact, and no other wire names it: an open end?");
  }
}
