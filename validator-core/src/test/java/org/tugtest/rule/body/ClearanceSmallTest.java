package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class ClearanceSmallTest {
  private static Judged judged(String near, double mm, String more) {
    return Loom.of("\"clearanceMm\": {\"%s\": %s}%s".formatted(near, mm, more))
        .judged(new ClearanceSmall());
  }

  private static void levels(String near, String more, Object... rows) {
    for (int i = 0; i < rows.length; i += 2) {
      Judged judged = judged(near, ((Number) rows[i]).doubleValue(), more);
      assertThat(judged.findings().stream().map(Finding::level).toList())
          .as("%s %s", near, rows[i])
          .isEqualTo(rows[i + 1] == null ? List.of() : List.of(rows[i + 1]));
      assertThat(judged.coverage().judged()).isEqualTo(1);
    }
  }

  @Test
  void fuelLines() {
    levels(
        "fuel",
        "",
        153,
        null,
        152,
        null,
        151.9,
        Level.WARNING,
        51,
        Level.WARNING,
        50.9,
        Level.ERROR,
        0,
        Level.ERROR);
    assertThat(judged("fuel", 151.9, "").messages())
        .containsExactly(
            "segment s1 is 151.9 mm from fuel lines; at least 152 mm are good practice");
    assertThat(judged("fuel", 40, "").messages())
        .containsExactly("segment s1 is 40 mm from fuel lines; at least 51 mm are needed");
    assertThat(judged("fuel", 40, "").findings().get(0).basis()).isEqualTo(Basis.SOURCE);
  }

  @Test
  void controlsAndMovingParts() {
    levels("controls", "", 13, null, 12.9, Level.ERROR);
    levels("moving", "", 25, null, 24.9, Level.WARNING, 0, Level.WARNING);
  }

  @Test
  void hotPartsWithAndWithoutAHeatCovering() {
    levels("hot", "", 150, null, 149.9, Level.WARNING, 50, Level.WARNING, 49.9, Level.ERROR);
    levels("hot", ", \"coverings\": [\"c8\"]", 149, null, 50, null, 49.9, Level.WARNING);
    levels("hot", ", \"coverings\": [\"c5\"]", 49.9, Level.ERROR);
  }

  @Test
  void edgesMatterOnlyWithoutACoveringAgainstAbrasion() {
    levels("edge", "", 9.5, null, 9.4, Level.WARNING);
    levels("edge", ", \"coverings\": [\"c5\"]", 1, null);
  }

  @Test
  void eachNeighbourIsOneFinding() {
    Judged judged =
        Loom.of("\"clearanceMm\": {\"fuel\": 10, \"moving\": 10, \"controls\": 100}")
            .judged(new ClearanceSmall());
    assertThat(judged.findings().stream().map(Finding::kind).toList())
        .containsExactly("moving", "fuel");
    assertThat(judged.findings().get(0).identity())
        .isNotEqualTo(judged.findings().get(1).identity());
  }

  @Test
  void aZoneThatIsNearSomethingWithoutAClearanceIsNotJudged() {
    Judged judged =
        Loom.of("\"zone\": \"z\", \"clearanceMm\": {\"hot\": 200}")
            .with("\"zones\": {\"z\": {\"near\": [\"hot\", \"fuel\"]}}")
            .judged(new ClearanceSmall());
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly("its zone is near fuel lines and it gives no clearance to them");
  }

  @Test
  void aTeamMaySetItsOwnFigure() {
    String limits = "\"limits\": {\"clearance-small\": {\"movingMm\": 30}}";
    assertThat(
            Loom.of("\"clearanceMm\": {\"moving\": 29}")
                .with(limits)
                .judged(new ClearanceSmall())
                .messages())
        .hasSize(1);
  }

  @Test
  void whatIsShieldedAlreadyIsNotToldToBe() {
    assertThat(judged("hot", 40, "").findings().get(0).remedy())
        .isEqualTo("keep it 50 mm away, or put a covering on it that protects from heat");
    assertThat(judged("hot", 40, ", \"coverings\": [\"c8\"]").findings().get(0).remedy())
        .isEqualTo("keep it 50 mm away, or put a fixed shield between the two");
  }
}
