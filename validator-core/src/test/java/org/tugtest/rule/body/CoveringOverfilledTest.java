package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class CoveringOverfilledTest {
  private static Loom covered(String coverings, String... wires) {
    Loom loom = Loom.of("\"coverings\": [" + coverings + "]");
    return wires.length == 0 ? loom : loom.wired(wires);
  }

  /** One wire of 3 mm in a tube of so many mm. */
  private static Judged single(String inner) {
    String json =
        Loom.of("\"coverings\": [\"t\"]")
            .json()
            .replace(
                "\"tape\": {",
                "\"t\": {\"kind\": \"heat-shrink\", \"innerMaxMm\": " + inner + "}, \"tape\": {");
    return Judged.of(new CoveringOverfilled(), json);
  }

  @Test
  void fillUpToEightyPercentIsFine() {
    // 3 / sqrt(0.8) = 3.3541
    assertThat(single("3.3542").messages()).isEmpty();
    Judged tight = single("3.354");
    assertThat(tight.messages())
        .containsExactly(
            "the bundle of 1 wire in segment s1 fills 80.005 % of t (3.4 mm); at most 80 % is good"
                + " practice");
    assertThat(tight.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(tight.findings().get(0).remedy()).isEqualTo("take c5 (to 5 mm), which fits");
  }

  @Test
  void whatDoesNotGoInIsAnError() {
    assertThat(single("3").findings().get(0).level()).isEqualTo(Level.WARNING);
    Judged out = single("2.9");
    assertThat(out.messages())
        .containsExactly(
            "the bundle of 1 wire in segment s1 is expected to be 3 mm thick; t takes at most 2.9"
                + " mm");
    assertThat(out.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void theThickestPieceDecidesAndIsNamed() {
    Loom loom =
        covered("\"c5\"", "\"W2\": {\"from\": \"S\", \"to\": \"B:2\", \"part\": \"w3\"}")
            .with("\"splices\": {\"S\": {\"on\": \"s1\", \"offsetMm\": 400}}");
    assertThat(loom.judged(new CoveringOverfilled()).messages())
        .containsExactly(
            "the bundle of 2 wires in segment s1 from 400 to 1000 mm is expected to be 6 mm thick;"
                + " c5 takes at most 5 mm");
  }

  @Test
  void eachCoveringGoesOverWhatIsRoundItAlready() {
    // 3 mm in c5 (wall 0.5) is 4 mm: fine in c8, but 5 + .. over a conduit of 14 mm is not
    assertThat(covered("\"c5\", \"c8\"").judged(new CoveringOverfilled()).messages()).isEmpty();
    assertThat(covered("\"p12\", \"c8\"").judged(new CoveringOverfilled()).messages())
        .containsExactly(
            "the bundle of 1 wire with what is round it already in segment s1 is expected to be 14"
                + " mm thick; c8 takes at most 8 mm");
  }

  @Test
  void tapeTakesAnything() {
    assertThat(covered("\"tape\"").judged(new CoveringOverfilled()).coverage().judged())
        .isEqualTo(1);
  }

  @Test
  void aBootTakesTheThickestSegmentAtItsNodeOrTheWiresOfItsConnector() {
    Loom loom =
        Loom.of("")
            .wired(
                Loom.wire("W2", "A:2", "B:2", "w3"),
                "\"W3\": {\"from\": \"X:1\", \"to\": \"B:3\", \"part\": \"w3\"}",
                "\"W4\": {\"from\": \"X:2\", \"to\": \"B:4\", \"part\": \"w3\"}")
            .with("\"connectors\": {\"X\": {\"housing\": \"h\", \"at\": \"a\", \"boot\": \"c5\"}}");
    String json =
        loom.json()
            .replace(
                "\"supports\":",
                "\"housings\": {\"h\": {\"side\": \"pin\", \"rows\": [[\"1\", \"2\"]]}},"
                    + " \"supports\":")
            .replace("\"nodes\": {}", "\"nodes\": {\"b\": {\"coverings\": [\"c8\"]}}");
    Judged judged = Judged.of(new CoveringOverfilled(), json);
    assertThat(judged.subjects()).containsExactly("nodes/b", "connectors/X");
    assertThat(judged.messages().get(0)).startsWith("the bundle of 4 wires in node b fills 82");
    assertThat(judged.messages().get(1))
        .isEqualTo(
            "the bundle of 2 wires in connector X is expected to be 6 mm thick; c5 takes at most 5"
                + " mm");
  }

  @Test
  void whatCannotBeJudgedSaysWhy() {
    assertThat(
            covered("\"c5\"", "\"W2\": {\"from\": \"A:2\", \"to\": \"B:2\"}")
                .judged(new CoveringOverfilled())
                .coverage()
                .missing()
                .keySet())
        .containsExactly("a wire on it has no diameter");
    assertThat(covered("\"gone\"").judged(new CoveringOverfilled()).coverage().missing().keySet())
        .containsExactly("a part that it names is not defined");
    assertThat(
            Loom.of("")
                .and(Loom.segment("s2", "b", "c", 10, "\"coverings\": [\"c5\"]"))
                .judged(new CoveringOverfilled())
                .coverage()
                .missing()
                .keySet())
        .containsExactly("no wire is routed along it");
  }

  @Test
  void aTeamMayFillMoreOrLess() {
    String limits = "\"limits\": {\"covering-overfilled\": {\"percent\": 35}}";
    // 3 mm in 5 mm is 36 %
    assertThat(covered("\"c5\"").with(limits).judged(new CoveringOverfilled()).messages())
        .hasSize(1);
    assertThat(
            covered("\"c5\"")
                .with(limits.replace("35", "36"))
                .judged(new CoveringOverfilled())
                .messages())
        .isEmpty();
  }

  @Test
  void aCoveringThatIsWrittenWronglyHasItsFindingAlready() {
    String json =
        Loom.of("\"coverings\": [\"c8\"]")
            .json()
            .replace(
                "\"innerMinMm\": 4, \"innerMaxMm\": 8", "\"innerMinMm\": 8, \"innerMaxMm\": 2");
    for (org.tugtest.rule.Rule rule : List.of(new CoveringOverfilled(), new CoveringLoose())) {
      Judged judged = Judged.of(rule, json);
      assertThat(judged.messages()).isEmpty();
      assertThat(judged.coverage().missing().keySet())
          .containsExactly("a field of it is not written rightly");
    }
  }
}
