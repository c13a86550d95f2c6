package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SpliceOverfilledTest {
  private static final String PART = "{\"areaMinMm2\": 1.0, \"areaMaxMm2\": 4.0, \"maxWires\": 3}";

  /** A splice S1 of that part with wires of these sizes ({@code "areaMm2": 1}). */
  private static Judged judged(String part, String... sizes) {
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= sizes.length; i++) {
      String size = sizes[i - 1].isEmpty() ? "" : ", " + sizes[i - 1];
      wires.append(",\"W%d\": {\"from\": \"R%d:1\", \"to\": \"S1\"%s}".formatted(i, i, size));
    }
    return Judged.of(
        new SpliceOverfilled(),
        """
        {"format": 1, "sketch": true, "parts": {"splices": {"s4": %s}},
         "splices": {"S1": {"part": "s4"}}, "wires": {%s}}
        """
            .formatted(part, wires.length() == 0 ? "" : wires.substring(1)));
  }

  private static String area(double mm2) {
    return "\"areaMm2\": " + mm2;
  }

  @Test
  void bothBoundsOfTheAreaAreAllowed() {
    assertThat(judged(PART, area(2.0), area(2.0)).messages()).isEmpty();
    assertThat(judged(PART, area(0.5), area(0.5)).messages()).isEmpty();
    assertThat(judged(PART, area(0.35), area(0.35), area(0.3)).coverage().judged()).isEqualTo(1);
    assertThat(judged(PART, area(0.35), area(0.35), area(0.3)).messages()).isEmpty();
  }

  @Test
  void justOverAndJustUnderTheAreaAreNot() {
    assertThat(judged(PART, area(2.0), area(2.01)).messages())
        .containsExactly(
            "splice S1 holds 4.01 mm2 of conductors; its part s4 takes at most 4 mm2 (W1 and W2)");
    assertThat(judged(PART, area(0.5), area(0.499)).messages())
        .containsExactly(
            "splice S1 holds 0.999 mm2 of conductors; its part s4 takes at least 1 mm2 (W1 and"
                + " W2)");
  }

  @Test
  void theWiresAreCounted() {
    assertThat(judged(PART, area(1), area(1), area(1)).messages()).isEmpty();
    Judged judged = judged(PART, area(1), area(1), area(1), area(0.5));
    assertThat(judged.messages())
        .containsExactly("splice S1 holds 4 wire ends; its part s4 takes 3 (W1, W2, W3 and W4)");
    assertThat(judged.findings()).extracting(Finding::level).containsExactly(Level.WARNING);
  }

  @Test
  void tooManyAndTooThickAreTwoFindingsOfOneSplice() {
    Judged judged = judged(PART, area(2), area(2), area(2), area(2));
    assertThat(judged.findings()).extracting(Finding::kind).containsExactly("wires", "area");
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void aWireWithoutAreaLeavesTheSumOpenUnlessItIsOverAlready() {
    Judged open = judged(PART, area(2), "");
    assertThat(open.messages()).isEmpty();
    assertThat(open.coverage().missing()).containsOnlyKeys("a wire on it gives no area");
    assertThat(judged(PART, area(2), area(2.5), "").messages())
        .containsExactly(
            "splice S1 holds at least 4.5 mm2 of conductors; its part s4 takes at most 4 mm2 (W1,"
                + " W2 and W3)");
    assertThat(judged("{\"maxWires\": 2}", "", "").coverage().judged()).isEqualTo(1);
  }

  @Test
  void gaugesComeFromTheTable() {
    Judged judged = judged(PART, "\"awg\": \"12\"", "\"awg\": \"16\"");
    assertThat(judged.messages()).hasSize(1);
    assertThat(judged.findings().get(0).basis()).isEqualTo(Basis.SOURCE);
  }

  @Test
  void withoutAPartThereIsNothingToCompare() {
    Judged judged =
        Judged.of(
            new SpliceOverfilled(),
            """
            {"format": 1, "parts": {"splices": {"bare": {}}},
             "splices": {"S1": {}, "S2": {"part": "s9"}, "S3": {"part": "bare"}}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys(
            "it names no splice part",
            "its splice part is not known",
            "its splice part gives no figures");
  }
}
