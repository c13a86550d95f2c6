package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.rule.Judged;

class GaugeUnderLoadTest {
  private static String json(double amps, String part, String states) {
    return String.format(
        Locale.ROOT,
        """
        {"format": 1,
         "parts": {"wires": {"w1": {"areaMm2": 1, "maxC": 125%s}, "w4": {"areaMm2": 4, "maxC": 125}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "part": "w1", "cutMm": 100},
                   "W2": {"from": "FAN:2", "to": "BAT:-", "part": "w4", "cutMm": 100}}%s}
        """,
        part,
        amps,
        states);
  }

  private static Judged judged(double amps, String part, String states) {
    return Judged.of(new GaugeUnderLoad(), json(amps, part, states));
  }

  @Test
  void whatTheWireStandsIsTheLimit() {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, json(1, "", "")));
    Wire wire = facts.harness().wires().get("W1");
    double stands = facts.ampacity().of(wire).orElseThrow().amps();
    assertThat(stands).as("1 mm2 of 125 degrees in free air of 40").isBetween(15.0, 35.0);
    assertThat(judged(stands * 0.999, "", "").findings()).isEmpty();
    assertThat(judged(stands * 0.999, "", "").coverage().judged()).isEqualTo(2);
    Judged over = judged(stands * 1.001, "", "");
    assertThat(over.subjects()).containsExactly("wires/W1");
    assertThat(over.messages().get(0))
        .startsWith("wire W1 carries ")
        .contains(" A in state as drawn; it stands ");
    assertThat(over.findings().get(0).remedy())
        .matches("make W1 of w4, which stands 5\\d\\.\\d A there");
  }

  @Test
  void theMakersLimitCounts() {
    assertThat(judged(9.99, ", \"maxA\": 10", "").findings()).isEmpty();
    assertThat(judged(10.01, ", \"maxA\": 10", "").messages())
        .containsExactly(
            "wire W1 carries 10.01 A in state as drawn; it stands 10 A as its maker allows");
  }

  @Test
  void briefStatesAreLeftOut() {
    String lasting = ", \"states\": {\"run\": {\"on\": [\"FAN\"]}}";
    String brief = ", \"states\": {\"crank\": {\"on\": [\"FAN\"], \"brief\": true}}";
    assertThat(judged(11, ", \"maxA\": 10", lasting).findings()).hasSize(1);
    Judged judged = judged(11, ", \"maxA\": 10", brief);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing().keySet()).containsExactly("no state lasts");
  }

  @Test
  void aWireWithoutSizeIsNotJudged() {
    Judged judged =
        Judged.of(
            new GaugeUnderLoad(),
            """
            {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
            """);
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }

  private static String remedy(String terminal) {
    Judged judged =
        Judged.of(
            new GaugeUnderLoad(),
            """
            {"format": 1,
             "parts": {
               "wires": {"w1": {"areaMm2": 1, "maxC": 125, "maxA": 10, "gramsPerM": 10},
                         "w2": {"awg": "14", "maxC": 125, "maxA": 18, "gramsPerM": 21},
                         "w3": {"areaMm2": 3, "maxC": 125, "maxA": 11, "gramsPerM": 30},
                         "w6": {"areaMm2": 6, "maxC": 125, "maxA": 40, "gramsPerM": 60, "stocked": false}},
               "housings": {"s": {"side": "socket", "family": "t2.8", "rows": [["1", "2"]], "terminals": ["ts"]},
                            "p": {"side": "pin", "family": "t2.8", "rows": [["2", "1"]]}},
               "terminals": {"ts": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": %s}}},
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "FAN": {"ports": {"plug": {"housing": "p"}},
                       "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 15}}}},
             "connectors": {"X1": {"housing": "s", "mates": "FAN"}},
             "wires": {"W1": {"from": "BAT:+", "to": "X1:1", "part": "w1", "cutMm": 2000},
                       "W2": {"from": "X1:2", "to": "BAT:-", "areaMm2": 2.5, "cutMm": 2000}}}
            """
                .formatted(terminal));
    return judged.findings().get(0).remedy();
  }

  /** 2 m of 21 g/m instead of 10: 22 g. AWG 14 is 2.08 mm2. */
  @Test
  void theRemedyIsTheNextStockedPartWithItsGrams() {
    assertThat(remedy("2.5")).isEqualTo("make W1 of w2, which stands 18.0 A there, 22 g more");
    assertThat(remedy("1.5"))
        .as("the terminal is too small for it")
        .isEqualTo(
            "make W1 of w2, which stands 18.0 A there, 22 g more, with a terminal at X1:1 that none"
                + " of the parts is");
  }

  /**
   * A wire of class 85 in air of 86 degrees stands nothing: material-too-cool says so, and alone.
   */
  @Test
  void inAirOverItsClassNoGaugePutsItRight() {
    String json =
        """
        {"format": 1, "sketch": true,
         "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 85}},
                   "fuses": {"f10": {"ratingA": 10, "style": "blade-regular"}}},
         "zones": {"engine": {"ambientC": %s}},
         "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900, "zone": "engine"}}},
         "devices": {
           "BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"at": "a", "elements": {"f": {"kind": "fuse", "a": "in", "b": "1"}}},
           "FAN": {"at": "b", "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 6}}}},
         "fitted": {"FB.f": "f10"},
         "wires": {"W0": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6},
                   "W1": {"from": "FB:1", "to": "FAN:1", "part": "w"},
                   "W2": {"from": "FAN:2", "to": "BAT:-", "part": "w"}}}
        """;
    String why = "the air by itself is over its class, as material-too-cool says";
    for (org.tugtest.rule.Rule rule :
        List.of(
            new GaugeUnderLoad(),
            new org.tugtest.rule.protection.GaugeUnderFuse(),
            new org.tugtest.rule.protection.ReturnUnderFuse(),
            new org.tugtest.rule.protection.WireBurnsBeforeFuse())) {
      Judged over = Judged.of(rule, json.formatted("86"));
      assertThat(over.subjects()).as(rule.info().id()).doesNotContain("wires/W1", "wires/W2");
      assertThat(over.coverage().missing().keySet()).as(rule.info().id()).contains(why);
      Judged at = Judged.of(rule, json.formatted("85"));
      assertThat(at.coverage().missing().keySet()).as(rule.info().id()).doesNotContain(why);
    }
    assertThat(Judged.of(new GaugeUnderLoad(), json.formatted("85")).subjects())
        .containsExactly("wires/W1", "wires/W2");
    assertThat(
            Judged.of(new org.tugtest.rule.body.MaterialTooCool(), json.formatted("86")).subjects())
        .containsExactly("wires/W1");
  }
}
