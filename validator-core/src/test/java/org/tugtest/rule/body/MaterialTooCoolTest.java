package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class MaterialTooCoolTest {
  private static String zones(double hot) {
    return "\"zones\": {\"hot\": {\"ambientC\": %s}, \"cool\": {\"ambientC\": 20}, \"none\": {}}"
        .formatted(hot);
  }

  private static Judged judged(double hot, String fields, String nodes) {
    return Loom.of(fields).with(zones(hot)).judged(new MaterialTooCool(), nodes);
  }

  @Test
  void theClassItselfIsFineAndADegreeMoreIsNot() {
    String fields = "\"zone\": \"hot\"";
    assertThat(judged(125, fields, "").messages()).isEmpty();
    Judged hot = judged(126, fields, "");
    assertThat(hot.messages())
        .containsExactly("wire W1 (w3) stands 125 °C, but zone hot has 126 °C");
    assertThat(hot.findings().get(0).basis()).isEqualTo(Basis.GIVEN);
    assertThat(hot.subjects()).containsExactly("wires/W1");
  }

  @Test
  void wiresOfOnePartInOnePlaceAreOneFinding() {
    Judged hot =
        Loom.of("\"zone\": \"hot\"")
            .wired(Loom.wire("W2", "A:2", "B:2", "w3"), Loom.wire("W3", "A:3", "B:3", "w2"))
            .with(zones(130))
            .judged(new MaterialTooCool());
    assertThat(hot.messages())
        .containsExactly(
            "wires W1 and W2 (w3) stand 125 °C, but zone hot has 130 °C",
            "wire W3 (w2) stands 125 °C, but zone hot has 130 °C");
    assertThat(hot.findings().get(0).subjects())
        .containsExactly(Subject.wire("W1"), Subject.wire("W2"));
  }

  @Test
  void aBareAreaStandsAHundredDegrees() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 100, "\"zone\": \"hot\""),
                "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"areaMm2\": 1}",
                "")
            .with(zones(101));
    Judged hot = loom.judged(new MaterialTooCool());
    assertThat(hot.messages())
        .containsExactly("wire W1 (bare area) stands 100 °C, but zone hot has 101 °C");
    assertThat(hot.findings().get(0).basis()).isEqualTo(Basis.COMMON_PRACTICE);
  }

  @Test
  void theHottestNodeOnTheWayCounts() {
    assertThat(judged(130, "\"zone\": \"cool\"", "\"b\": {\"zone\": \"hot\"}").messages())
        .containsExactly("wire W1 (w3) stands 125 °C, but zone hot has 130 °C");
  }

  @Test
  void coveringsHousingsSplicesAndDevicesAreJudgedToo() {
    String json =
        Loom.of("\"coverings\": [\"p12\"], \"zone\": \"hot\"")
            .wired("\"W2\": {\"from\": \"X:1\", \"to\": \"S\", \"part\": \"w3\"}")
            .with(zones(110))
            .with("\"splices\": {\"S\": {\"on\": \"s1\", \"offsetMm\": 100, \"part\": \"sp\"}}")
            .with("\"connectors\": {\"X\": {\"housing\": \"h\", \"at\": \"a\"}}")
            .json()
            .replace(
                "\"supports\":",
                """
                "housings": {"h": {"side": "pin", "rows": [["1"]], "maxC": 109}},
                "splices": {"sp": {"areaMinMm2": 1, "areaMaxMm2": 9, "maxWires": 3, "maxC": 105}},
                "supports":
                """)
            .replace("\"A\": {\"at\": \"a\"}", "\"A\": {\"at\": \"a\", \"maxC\": 90}")
            .replace("\"nodes\": {}", "\"nodes\": {\"a\": {\"zone\": \"hot\"}}");
    assertThat(Judged.of(new MaterialTooCool(), json).messages())
        .containsExactly(
            "covering on segment s1 (p12) stands 105 °C, but zone hot has 110 °C",
            "connector X (h) stands 109 °C, but zone hot has 110 °C",
            "splice S (sp) stands 105 °C, but zone hot has 110 °C",
            "device A stands 90 °C, but zone hot has 110 °C");
  }

  @Test
  void whatRestsOnADefaultIsSaid() {
    Judged hot =
        Loom.of("\"zone\": \"none\"")
            .with("\"defaults\": {\"ambientC\": 140}")
            .with(zones(20))
            .judged(new MaterialTooCool());
    assertThat(hot.messages().get(0))
        .isEqualTo("wire W1 (w3) stands 125 °C, but ambientC of defaults has 140 °C");
    assertThat(hot.findings().get(0).details())
        .contains("rests on a default: zone none gives no ambientC");
  }

  @Test
  void withoutClassOrRouteItIsNotJudged() {
    Judged judged =
        new Loom(
                Loom.segment("s1", "a", "b", 100, ""),
                "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"},"
                    + " \"W2\": {\"from\": \"A:2\", \"to\": \"Z:1\", \"part\": \"w3\"}",
                "")
            .judged(new MaterialTooCool());
    assertThat(judged.coverage().missing().keySet())
        .containsExactly("it gives no maxC", "it has no route", "its part gives no maxC");
  }

  @Test
  void aHotZoneThatGivesNoTemperatureIsNotPassedByTheDefault() {
    for (String hot : List.of("\"near\": [\"hot\"]", "\"needs\": [\"heat\"]")) {
      Judged judged =
          Loom.of("\"zone\": \"engine\"")
              .with("\"zones\": {\"engine\": {" + hot + "}}")
              .judged(new MaterialTooCool());
      assertThat(judged.messages()).isEmpty();
      assertThat(judged.coverage().missing())
          .containsEntry(
              "where it is, it is hot, and no ambientC says how hot", List.of(Subject.wire("W1")));
    }
    Judged calm =
        Loom.of("\"zone\": \"cab\"")
            .with("\"zones\": {\"cab\": {\"near\": [\"moving\"]}}")
            .judged(new MaterialTooCool());
    assertThat(calm.coverage().missing().keySet())
        .doesNotContain("where it is, it is hot, and no ambientC says how hot");
  }
}
