package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

class ShapeWrongTest {
  private static Judged judged(String wire) {
    return Judged.of(
        new ShapeWrong(),
        """
        {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1"%s}}}
        """
            .formatted(wire));
  }

  @Test
  void fileAsTheFormatHasItIsFine() {
    Judged judged = judged(", \"areaMm2\": 1.5, \"colour\": \"RD/WH\", \"note\": \"spare\"");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void openEndIsAnotherRulesMatter() {
    assertThat(
            Judged.of(
                    new ShapeWrong(),
                    "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"\"}}}")
                .findings())
        .isEmpty();
  }

  @Test
  void everySlipOfOneThingIsAFindingOfItsOwn() {
    Judged judged = judged(", \"areaMm2\": \"1.5\", \"cutMm\": -1");
    assertThat(judged.subjects()).containsExactly("wires/W1", "wires/W1");
    assertThat(judged.findings()).extracting(Finding::kind).containsExactly("areaMm2", "cutMm");
    assertThat(judged.findings()).extracting(Finding::identity).doesNotHaveDuplicates();
    assertThat(judged.coverage().judged()).as("the file counts once").isEqualTo(1);
  }

  @Test
  void fileThatCannotBeReadIsNotJudged() {
    Judged judged = Judged.of(new ShapeWrong(), Map.of(Judged.ROOT, "{"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isZero();
    assertThat(judged.coverage().missing()).containsOnlyKeys("the file could not be read");
  }
}
