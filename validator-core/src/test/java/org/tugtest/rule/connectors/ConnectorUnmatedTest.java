package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class ConnectorUnmatedTest {
  /** Every {} gets a housing, so that nothing is misread. */
  private static Judged judged(String content) {
    String housed = content.replace("{}", "{\"housing\": \"h\"}");
    return Judged.of(
        new ConnectorUnmated(),
        "{\"format\": 1, \"parts\": {\"housings\": {\"h\": {\"side\": \"pin\", \"rows\": [[\"1\",\"2\"]]}}}, "
            + housed
            + "}");
  }

  @Test
  void matedSaidOnceOrTwiceOrParkedIsFine() {
    Judged judged =
        judged(
            """
            "devices": {"LAMP": {"ports": {"plug": {}}},
                        "ECU": {"ports": {"A": {}, "B": {}}}},
            "connectors": {"X1": {"mates": "X2"}, "X2": {}, "X3": {"mates": "X4"},
                           "X4": {"mates": "X3"}, "X5": {"mates": "LAMP"},
                           "X6": {"mates": "ECU.B"}, "X7": {"parked": "open"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(7);
  }

  @Test
  void saysHowManyWiresHangInThePlug() {
    Judged judged =
        judged(
            """
            "connectors": {"X1": {}, "X2": {}},
            "wires": {"W1": {"from": "X1:1", "to": "X1:2", "areaMm2": 1}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "connector X1 mates with nothing and is not parked; it holds 2 wire ends",
            "connector X2 mates with nothing and is not parked");
    assertThat(judged.subjects()).containsExactly("connectors/X1", "connectors/X2");
    assertThat(judged.findings()).extracting(Finding::level).containsOnly(Level.ERROR);
  }

  @Test
  void whatCannotBePluggedIsNamed() {
    Judged judged =
        judged(
            """
            "devices": {"STUD": {"pins": {"1": {}}}, "ECU": {"ports": {"A": {}, "B": {}}}},
            "splices": {"S1": {}},
            "connectors": {"X1": {"mates": "X1"}, "X2": {"mates": "STUD"},
                           "X3": {"mates": "ECU"}, "X4": {"mates": "S1"}, "X5": {"mates": "X1:1"}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "connector X1 is written to mate X1, which is itself",
            "connector X2 is written to mate STUD, a device without ports",
            "connector X3 is written to mate ECU, a device with 2 ports (ECU.A and ECU.B)",
            "connector X4 is written to mate S1, a splice",
            "connector X5 is written to mate X1:1, a single contact");
  }

  @Test
  void namesThatAreNotKnownAreLeftToTheRuleOnReferences() {
    Judged judged =
        judged(
            """
            "devices": {"ECU": {"type": "unknown"}, "LAMP": {"ports": {"plug": {}}}},
            "connectors": {"X1": {"mates": "X9"}, "X2": {"mates": "ECU.A"},
                           "X3": {"mates": "LAMP.plugg"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .isEqualTo(
            Map.of(
                "what it mates with is not known",
                List.of(
                    Subject.connector("X1"), Subject.connector("X2"), Subject.connector("X3"))));
  }

  @Test
  void ofTwoThatClaimOnePortTheRefusedOneIsReportedWithBothPlaces() {
    Judged judged =
        judged(
            """
            "devices": {"LAMP": {"ports": {"plug": {}}}},
            "connectors": {"X1": {"mates": "LAMP"}, "X2": {"mates": "LAMP.plug"}}
            """);
    assertThat(judged.messages()).containsExactly("connector X2 claims LAMP.plug, which mates X1");
    assertThat(judged.findings().get(0).at())
        .extracting(at -> at.pointer())
        .containsExactly("/connectors/X2/mates", "/connectors/X1");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void theThirdOfAChainIsNotReportedForTheClaimOfAnother() {
    Judged judged =
        judged(
            """
            "connectors": {"X1": {"mates": "X5"}, "X5": {"housing": "h", "mates": "X6"}, "X6": {}}
            """);
    assertThat(judged.messages()).containsExactly("connector X5 claims X6, but X1 claims X5");
    assertThat(judged.coverage().missing())
        .containsEntry(
            "what claims to mate it is refused elsewhere", List.of(Subject.connector("X6")));
  }

  @Test
  void aSketchNeedNotSayWhatMates() {
    Judged judged =
        judged(
            """
            "sketch": true,
            "devices": {"ECU": {"at": "dash"}},
            "connectors": {"X1": {}, "X2": {"mates": "X3"}, "X4": {"mates": "ECU"}},
            "wires": {"W1": {"from": "X3:1", "to": "R1:1"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
    assertThat(judged.coverage().missing())
        .containsEntry(
            "in a sketch, what it mates with need not be written yet",
            List.of(Subject.connector("R1"), Subject.connector("X1")));
  }

  @Test
  void aLoomAsFoundHasOneWarningWithTheList() {
    Judged judged =
        judged(
            """
            "loom": {"id": "donor", "stage": "found"},
            "limits": {"connector-unmated": {"places": {"connectors/C3": {"level": "off"}}}},
            "connectors": {"C10": {}, "C2": {}, "C3": {}, "C4": {"housing": "h", "parked": "open"}}
            """);
    assertThat(judged.messages())
        .containsExactly("2 connectors of loom donor, as found, mate with nothing: C2 and C10");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.subjects()).containsExactly("looms/donor");
    assertThat(judged.coverage().judged()).isEqualTo(3);
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }

  @Test
  void whatAnUnreadFileMaySayIsNotJudged() {
    Judged judged = judged("\"uses\": [\"rear.json\"], \"connectors\": {\"X1\": {}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("a file of this harness could not be read");
  }
}
