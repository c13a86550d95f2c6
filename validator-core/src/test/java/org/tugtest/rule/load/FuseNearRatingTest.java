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
            "fuse FB.f1 (10 A) carries 7.51 A in state as drawn; at 25 °C at most 7.5"
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

  /** A fuse for a fan with a duty, and the earth of it. */
  private static Judged duty(String load, double rating, String area) {
    return Judged.of(
        new FuseNearRating(),
        """
        {"format": 1, "defaults": {"ambientC": 25},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": %s, "style": "blade-mini"}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2"%s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 10},
                   "W2": {"from": "FB:1", "to": "FAN:1", "areaMm2": %s},
                   "W3": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 4}}}
        """
            .formatted(rating, load, area));
  }

  @Test
  void aDutyCountsByItsRootMeanSquare() {
    // 10 A for a quarter of the time warm as 5 A do all the time: 10 * sqrt(0.25).
    String quarter = ", \"amps\": 10, \"dutyPercent\": 25";
    assertThat(duty(quarter, 7.5, "2.5").findings()).isEmpty();
    assertThat(duty(quarter, 6.6, "2.5").messages().get(0)).contains("carries 5 A in state");
    assertThat(duty(quarter, 6.6, "2.5").findings().get(0).details())
        .containsExactly("10.00 A while all of its loads draw; their duty counts");
    assertThat(duty(", \"amps\": 10", 7.5, "2.5").findings()).hasSize(1);
  }

  @Test
  void aLoadOfUnknownDrawLeavesItUnjudged() {
    assertThat(duty("", 7.5, "2.5").coverage().missing())
        .containsOnlyKeys("what flows through it is not known");
  }

  @Test
  void theRemedyNamesTheNextRatingAndTheWiresThatDoNotStandIt() {
    assertThat(duty(", \"amps\": 9", 10, "2.5").findings().get(0).remedy())
        .isEqualTo(
            "fit 15 A, which the wires it protects stand, or give some of its loads another way");
    assertThat(duty(", \"amps\": 9", 10, "0.35").findings().get(0).remedy())
        .isEqualTo(
            "give some of its loads another way; 15 A would do for the fuse, but is more than W2"
                + " stands");
    assertThat(duty(", \"amps\": 29", 30, "4").findings().get(0).remedy())
        .startsWith("give some of its loads another way: no blade-mini fuse is made for so much");
  }
}
