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

  /** A controller with a capacitor behind a contactor, and a pre-charge relay with a resistor. */
  private static Judged precharged(double microfarad, double ratingA, String states) {
    return Judged.of(
        new ContactWeldsOnInrush(),
        """
        {"format": 1, "defaults": {"nominalV": 48, "crimpMilliohm": 0},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 50, "ohms": 0.05}}},
           "K": {"elements": {"main": {"kind": "contact", "a": "1", "b": "2", "ratingA": %s}}},
           "PRE": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"},
                                "r": {"kind": "load", "a": "2", "b": "3", "ohms": 100, "use": "free"}}},
           "MC": {"elements": {"in": {"kind": "load", "a": "1", "b": "2", "ohms": 50, "use": "internal", "capacitanceUf": %s}}}},
         "parts": {"wires": {"w": {"areaMm2": 95, "maxC": 125, "milliohmPerM": 0.000001}}},
         "wires": {"W1": {"from": "BAT:+", "to": "K:1", "part": "w", "cutMm": 100},
                   "W2": {"from": "K:2", "to": "MC:1", "part": "w", "cutMm": 100},
                   "W3": {"from": "MC:2", "to": "BAT:-", "part": "w", "cutMm": 100},
                   "W4": {"from": "BAT:+", "to": "PRE:1", "part": "w", "cutMm": 100},
                   "W5": {"from": "PRE:3", "to": "MC:1", "part": "w", "cutMm": 100}},
         "states": {"drive": {"set": {"K": "on"}, "on": ["MC"]}%s}}
        """
            .formatted(ratingA, microfarad, states));
  }

  @Test
  void aCapacitorIsChargedThroughItsWayUnlessItIsChargedBefore() {
    assertThat(precharged(2001, 332, "").messages())
        .containsExactly(
            "contact K.main closes onto 999 A of MC.in in state drive; it can make 996 A");
    assertThat(precharged(2001, 334, "").findings()).as("50 V over 0.05 ohm").isEmpty();
    assertThat(precharged(1900, 10, "").findings()).as("charged within 0.1 ms").isEmpty();
    String charged = ", \"charging\": {\"set\": {\"PRE\": \"on\"}}";
    assertThat(precharged(2001, 10, charged).findings()).isEmpty();
    String idle = ", \"idle\": {}";
    assertThat(precharged(2001, 10, idle).messages()).as("open and not charged").hasSize(1);
  }

  @Test
  void ofTwoContactsInARowTheLastToCloseTakesTheCharge() {
    Judged judged =
        Judged.of(
            new ContactWeldsOnInrush(),
            """
            {"format": 1, "defaults": {"nominalV": 48},
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 50, "ohms": 0.05}}},
               "MSD": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2", "ratingA": 10}}},
               "K": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2", "ratingA": 10}}},
               "MC": {"elements": {"in": {"kind": "load", "a": "1", "b": "2", "ohms": 50, "use": "internal", "capacitanceUf": 9000}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "MSD:1", "areaMm2": 25, "cutMm": 100},
                       "W2": {"from": "MSD:2", "to": "K:1", "areaMm2": 25, "cutMm": 100},
                       "W3": {"from": "K:2", "to": "MC:1", "areaMm2": 25, "cutMm": 100},
                       "W4": {"from": "MC:2", "to": "BAT:-", "areaMm2": 25, "cutMm": 100}},
             "states": {"off": {}, "ready": {"set": {"MSD": "on"}},
                        "drive": {"set": {"MSD": "on", "K": "on"}, "on": ["MC"]}}}
            """);
    assertThat(judged.subjects()).containsExactly("devices/K.c");
  }
}
