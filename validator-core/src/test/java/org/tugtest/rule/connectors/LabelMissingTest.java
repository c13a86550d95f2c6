package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class LabelMissingTest {
  private static Judged judged(String content) {
    return Judged.of(new LabelMissing(), "{\"format\": 1, " + content + "}");
  }

  @Test
  void theIdIsTheLabelWhenNothingIsWritten() {
    Judged judged = judged("\"connectors\": {\"X1\": {}}, \"wires\": {\"W1\": {\"label\": \"a\"}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void oneWarningForEachLoomAndOneForWhatIsLoose() {
    Judged judged =
        Judged.of(
            new LabelMissing(),
            Map.of(
                Judged.ROOT,
                """
                {"format": 1, "uses": ["nose.json"],
                 "wires": {"W9": {"label": " "}}}
                """,
                "nose.json",
                """
                {"format": 1, "loom": {"id": "nose"},
                 "connectors": {"X10": {"label": ""}, "X2": {"label": ""}, "X3": {}},
                 "wires": {"W1": {"label": ""}}}
                """));
    assertThat(judged.messages())
        .containsExactly(
            "wire W9 outside any loom carries no label",
            "3 connectors and wires of loom nose carry no label: connector X2, connector X10 and"
                + " wire W1");
    assertThat(judged.subjects()).containsExactly("harness", "looms/nose");
    assertThat(judged.findings().get(1).at().get(0).pointer()).isEqualTo("/connectors/X2/label");
    assertThat(judged.coverage().judged()).isEqualTo(5);
  }

  @Test
  void aSketchIsJudgedOnlyWhereALabelIsWritten() {
    Judged judged = judged("\"sketch\": true, \"wires\": {\"W1\": {}, \"W2\": {\"label\": \"\"}}");
    assertThat(judged.messages()).containsExactly("wire W2 outside any loom carries no label");
    assertThat(judged.coverage().missing())
        .containsEntry("in a sketch labels need not be written yet", List.of(Subject.wire("W1")));
  }

  @Test
  void oneOfThemMayBeSwitchedOff() {
    Judged judged =
        judged(
            """
            "limits": {"label-missing": {"places": {"wires/W1": {"level": "off"}}}},
            "wires": {"W1": {"label": ""}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
