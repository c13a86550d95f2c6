package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SourcesSideBySideTest {
  private static Judged judged(String second, String joint, String rest) {
    return Judged.of(
        new SourcesSideBySide(),
        """
        {"format": 1,
         "devices": {
           "B1": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
           "B2": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", %s}}},
           "J": {"elements": {"plus": {"a": "1", "b": "2", %s},
                              "minus": {"kind": "link", "a": "3", "b": "4"}}}},
         "wires": {"W1": {"from": "B1:+", "to": "J:1", "areaMm2": 16, "cutMm": 300},
                   "W2": {"from": "J:2", "to": "B2:+", "areaMm2": 16, "cutMm": 300},
                   "W3": {"from": "B1:-", "to": "J:3", "areaMm2": 16, "cutMm": 300},
                   "W4": {"from": "J:4", "to": "B2:-", "areaMm2": 16, "cutMm": 300}} %s}
        """
            .formatted(second, joint, rest));
  }

  private static final String LINK = "\"kind\": \"link\"";
  private static final String SWITCH = "\"kind\": \"contact\"";

  /** 0.5 V may be between them: just under, at, and over. */
  @Test
  void batteriesMayDifferByHalfAVolt() {
    assertThat(judged("\"volts\": 12.11", LINK, "").messages()).isEmpty();
    assertThat(judged("\"volts\": 12.1", LINK, "").messages()).isEmpty();
    Judged over = judged("\"volts\": 12.09", LINK, "");
    assertThat(over.messages())
        .containsExactly(
            "B1.cell and B2.cell are side by side in state as drawn, but their open volts differ by"
                + " 0.51 V; at most 0.5 V");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void anOpenSwitchPartsThemAndAClosedOneDoesNot() {
    String states = ", \"states\": {\"apart\": {}, \"together\": {\"set\": {\"J\": \"on\"}}}";
    Judged judged = judged("\"volts\": 24", SWITCH, states);
    assertThat(judged.messages())
        .containsExactly(
            "B1.cell and B2.cell are side by side in state together, but their open volts differ by"
                + " 11.4 V; at most 0.5 V");
    assertThat(judged("\"volts\": 24", SWITCH, ", \"states\": {\"apart\": {}}").messages())
        .isEmpty();
  }

  @Test
  void theVoltsOfTheStateCount() {
    String states = ", \"states\": {\"low\": {\"volts\": {\"B2\": 11}}}";
    assertThat(judged("\"volts\": 12.6", LINK, states).messages()).hasSize(1);
  }

  /** A battery is charged by a generator of higher volts. */
  @Test
  void aGeneratorMayGiveMore() {
    assertThat(judged("\"volts\": 14.2, \"generator\": true", LINK, "").messages()).isEmpty();
  }

  @Test
  void withoutVoltsNothingIsSaidToDiffer() {
    assertThat(judged("\"ohms\": 0.01", LINK, "").messages()).isEmpty();
  }

  @Test
  void twoInARowAreNotSideBySide() {
    Judged judged =
        Judged.of(
            new SourcesSideBySide(),
            """
            {"format": 1,
             "devices": {
               "B1": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "B2": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 6}}}},
             "wires": {"W1": {"from": "B1:+", "to": "B2:-", "areaMm2": 16, "cutMm": 300}}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void onTheSamePinsNothingHasAResistance() {
    Judged judged =
        Judged.of(
            new SourcesSideBySide(),
            """
            {"format": 1,
             "devices": {
               "B1": {"elements": {"one": {"kind": "source", "plus": "+", "minus": "-", "volts": 12},
                                   "two": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "B1.one and B1.two are joined at both ends without any resistance in state as drawn");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
  }
}
