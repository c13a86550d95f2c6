package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
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
}
