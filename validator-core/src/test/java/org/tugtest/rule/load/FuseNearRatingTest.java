package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class FuseNearRatingTest {
  private static Judged judged(double amps, String fuse, String fitted, int celsius) {
    return Judged.of(
        new FuseNearRating(),
        """
        {"format": 1, "defaults": {"ambientC": 25},
         "parts": {"fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}}},
         "zones": {"bay": {"ambientC": %d}},
         "layout": {"nodes": {"n": {"zone": "bay"}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"at": "n", "elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"%s}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
         "fitted": {%s},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "FB:1", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}}
        """
            .formatted(celsius, fuse, amps, fitted));
  }

  private static final String F10 = "\"FB.f1\": \"f10\"";

  @Test
  void threeQuartersOfTheRatingAt25Degrees() {
    assertThat(judged(7.49, "", F10, 25).findings()).isEmpty();
    assertThat(judged(7.51, "", F10, 25).messages())
        .containsExactly(
            "fuse FB.f1 (10 A) carries 7.51 A in state as drawn; at 25 degrees Celsius at most 7.5"
                + " A for long");
    assertThat(judged(7.49, "", F10, 25).coverage().judged()).isEqualTo(1);
  }

  @Test
  void lessWhereItIsHotAndNoMoreWhereItIsCold() {
    assertThat(judged(5.99, "", F10, 75).findings()).as("80 % of 7.5 A at 75 degrees").isEmpty();
    assertThat(judged(6.01, "", F10, 75).findings()).hasSize(1);
    assertThat(judged(7.6, "", F10, 0).findings()).hasSize(1);
  }

  @Test
  void aFixedRatingCountsAndATripDoesNot() {
    assertThat(judged(4, ", \"ratingA\": 5", "", 25).findings()).hasSize(1);
    assertThat(judged(4, ", \"ratingA\": 5, \"electronic\": true", "", 25).coverage().subjects())
        .isZero();
  }

  @Test
  void anEmptyWayIsNoSubject() {
    assertThat(judged(4, "", "", 25).coverage().subjects()).isZero();
  }
}
