package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class SwitchOverloadedTest {
  private static Judged judged(String rating, double amps, String states) {
    return Judged.of(
        new SwitchOverloaded(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"%s}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}%s}
        """
            .formatted(rating, amps, states));
  }

  @Test
  void theRatingIsTheLimit() {
    String rating = ", \"ratingA\": 5";
    assertThat(judged(rating, 4.99, "").findings()).isEmpty();
    assertThat(judged(rating, 5.01, "").messages())
        .containsExactly("contact SW.contact carries 5.01 A in state as drawn; it is rated 5 A");
    assertThat(judged(rating, 4.99, "").coverage().judged()).isEqualTo(1);
  }

  @Test
  void briefStatesAreLeftOut() {
    String rating = ", \"ratingA\": 5";
    String brief =
        ", \"states\": {\"crank\": {\"set\": {\"SW\": \"on\"}, \"on\": [\"FAN\"], \"brief\": true},"
            + " \"off\": {}}";
    assertThat(judged(rating, 50, brief).findings()).isEmpty();
    String lasting = brief.replace(", \"brief\": true", "");
    assertThat(judged(rating, 50, lasting).findings()).hasSize(1);
  }

  @Test
  void withoutARatingItIsNotJudged() {
    assertThat(judged("", 5, "").coverage().notJudged()).isEqualTo(1);
  }

  @Test
  void aDutyCountsByItsRootMeanSquare() {
    // 10 A for a quarter of the time warm as 5 A do all the time: 10 * sqrt(0.25).
    String quarter = "10, \"dutyPercent\": 25";
    assertThat(drawing(", \"ratingA\": 5.1", quarter).findings()).isEmpty();
    assertThat(drawing(", \"ratingA\": 4.9", quarter).messages().get(0)).contains("carries 5 A");
    assertThat(drawing(", \"ratingA\": 5.1", "10").findings()).hasSize(1);
  }

  @Test
  void aLoadOfUnknownDrawLeavesItUnjudged() {
    assertThat(drawing(", \"ratingA\": 5", "null").coverage().missing())
        .containsOnlyKeys("what flows through it is not known");
  }

  private static Judged drawing(String rating, String amps) {
    String car =
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"%s}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}}
        """;
    return Judged.of(
        new SwitchOverloaded(), car.formatted(rating, amps).replace(", \"amps\": null", ""));
  }
}
