package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class ContactWeldsOnInrushTest {
  private static Judged judged(String rating, double one, double other) {
    return Judged.of(
        new ContactWeldsOnInrush(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"%s}}},
           "A": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 2, "inrushA": %s, "inrushS": 0.1}}},
           "B": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 2, "inrushA": %s, "inrushS": 0.1}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "A:1"},
                   "W3": {"from": "A:1", "to": "B:1"}, "W4": {"from": "A:2", "to": "BAT:-"},
                   "W5": {"from": "B:2", "to": "BAT:-"}}}
        """
            .formatted(rating, one, other));
  }

  @Test
  void threeTimesTheRatingIsTheLimitOfAllThatStartTogether() {
    String rating = ", \"ratingA\": 10";
    assertThat(judged(rating, 20, 9.9).findings()).isEmpty();
    assertThat(judged(rating, 20, 10).findings()).isEmpty();
    assertThat(judged(rating, 20, 10.1).messages())
        .containsExactly(
            "contact SW.contact closes onto 30.1 A of A.l and B.l in state as drawn; it can make 30"
                + " A");
    assertThat(judged(rating, 20, 9.9).coverage().judged()).isEqualTo(1);
  }

  @Test
  void withoutARatingItIsNotJudged() {
    assertThat(judged("", 20, 20).coverage().notJudged()).isEqualTo(1);
  }
}
