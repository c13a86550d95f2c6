package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

class TotalsTest {
  private static final Map<String, String> FILES =
      Map.of(
          Judged.ROOT,
          """
          {"format": 1, "uses": ["one.json"],
           "defaults": {"breakoutMm": 50, "serviceMm": 20, "stripMm": 5, "cutStepMm": 5},
           "parts": {
             "wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 2, "gramsPerM": 12}},
             "housings": {"h": {"side": "socket", "rows": [["1", "2", "3"]], "sealed": true,
               "terminals": ["t"], "seals": ["s"], "grams": 8}},
             "terminals": {"t": {"family": "f", "side": "socket", "areaMinMm2": 0.5,
                 "areaMaxMm2": 1.5, "grams": 0.5, "stripMm": 5},
               "r": {"family": "g", "side": "ring", "areaMinMm2": 0.5, "areaMaxMm2": 1.5,
                 "grams": 2, "stripMm": 5}},
             "seals": {"s": {"family": "f", "insulationMinMm": 1, "insulationMaxMm": 3,
               "grams": 0.25}},
             "splices": {"sp": {"areaMinMm2": 1, "areaMaxMm2": 4, "maxWires": 3, "grams": 1}},
             "coverings": {"c": {"kind": "braided-sleeve", "innerMinMm": 1, "innerMaxMm": 9,
               "gramsPerM": 10}},
             "supports": {"clip": {"kind": "clip", "grams": 3}}},
           "layout": {"nodes": {"a": {}, "b": {}}, "segments": {
             "s1": {"from": "a", "to": "b", "lengthMm": 800, "coverings": ["c"], "supports": 2,
               "supportPart": "clip"}}},
           "devices": {"E": {"at": "b", "pins": {"g": {}, "h": {}}}},
           "wires": {"P": {"from": "E:g", "to": "E:h", "part": "w", "cutMm": 250,
             "fromTerminal": "r", "toTerminal": "r"}}}
          """,
          "one.json",
          """
          {"format": 1, "loom": {"id": "one"},
           "connectors": {"X": {"housing": "h", "at": "a", "parked": "capped"}},
           "splices": {"S": {"on": "s1", "offsetMm": 500, "part": "sp"}},
           "wires": {
             "W1": {"from": "X:1", "to": "S", "part": "w"},
             "W2": {"from": "S", "to": "E:g", "part": "w", "toTerminal": "r", "builtMm": 380}}}
          """);

  private static Totals totals(Map<String, String> files) {
    Facts facts = Judged.facts(files);
    assertThat(facts.problems()).isEmpty();
    return facts.totals();
  }

  @Test
  void metresAndGramsAreTheSumsWorkedByHand() {
    Totals totals = totals(FILES);
    Totals.Sum one = totals.byLoom().get("one");
    // W1: 500 + 50 + 20 + 5 at X, 5 at S = 580 mm; W2 as built 380 mm
    assertThat(one.metres()).isCloseTo(0.96, within(1e-9));
    assertThat(one.grams(Totals.Kind.WIRE)).isCloseTo(0.96 * 12, within(1e-9));
    assertThat(one.grams(Totals.Kind.HOUSING)).isEqualTo(8);
    assertThat(one.grams(Totals.Kind.TERMINAL)).isEqualTo(0.5 + 2);
    assertThat(one.grams(Totals.Kind.SEAL)).isEqualTo(0.25);
    assertThat(one.grams(Totals.Kind.SPLICE)).isEqualTo(1);
    assertThat(one.grams(Totals.Kind.COVERING)).isCloseTo(8, within(1e-9));
    assertThat(one.grams(Totals.Kind.SUPPORT)).isEqualTo(6);
    assertThat(one.grams()).isCloseTo(11.52 + 8 + 2.5 + 0.25 + 1 + 8 + 6, within(1e-9));
    assertThat(one.complete()).isTrue();
    // P is loose: 250 mm and two rings
    assertThat(totals.byLoom().get("").grams()).isCloseTo(3 + 4, within(1e-9));
    assertThat(totals.whole().grams()).isCloseTo(37.27 + 7, within(1e-9));
    assertThat(totals.whole().count(Totals.Kind.TERMINAL)).isEqualTo(4);
    assertThat(totals.cavities().get("X")).isEqualTo(new Totals.Ways(3, 1));
    assertThat(totals.cavities().get("X").spare()).isEqualTo(2);
  }

  @Test
  void aCableWeighsAsOne() {
    String json =
        """
        {"format": 1, "sketch": true,
         "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "gramsPerM": 12}}},
         "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w", "cutMm": 1000},
           "W2": {"from": "A:2", "to": "B:2", "part": "w", "cutMm": 900},
           "W3": {"from": "A:3", "to": "B:3", "part": "w", "cutMm": 500}},
         "groups": {"G": {"kind": "cable", "wires": ["W1", "W2"]%s}}}
        """;
    Totals.Sum cable = totals(Map.of(Judged.ROOT, json.formatted(", \"gramsPerM\": 40"))).whole();
    assertThat(cable.grams()).isCloseTo(40 + 6, within(1e-9));
    assertThat(cable.metres()).isCloseTo(1.5, within(1e-9));
    Totals.Sum wires = totals(Map.of(Judged.ROOT, json.formatted(""))).whole();
    assertThat(wires.grams()).isCloseTo(12 * 2.4, within(1e-9));
  }

  @Test
  void whatIsMissingIsSaid() {
    Totals.Sum sum =
        totals(
                Map.of(
                    Judged.ROOT,
                    """
                    {"format": 1, "sketch": true,
                     "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1},
                       "W2": {"from": "A:2", "to": "B:2", "cutMm": 100},
                       "W3": {"from": "A:3", "to": "B:3", "awg": "18", "cutMm": 1000}}}
                    """))
            .whole();
    assertThat(sum.complete()).isFalse();
    assertThat(sum.lacking()).containsExactly("1 of wires: no mass", "1 of wires 1 mm2: no length");
    assertThat(sum.metres()).isCloseTo(1.1, within(1e-9));
  }

  @Test
  void theMassOfAWireIsThatOfItsCopperAndInsulation() {
    // catalogue-like figures of thin-wall vehicle wire within a tenth: 0.5 mm2 6.2 g/m, 2.5 mm2 27
    double[][] rows = {{0.5, 6.2}, {1, 11.8}, {2.5, 27}};
    for (double[] row : rows) {
      Totals.Sum sum =
          totals(
                  Map.of(
                      Judged.ROOT,
                      """
                      {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1",
                        "areaMm2": %s, "cutMm": 1000}}}
                      """
                          .formatted(row[0])))
              .whole();
      assertThat(sum.grams()).isCloseTo(row[1], within(0.1 * row[1]));
    }
  }

  @Test
  void aWireLaidInPlaceCountsAsLongAsItsRouteNeeds() {
    String way =
        "\"layout\": {\"nodes\": {\"a\": {}, \"b\": {}}, \"segments\":"
            + " {\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 801}}},";
    String wire =
        "{\"format\": 1, \"sketch\": true, "
            + way
            + " \"devices\": {\"A\": {\"at\": \"a\"}, \"B\": {\"at\": \"b\"}},"
            + " \"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"areaMm2\": 1%s}}}";
    // 801 + twice 60 breakout, 30 spare, 6 strip = 993; cut in steps of 5 mm it is 995
    assertThat(totals(Map.of(Judged.ROOT, wire.formatted(""))).whole().metres())
        .isCloseTo(0.995, within(1e-9));
    assertThat(
            totals(Map.of(Judged.ROOT, wire.formatted(", \"laidInPlace\": true"))).whole().metres())
        .isCloseTo(0.993, within(1e-9));
    assertThat(
            totals(
                    Map.of(
                        Judged.ROOT, wire.formatted(", \"laidInPlace\": true, \"builtMm\": 1001")))
                .whole()
                .metres())
        .isCloseTo(1.001, within(1e-9));
  }
}
