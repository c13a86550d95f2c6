package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class CoveringLooseTest {
  /** One wire of 3 mm in this covering. */
  private static Judged in(String covering) {
    String json =
        Loom.of("\"coverings\": [\"t\"]")
            .json()
            .replace("\"tape\": {", "\"t\": " + covering + ", \"tape\": {");
    return Judged.of(new CoveringLoose(), json);
  }

  @Test
  void aSleeveClosesOnItsLeastDiameter() {
    String sleeve = "{\"kind\": \"braided-sleeve\", \"innerMinMm\": %s, \"innerMaxMm\": 12}";
    assertThat(in(sleeve.formatted("3")).messages()).isEmpty();
    Judged loose = in(sleeve.formatted("3.1"));
    assertThat(loose.messages())
        .containsExactly(
            "the bundle in segment s1 is expected to be 3 mm thick; t closes on no less than 3.1"
                + " mm");
    assertThat(loose.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(loose.findings().get(0).remedy()).isEqualTo("take c5, which fits");
  }

  @Test
  void aQuarterOfAFixedCircleIsEnough() {
    String tube = "{\"kind\": \"split-conduit\", \"innerMm\": %s}";
    assertThat(in(tube.formatted("6")).messages()).isEmpty();
    assertThat(in(tube.formatted("6.1")).messages())
        .containsExactly("the bundle in segment s1 fills 24.2 % of t; less than 25 % is loose");
  }

  @Test
  void theThinnestPieceDecides() {
    Loom loom =
        Loom.of("\"coverings\": [\"c8\"]")
            .wired("\"W2\": {\"from\": \"S\", \"to\": \"B:2\", \"part\": \"w3\"}")
            .with("\"splices\": {\"S\": {\"on\": \"s1\", \"offsetMm\": 400}}");
    assertThat(loom.judged(new CoveringLoose()).messages())
        .containsExactly(
            "the bundle in segment s1 is expected to be 3 mm thick where it is thinnest; c8 closes"
                + " on no less than 4 mm");
    assertThat(
            Loom.of("\"coverings\": [\"c8\"]")
                .wired(Loom.wire("W2", "A:2", "B:2", "w3"))
                .judged(new CoveringLoose())
                .messages())
        .isEmpty();
  }

  @Test
  void tapeIsNeverLooseAndARangeWithoutLeastIsNotJudged() {
    assertThat(in("{\"kind\": \"tape\"}").coverage().judged()).isEqualTo(1);
    assertThat(
            in("{\"kind\": \"braided-sleeve\", \"innerMaxMm\": 40}").coverage().missing().keySet())
        .containsExactly("its covering gives no least diameter");
  }

  @Test
  void whatMayHoldAWireWithoutARouteIsNotJudged() {
    Loom loose = Loom.of("\"coverings\": [\"c8\"]");
    assertThat(loose.judged(new CoveringLoose()).messages()).hasSize(1);
    for (String lost :
        List.of("\"from\": \"A:2\", \"to\": \"D:2\"", "\"from\": \"A:2\", \"to\": \"C:2\"")) {
      Judged judged = loose.wired("\"W2\": {" + lost + "}").judged(new CoveringLoose());
      assertThat(judged.messages()).isEmpty();
      assertThat(judged.coverage().missing().keySet())
          .containsExactly("a wire without a route may run along it");
    }
    assertThat(
            loose
                .wired("\"W2\": {\"from\": \"A:2\", \"to\": \"D:2\", \"decision\": \"remove\"}")
                .judged(new CoveringLoose())
                .messages())
        .hasSize(1);
    assertThat(
            Loom.of("\"coverings\": [\"c5\"]")
                .wired("\"W2\": {\"from\": \"A:2\", \"to\": \"D:2\"}")
                .judged(new CoveringLoose())
                .coverage()
                .judged())
        .isEqualTo(1);
  }
}
