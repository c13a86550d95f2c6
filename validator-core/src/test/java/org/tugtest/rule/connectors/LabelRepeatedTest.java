package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class LabelRepeatedTest {
  private static Judged judged(String content) {
    return Judged.of(
        new LabelRepeated(), "{\"format\": 1, \"loom\": {\"id\": \"nose\"}, " + content + "}");
  }

  @Test
  void differentLabelsAndIdsAreFine() {
    Judged judged =
        judged(
            """
            "connectors": {"X1": {}, "X2": {"label": "W1"}},
            "splices": {"S1": {}, "S2": {}},
            "wires": {"W1": {}, "W2": {"label": "21"}, "W3": {"label": ""}, "W4": {"label": ""}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(4);
  }

  @Test
  void theSameLabelOnTwoWiresIsReportedWithBothPlaces() {
    Judged judged =
        judged("\"wires\": {\"W1\": {\"label\": \"Feed 1\"}, \"W2\": {\"label\": \"feed 1 \"}}");
    assertThat(judged.messages())
        .containsExactly(
            "a label of loom nose stands more than once: wires W1 and W2 carry \"Feed 1\"");
    assertThat(judged.findings().get(0).at())
        .extracting(at -> at.pointer())
        .containsExactly("/wires/W1/label", "/wires/W2/label");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void anIdThatIsAnotherOnesLabelCounts() {
    assertThat(judged("\"connectors\": {\"X1\": {\"label\": \"X2\"}, \"X2\": {}}").messages())
        .containsExactly(
            "a label of loom nose stands more than once: connectors X1 and X2 carry \"X2\"");
  }

  @Test
  void allOfOneLoomAreOneFinding() {
    assertThat(
            judged(
                    """
                    "splices": {"S1": {"label": "j"}, "S2": {"label": "j"}},
                    "wires": {"W1": {"label": "1"}, "W2": {"label": "1"}, "W3": {"label": "1"},
                              "W4": {"label": "2"}, "W5": {"label": "2"}}
                    """)
                .messages())
        .containsExactly(
            "3 labels of loom nose stand more than once: splices S1 and S2 carry \"j\", wires W1,"
                + " W2 and W3 carry \"1\" and wires W4 and W5 carry \"2\"");
  }

  @Test
  void theTwoHalvesOfAPairMayShareALabelAndAThirdMayNot() {
    String two = "\"X1\": {\"mates\": \"X2\", \"label\": \"J\"}, \"X2\": {\"label\": \"J\"}";
    assertThat(judged("\"connectors\": {" + two + "}").messages()).isEmpty();
    assertThat(judged("\"connectors\": {" + two + ", \"X3\": {\"label\": \"J\"}}").messages())
        .hasSize(1);
  }

  @Test
  void eachLoomIsLookedAtAlone() {
    Judged judged =
        Judged.of(
            new LabelRepeated(),
            Map.of(
                Judged.ROOT,
                "{\"format\": 1, \"uses\": [\"a.json\"], \"wires\": {\"W1\": {\"label\": \"9\"}}}",
                "a.json",
                "{\"format\": 1, \"loom\": {\"id\": \"a\"}, \"wires\": {\"W2\": {\"label\":"
                    + " \"9\"}}}"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aSketchIsJudgedOnlyWhereALabelIsWritten() {
    Judged judged =
        judged("\"sketch\": true, \"wires\": {\"W1\": {}, \"W2\": {\"label\": \"W1\"}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }

  @Test
  void oneOfTwoSwitchedOffLeavesNoRepetition() {
    Judged judged =
        judged(
            """
            "limits": {"label-repeated": {"places": {"wires/W1": {"level": "off"}}}},
            "wires": {"W1": {"label": "1"}, "W2": {"label": "1"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
