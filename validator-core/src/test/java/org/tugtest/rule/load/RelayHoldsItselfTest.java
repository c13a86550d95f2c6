package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class RelayHoldsItselfTest {
  private static Judged judged(String coil, String rest, String states) {
    return Judged.of(
        new RelayHoldsItself(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.01}}},
           "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
           "K": {"elements": {
             "coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80%s},
             "make": {"kind": "contact", "a": "30", "b": "86", "coil": "coil"%s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "K:30", "areaMm2": 1, "cutMm": 100},
                   "W2": {"from": "BAT:-", "to": "K:85", "areaMm2": 1, "cutMm": 100},
                   "W3": {"from": "BAT:+", "to": "SW:1", "areaMm2": 1, "cutMm": 100},
                   "W4": {"from": "SW:2", "to": "K:86", "areaMm2": 1, "cutMm": 100}},
         "states": {%s}}
        """
            .formatted(coil, rest, states));
  }

  @Test
  void aStateEnteredFromASaidOneIsFine() {
    Judged judged =
        judged("", "", "\"press\": {\"set\": {\"SW\": \"on\"}}, \"run\": {\"from\": \"press\"}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void anyOtherStateIsANote() {
    Judged judged =
        judged("", "", "\"press\": {\"set\": {\"SW\": \"on\"}}, \"run\": {}, \"idle\": {}");
    assertThat(judged.messages())
        .containsExactly(
            "coil K.coil rests pulled or released in states idle and run, depending on what was"
                + " before; it is reckoned with none of them pulled");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(judged.findings().get(0).details())
        .containsExactly("rests with none of them pulled", "rests with K.coil pulled");
  }

  @Test
  void aContactThatOpensDoesNotHold() {
    assertThat(
            judged("", ", \"rest\": \"closed\"", "\"press\": {\"set\": {\"SW\": \"on\"}}")
                .findings())
        .isEmpty();
  }

  @Test
  void voltsBetweenLettingGoAndPullingHoldEitherWay() {
    String pressed = "\"press\": {\"set\": {\"SW\": \"on\"}}";
    assertThat(judged(", \"pullInV\": 11.9, \"dropOutV\": 5", "", pressed).findings()).isEmpty();
    assertThat(judged(", \"pullInV\": 12.1, \"dropOutV\": 5", "", pressed).findings()).hasSize(1);
    assertThat(judged(", \"pullInV\": 13, \"dropOutV\": 12.1", "", pressed).findings()).isEmpty();
  }

  /** Its volts lie between those at which it lets go and pulls: that is the trouble. */
  @Test
  void aCoilOfTooManyVoltsFollowsFromWhatItLacks() {
    Judged judged =
        Judged.of(
            new RelayHoldsItself(),
            """
            {"format": 1, "sketch": true,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 90,
                                           "pullInV": 16, "dropOutV": 3},
                                  "c": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "K:86"}, "W2": {"from": "K:85", "to": "BAT:-"}},
             "states": {"on": {"on": ["K"]}}}
            """);
    assertThat(judged.findings())
        .singleElement()
        .satisfies(each -> assertThat(each.cause()).isEqualTo("volts-under-least(devices/K.coil)"));
  }
}
