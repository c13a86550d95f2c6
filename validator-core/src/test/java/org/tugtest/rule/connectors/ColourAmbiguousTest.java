package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class ColourAmbiguousTest {
  /** Wires W1, W2, .. from X1:1, X1:2, .. with these fields. */
  private static Judged judged(String... fields) {
    return judgedWith("", fields);
  }

  private static Judged judgedWith(String more, String... fields) {
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= fields.length; i++) {
      String own = fields[i - 1].contains("\"to\"") ? "" : "\"to\": \"R%d:1\", ".formatted(i);
      wires.append(", \"W%d\": {\"from\": \"X1:%d\", %s%s}".formatted(i, i, own, fields[i - 1]));
    }
    return Judged.of(
        new ColourAmbiguous(),
        "{\"format\": 1, \"sketch\": true, %s \"wires\": {%s}}"
            .formatted(more, wires.substring(2)));
  }

  private static String wire(String colour, double area) {
    return "\"colour\": \"%s\", \"areaMm2\": %s".formatted(colour, area);
  }

  private static String bare(String colour, double area) {
    return wire(colour, area) + ", \"label\": \"\"";
  }

  @Test
  void anotherStripeOrSizeTellsThemApart() {
    Judged judged = judged(bare("RD", 0.5), bare("RD/WH", 0.5), bare("RD", 0.75));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void theSameWithoutLabelsIsAWarning() {
    Judged judged = judged(bare("RD", 0.5), bare("RD", 0.5), bare("BK", 0.5));
    assertThat(judged.messages())
        .containsExactly(
            "X1 holds wires that look alike: W1 in X1:1 and W2 in X1:2, all RD 0.5 mm2");
    assertThat(judged.findings()).extracting(Finding::level).containsExactly(Level.WARNING);
    assertThat(judged.subjects()).containsExactly("connectors/X1");
  }

  @Test
  void withALabelOnEachItIsANote() {
    assertThat(judged(wire("RD", 0.5), wire("RD", 0.5), wire("BK", 0.5)).findings())
        .extracting(Finding::level)
        .containsExactly(Level.NOTE);
    assertThat(
            judged(
                    wire("RD", 0.5) + ", \"label\": \"7\"",
                    wire("RD", 0.5) + ", \"label\": \"7\"",
                    wire("BK", 0.5))
                .findings())
        .extracting(Finding::level)
        .containsExactly(Level.WARNING);
  }

  @Test
  void oneColourForAllWithLabelsIsAChoice() {
    Judged judged = judged(wire("WH", 0.5), wire("WH", 0.5));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
    assertThat(judged(wire("WH", 0.5), bare("WH", 0.5)).messages()).hasSize(1);
  }

  @Test
  void oneColourInOnePlugOfAColouredHarnessIsNoChoice() {
    assertThat(
            judged(
                    wire("BK", 0.5),
                    wire("BK", 0.5),
                    "\"from\": \"A:1\", " + wire("RD", 1),
                    "\"from\": \"A:2\", " + wire("GN", 1))
                .findings())
        .extracting(Finding::level)
        .containsExactly(Level.NOTE);
  }

  @Test
  void wiresThatLeadToOnePlaceMayBeExchanged() {
    assertThat(
            judged(
                    bare("BK", 1) + ", \"to\": \"S1\"",
                    bare("BK", 1) + ", \"to\": \"S1\"",
                    bare("RD", 1))
                .messages())
        .isEmpty();
    assertThat(
            judged(
                    bare("BK", 1) + ", \"to\": \"S1\"",
                    bare("BK", 1) + ", \"to\": \"S2\"",
                    bare("RD", 1))
                .messages())
        .hasSize(1);
  }

  @Test
  void sizesWithinTheSettingLookTheSame() {
    assertThat(judged(bare("RD", 0.5), bare("RD", 0.55), bare("BK", 1)).messages()).hasSize(1);
    assertThat(judged(bare("RD", 0.5), bare("RD", 0.551), bare("BK", 1)).messages()).isEmpty();
    assertThat(
            judgedWith(
                    "\"limits\": {\"colour-ambiguous\": {\"alikePercent\": 0}},",
                    bare("RD", 0.5),
                    bare("RD", 0.55))
                .messages())
        .isEmpty();
  }

  @Test
  void sizesThatAreNotGivenLeaveItOpen() {
    Judged judged = judged("\"colour\": \"RD\"", "\"colour\": \"RD\"", "\"colour\": \"BK\"");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("wires of the same colour give no area");
    assertThat(judged("\"colour\": \"RD\"", "\"colour\": \"BK\"").coverage().judged()).isEqualTo(1);
  }

  @Test
  void withoutColoursThereIsNothingToCompare() {
    Judged judged = judged("\"areaMm2\": 1", "\"areaMm2\": 1");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("none or only one of its wires gives a colour");
  }

  @Test
  void twoEndsOfOneWireAndTwoWiresInOneCavityAreNotConfused() {
    Judged judged =
        Judged.of(
            new ColourAmbiguous(),
            """
            {"format": 1, "sketch": true,
             "wires": {"W1": {"from": "X1:1", "to": "X1:2", "colour": "RD", "areaMm2": 1, "label": ""},
                       "W2": {"from": "Y1:1", "to": "A:1", "colour": "RD", "areaMm2": 1, "label": ""},
                       "W3": {"from": "Y1:1", "to": "B:1", "colour": "RD", "areaMm2": 1}}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }
}
