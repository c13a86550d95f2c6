package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class CircuitCrossesOverTest {
  /** Wires W1, W2, .. into X1:1, X1:2, .. and V1, V2, .. into X2:1, X2:2, .. */
  private static Judged judged(List<String> near, List<String> far) {
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < near.size(); i++) {
      wires.append(wire("W" + (i + 1), "X1:" + (i + 1), near.get(i)));
    }
    for (int i = 0; i < far.size(); i++) {
      wires.append(wire("V" + (i + 1), "X2:" + (i + 1), far.get(i)));
    }
    return Judged.of(
        new CircuitCrossesOver(),
        """
        {"format": 1, "sketch": true, "connectors": {"X1": {"mates": "X2"}}, "wires": {%s}}
        """
            .formatted(wires.substring(1)));
  }

  private static String wire(String id, String at, String circuit) {
    String named = circuit.isEmpty() ? "" : ", \"circuit\": \"" + circuit + "\"";
    return ",\"%s\": {\"from\": \"S%s\", \"to\": \"%s\"%s}".formatted(id, id, at, named);
  }

  @Test
  void capitalsAndSpacesMakeNoDifference() {
    Judged judged = judged(List.of("Head  lamp", "horn"), List.of("HEADLAMP", "Horn"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void bothSidesMustGiveAName() {
    Judged judged = judged(List.of("lamp", "", "x"), List.of("", "horn"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isZero();
    assertThat(judged.coverage().missing())
        .containsEntry(
            "one side gives no circuit name",
            List.of(Subject.cavity("X1", "1"), Subject.cavity("X1", "2")));
  }

  @Test
  void oneContactIsNamedWithBothCircuits() {
    Judged judged = judged(List.of("lamp", "horn"), List.of("lamp", "wiper"));
    assertThat(judged.messages()).containsExactly("X1:2 carries \"horn\", X2:2 carries \"wiper\"");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).details()).isEmpty();
    assertThat(judged.findings().get(0).at())
        .extracting(at -> at.pointer())
        .containsExactly("/wires/W2/to", "/wires/V2/to");
  }

  @Test
  void twoThatAreExchangedAreOneFindingThatSaysSo() {
    Judged judged = judged(List.of("lamp", "horn", "fan"), List.of("horn", "lamp", "fan"));
    assertThat(judged.messages())
        .containsExactly(
            "2 circuits cross over between X1 and X2: X1:1 carries \"lamp\", X2:1 carries"
                + " \"horn\"; X1:2 carries \"horn\", X2:2 carries \"lamp\"");
    assertThat(judged.findings().get(0).details()).containsExactly("X2:1 and X2:2 look exchanged");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aLongListIsCutInTheSentenceAndWholeInTheDetails() {
    Judged judged = judged(List.of("a", "b", "c", "d", "e"), List.of("b", "c", "d", "e", "a"));
    assertThat(judged.messages().get(0)).endsWith("X2:4 carries \"e\"; and 1 more");
    assertThat(judged.findings().get(0).details())
        .hasSize(5)
        .contains("X1:5 carries \"e\", X2:5 carries \"a\"");
  }

  @Test
  void contactsOnADeviceHaveOneSideOnly() {
    Judged judged =
        Judged.of(
            new CircuitCrossesOver(),
            """
            {"format": 1, "devices": {"LAMP": {"ports": {"plug": {}}}},
             "connectors": {"X1": {"mates": "LAMP"}},
             "wires": {"W1": {"from": "S1", "to": "X1:1", "circuit": "lamp"}}}
            """);
    assertThat(judged.coverage().subjects()).isZero();
  }
}
