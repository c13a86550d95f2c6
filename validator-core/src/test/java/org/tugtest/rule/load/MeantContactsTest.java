package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;

class MeantContactsTest {
  private static String remedy(Rule rule, boolean sketch, String feed, String earth) {
    Judged judged =
        Judged.of(
            rule,
            """
            {"format": 1, "sketch": %s,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "LAMP": {"elements": {"b": {"kind": "load", "a": "feed", "b": "earth", "amps": 1}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "%s"}, "W2": {"from": "%s", "to": "BAT:-"}}}
            """
                .formatted(sketch, feed, earth));
    return judged.findings().stream().map(Finding::remedy).findFirst().orElse("");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"LAMP:fed", "LAMP:feeds", "LAMP:fead", "LAMP:efed", "LMAP:feed", "LAM:feed"})
  void aPinOneEditAwayIsAskedFor(String written) {
    assertThat(remedy(new LoadUnfed(), true, written, "LAMP:earth"))
        .isEqualTo(
            "did you mean LAMP:feed? wire W1 ends on " + written + ", which nothing else names");
  }

  @ParameterizedTest
  @ValueSource(strings = {"LAMP:fd", "LAMP:plus", "HORN:feed"})
  void aPinFartherAwayIsNot(String written) {
    assertThat(remedy(new LoadUnfed(), true, written, "LAMP:earth")).startsWith("close what is");
  }

  @Test
  void aReturnIsAskedForToo() {
    assertThat(remedy(new LoadWithoutReturn(), true, "LAMP:feed", "LAMP:erth"))
        .isEqualTo("did you mean LAMP:earth? wire W2 ends on LAMP:erth, which nothing else names");
  }

  @Test
  void nothingIsAskedOutsideASketch() {
    assertThat(remedy(new LoadUnfed(), false, "LAMP:fed", "LAMP:earth")).doesNotContain("did you");
  }

  @Test
  void nothingIsAskedWhereTheLoadIsFed() {
    assertThat(remedy(new LoadUnfed(), true, "LAMP:feed", "LAMP:earth")).isEmpty();
  }
}
