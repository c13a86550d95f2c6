package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class MatingTest {
  private static Mating mating(String json) {
    return Judged.facts(Map.of(Judged.ROOT, json)).wiring().mating();
  }

  @Test
  void aConnectorThatOnlyWiresNameCanBeMatedInASketch() {
    String connectors =
        """
        "connectors": {"X1": {"mates": "X2"}},
        "wires": {"W1": {"from": "X1:1", "to": "A:1"}, "W2": {"from": "X2:1", "to": "B:1"}}}
        """;
    Mating sketched = mating("{\"format\": 1, \"sketch\": true, " + connectors);
    assertThat(sketched.mateOf("X2")).contains(new Mate.OfConnector("X1"));
    assertThat(sketched.meets(Point.cavity("X2", "1"))).contains(Point.cavity("X1", "1"));
    assertThat(mating("{\"format\": 1, " + connectors).mateOf("X1")).isEmpty();
  }

  @Test
  void aSketchDoesNotImplyWhatNoWireNames() {
    Mating mating =
        mating(
            """
            {"format": 1, "sketch": true, "connectors": {"X1": {"mates": "X9"}},
             "wires": {"W1": {"from": "X1:1", "to": "S9"}}}
            """);
    assertThat(mating.mateOf("X1")).isEmpty();
  }

  @Test
  void aConnectorStandsWhereItSaysElseWhereItsMateStands() {
    Mating mating =
        mating(
            """
            {"format": 1,
             "devices": {"LAMP": {"at": "nose", "ports": {"p": {}}}},
             "connectors": {"A": {"mates": "B", "at": "dash"}, "B": {},
                            "C": {"mates": "LAMP"}, "D": {"mates": "LAMP", "at": "roof"},
                            "E": {}}}
            """);
    assertThat(mating.nodeOf("A")).contains("dash");
    assertThat(mating.nodeOf("B")).contains("dash");
    assertThat(mating.nodeOf("C")).contains("nose");
    assertThat(mating.nodeOf("D")).contains("roof");
    assertThat(mating.nodeOf("E")).isEmpty();
    assertThat(mating.nodeOf("F")).isEmpty();
  }
}
