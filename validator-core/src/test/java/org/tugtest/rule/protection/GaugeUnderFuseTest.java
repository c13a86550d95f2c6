package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class GaugeUnderFuseTest {
  private static Judged judged(String devices, String wires, String... more) {
    return Bench.judged(new GaugeUnderFuse(), devices, wires, more);
  }

  /** A lamp behind one fuse, its feed of an area. */
  private static Judged behind(double ratingA, double areaMm2, String... more) {
    return judged(
        all(fuse("FB", ratingA), LAMP),
        all(wire("W1", "BAT:+", "FB:in", 25), wire("W2", "FB:1", "LAMP:1", areaMm2)),
        more);
  }

  @Test
  void goodPairsOfFuseAndWireAreFine() {
    double[][] pairs = {{5, 0.5}, {7.5, 0.5}, {10, 0.75}, {15, 1.5}, {20, 2.5}, {30, 4}};
    for (double[] pair : pairs) {
      Judged judged = behind(pair[0], pair[1]);
      assertThat(judged.messages()).as("%s A, %s mm2", pair[0], pair[1]).isEmpty();
      assertThat(judged.coverage().judged()).isEqualTo(1);
    }
  }

  @Test
  void fuseOverWhatTheWireStandsIsAnErrorThatNamesBothAndWhatWouldDo() {
    Judged judged = behind(30, 0.5);
    Finding finding = judged.findings().get(0);
    assertThat(judged.messages())
        .containsExactly("wire W2 stands 12.4 A, but FB.f (30 A) lets 30 A through");
    assertThat(finding.level()).isEqualTo(Level.ERROR);
    assertThat(finding.basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(finding.subjects()).hasToString("[wires/W2, devices/FB.f]");
    assertThat(finding.remedy())
        .isEqualTo(
            "make W2 at least 2.5 mm2, or fit 10 A at most in FB.f, if its loads allow that");
    assertThat(finding.details())
        .containsExactly(
            "it stands 12.4 A alone in still air of 40 °C, its neighbours not being known",
            "at 30 A it comes to no rest under 250 °C, at 40.5 A, which may last ten minutes, to no"
                + " rest under 250 °C; its class is 100 °C");
  }

  @Test
  void limitIsHeldAgainstTheWireItself() {
    String parts = "\"parts\": {\"wires\": {\"w\": {\"areaMm2\": 4, \"maxC\": 125, \"maxA\": %s}}}";
    String wires =
        all(
            wire("W1", "BAT:+", "FB:in", 25),
            "\"W2\": {\"from\": \"FB:1\", \"to\": \"LAMP:1\", \"part\": \"w\"}");
    String devices = all(fuse("FB", 20), LAMP);
    assertThat(judged(devices, wires, parts.formatted("20.1")).messages()).isEmpty();
    assertThat(judged(devices, wires, parts.formatted("20")).messages()).isEmpty();
    Judged under = judged(devices, wires, parts.formatted("19.9"));
    assertThat(under.messages())
        .containsExactly("wire W2 stands 19.9 A, but FB.f (20 A) lets 20 A through");
    assertThat(under.findings().get(0).basis()).isEqualTo(Basis.GIVEN);
  }

  @Test
  void heldOverloadThatIsTooHotIsAWarningWithBothTemperatures() {
    Judged judged = behind(10, 0.35, "\"defaults\": {\"ambientC\": 36}");
    assertThat(judged.findings())
        .singleElement()
        .extracting(Finding::level)
        .isEqualTo(Level.WARNING);
    assertThat(judged.messages().get(0))
        .matches(
            "wire W2 comes to 1[2-9]\\d °C at 13.5 A, which FB.f \\(10 A\\) may hold for ten"
                + " minutes; its class is 100 °C");
    assertThat(judged.findings().get(0).details().get(1))
        .matches(
            "at 10 A it comes to \\d+ °C, at 13.5 A, which may last ten minutes, to \\d+ °C; .*");
  }

  @Test
  void tripsAndSelfLimitingSourcesHoldNoMoreThanTheySay() {
    String trip =
        "\"PDM\": {\"elements\": {\"o\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"1\","
            + " \"ratingA\": 10, \"electronic\": true}}}";
    assertThat(
            judged(
                    all(trip, LAMP),
                    all(wire("W1", "BAT:+", "PDM:in", 25), wire("W2", "PDM:1", "LAMP:1", 0.35)),
                    "\"defaults\": {\"ambientC\": 36}")
                .findings())
        .isEmpty();
  }

  @Test
  void parallelFusesAreNamedTogether() {
    Judged judged =
        judged(
            all(fuse("F1", 10), fuse("F2", 15), LAMP),
            all(
                wire("W1", "BAT:+", "F1:in", 25),
                wire("W2", "BAT:+", "F2:in", 25),
                wire("W3", "F1:1", "S", 4),
                wire("W4", "F2:1", "S", 4),
                wire("W5", "S", "LAMP:1", 1)));
    assertThat(judged.messages())
        .containsExactly("wire W5 stands 19 A, but F1.f (10 A) and F2.f (15 A) let 25 A through");
    assertThat(judged.findings().get(0).remedy()).isEqualTo("make W5 at least 2.5 mm2");
  }

  @Test
  void remedyTakesTheNextStockedPart() {
    String parts =
        """
        "parts": {"wires": {
          "w1": {"areaMm2": 1, "maxC": 125}, "w2": {"areaMm2": 1.5, "maxC": 125, "stocked": false},
          "w4": {"areaMm2": 4, "maxC": 125}, "w6": {"areaMm2": 6, "maxC": 125}},
         "fuses": {"f12": {"ratingA": 12, "style": "blade-mini"},
                   "f25": {"ratingA": 25, "style": "blade-mini"}}},
         "fitted": {"FB.f": "f25"}
        """;
    Judged judged =
        judged(
            all(
                "\"FB\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\":"
                    + " \"1\"}}}",
                LAMP),
            all(
                wire("W1", "BAT:+", "FB:in", 25),
                "\"W2\": {\"from\": \"FB:1\", \"to\": \"LAMP:1\", \"part\": \"w1\"}"),
            parts);
    assertThat(judged.findings().get(0).remedy())
        .matches(
            "make W2 of w4, which stands \\d+(\\.\\d)? A there, or fit 15 A at most in FB.f, if its"
                + " loads allow that");
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    Judged judged =
        judged(
            all(
                fuse("FB", 30),
                "\"PDM\": {\"elements\": {\"o\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"1\","
                    + " \"electronic\": true}}}",
                LAMP),
            all(
                wire("W1", "BAT:+", "FB:in", 25),
                "\"W2\": {\"from\": \"FB:1\", \"to\": \"PDM:in\"}",
                wire("W3", "PDM:1", "LAMP:1", 1),
                wire("W4", "PDM:1", "LAMP:1", 25)));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys(
            "no fuse is before it", "it gives no area", "a fuse before it has no known rating");
    assertThat(judged.coverage().judged()).as("25 mm2 stands the 30 A anyway").isEqualTo(1);
  }

  @Test
  void manyNeighboursBeyondTheReadChartMakeAWarning() {
    StringBuilder wires = new StringBuilder(wire("W0", "BAT:+", "FB:in", 25));
    StringBuilder pins = new StringBuilder();
    for (int i = 1; i <= 30; i++) {
      wires.append(", ").append(wire("W" + i, "A:" + i, "B:" + i, 1));
      pins.append(", \"").append(i).append("\": {}");
    }
    wires.append(", ").append(wire("F", "FB:1", "B:f", 1.5));
    String devices =
        "\"FB\": {\"at\": \"a\", \"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\":"
            + " \"1\", \"ratingA\": %s}}}, \"A\": {\"at\": \"a\", \"pins\": {\"x\": {}"
            + pins
            + "}}, \"B\": {\"at\": \"b\", \"pins\": {\"f\": {}"
            + pins
            + "}}";
    String layout =
        "\"layout\": {\"nodes\": {\"a\": {}, \"b\": {}}, \"segments\": {\"s\": {\"from\": \"a\","
            + " \"to\": \"b\", \"lengthMm\": 900}}}";
    Judged memory = judged(devices.formatted("14"), wires.toString(), layout);
    assertThat(memory.messages())
        .containsExactly("wire F stands 13.3 A, but FB.f (14 A) lets 14 A through");
    assertThat(memory.findings().get(0).basis()).isEqualTo(Basis.MEMORY);
    Judged sure = judged(devices.formatted("20"), wires.toString(), layout);
    assertThat(sure.findings().get(0).basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(sure.messages())
        .containsExactly("wire F stands 15 A, but FB.f (20 A) lets 20 A through");
  }

  /** A wire that shorts the supply in one state makes its neighbours stand no less. */
  private static String besideAShort(String to) {
    return """
    {"format": 1, "sketch": true,
     "devices": {
       "BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                                "volts": 12, "ohms": 0.02}}},
       "FB": {"at": "a", "elements": {
         "f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 15, "style": "blade-mini"},
         "f2": {"kind": "fuse", "a": "in", "b": "2", "ratingA": 10, "style": "blade-mini"}}},
       "SW": {"at": "a", "elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
       "LAMP": {"at": "b", "elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
       "FAN": {"at": "b", "elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
     "layout": {"nodes": {"a": {}, "b": {}}, "segments": {"s": {"from": "a", "to": "b", "lengthMm": 900}}},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 16},
               "W2": {"from": "FB:1", "to": "SW:1", "areaMm2": 4},
               "W3": {"from": "SW:2", "to": "%s", "areaMm2": 4},
               "W4": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 4},
               "W5": {"from": "FB:2", "to": "LAMP:1", "areaMm2": 0.75},
               "W6": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 0.75}},
     "states": {"off": {"on": ["LAMP"]}, "on": {"set": {"SW": "on"}, "on": ["LAMP"]}}}
    """
        .formatted(to);
  }

  @Test
  void aShortIsNothingThatLastsBesideAWire() {
    assertThat(Judged.of(new GaugeUnderFuse(), besideAShort("FAN:1")).subjects()).isEmpty();
    assertThat(Judged.of(new GaugeUnderFuse(), besideAShort("FAN:2")).subjects())
        .doesNotContain("wires/W5");
  }
}
