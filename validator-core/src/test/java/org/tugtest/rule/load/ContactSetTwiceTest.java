package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class ContactSetTwiceTest {
  private static Judged judged(String set) {
    return Judged.of(
        new ContactSetTwice(),
        """
        {"format": 1,
         "devices": {
           "ECU": {"positions": ["idle", "run"],
                   "elements": {"fan": {"kind": "contact", "a": "1", "b": "31", "closedIn": ["run"]},
                                "pump": {"kind": "contact", "a": "2", "b": "31", "closedIn": ["idle"]}}},
           "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                              "main": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"}}}},
         "states": {"s": {"set": {%s}}}}
        """
            .formatted(set));
  }

  @Test
  void aContactThatNothingElseClosesMayBeSet() {
    Judged judged = judged("\"ECU\": \"run\", \"ECU.pump\": \"on\"");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void aContactMayBeHeldOpen() {
    assertThat(judged("\"ECU\": \"run\", \"ECU.fan\": \"off\"").messages()).isEmpty();
  }

  @Test
  void aContactThatThePositionClosesIsSaidTwice() {
    Judged judged = judged("\"ECU\": \"run\", \"ECU.fan\": \"on\"");
    assertThat(judged.messages())
        .containsExactly("state s closes ECU.fan twice: position run of ECU closes it already");
    assertThat(judged.findings().get(0).at())
        .anySatisfy(place -> assertThat(place.pointer()).isEqualTo("/states/s/set/ECU.fan"));
  }

  /** Without a word on the device it is in its first position. */
  @Test
  void theFirstPositionCounts() {
    assertThat(judged("\"ECU.pump\": \"on\"").messages())
        .containsExactly("state s closes ECU.pump twice: position idle of ECU closes it already");
    assertThat(judged("\"ECU.fan\": \"on\"").messages()).isEmpty();
  }

  @Test
  void aRelayContactIsNotHeld() {
    assertThat(judged("\"K.main\": \"on\"").messages())
        .containsExactly("state s holds K.main on, whatever its coil does");
    assertThat(judged("\"K.main\": \"off\"").messages())
        .containsExactly("state s holds K.main off, whatever its coil does");
  }
}
