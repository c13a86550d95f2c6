package org.tugtest.report.html.totals;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class PartTotalsTest {
  private static PartTotals of(String json) {
    return PartTotals.of(Judged.facts(Map.of(Judged.ROOT, json)));
  }

  @Test
  void saysWhatIsThereAndWhatItWeighs() {
    PartTotals totals =
        of(
            """
            {"format": 1, "loom": {"id": "one"},
             "parts": {"wires": {"w": {"areaMm2": 1, "gramsPerM": 12}},
               "housings": {"h": {"side": "socket", "rows": [["1", "2"]], "grams": 8}}},
             "connectors": {"X": {"housing": "h", "parked": "capped"}},
             "wires": {"W1": {"from": "X:1", "to": "X:2", "part": "w", "cutMm": 1500},
               "W2": {"from": "X:1", "to": "X:2", "part": "w", "cutMm": 500}}}
            """);
    // 2 m of 12 g/m and a housing of 8 g; the terminals are not known
    assertThat(totals.whole().metres()).isEqualTo("2.00 m");
    assertThat(totals.whole().grams()).isEqualTo("at least 32.0 g");
    assertThat(totals.whole().byKind().keySet()).containsExactly("wires", "housings", "terminals");
    assertThat(totals.whole().byKind().get("wires"))
        .containsExactly(new PartTotals.Part("wires", "w", "2", "2.00 m", "24.0 g", ""));
    assertThat(totals.whole().byKind().get("terminals"))
        .containsExactly(
            new PartTotals.Part("terminals", "", "2", "", "not known", "2 without a mass"));
    assertThat(totals.looms().shown())
        .extracting(PartTotals.Of::id, PartTotals.Of::grams)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("one", "at least 32.0 g"));
    assertThat(totals.wants().shown())
        .containsExactly(
            new PartTotals.Want(
                "2 terminals, part not given, have no mass",
                "a terminal for the cavity, whose part gives grams"));
  }

  @Test
  void saysWhichFieldGivesWhatIsMissing() {
    PartTotals totals =
        of(
            """
            {"format": 1, "sketch": true,
             "parts": {"wires": {"w": {"maxC": 125}},
               "coverings": {"c": {"kind": "tape"}}, "supports": {"clip": {"kind": "clip"}}},
             "layout": {"nodes": {"a": {}, "b": {}}, "segments": {
               "s": {"from": "a", "to": "b", "coverings": ["c"], "supports": 2,
                 "supportPart": "clip"}}},
             "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w", "cutMm": 100},
               "W2": {"from": "A:2", "to": "B:2", "part": "w"}, "W3": {"from": "A:3", "to": "B:3"}}}
            """);
    assertThat(totals.whole().metres()).isEqualTo("at least 0.10 m");
    assertThat(totals.wants().shown())
        .extracting(want -> want.what() + ": " + want.give())
        .contains(
            "1 of 2 wires w has no length: a layout that both ends stand in, with lengthMm on each"
                + " segment, or cutMm on the wire",
            "1 of 2 wires w has no mass: gramsPerM or areaMm2 in parts/wires/w",
            "1 covering c has no length: lengthMm on the segments that wear it",
            "2 supports clip have no mass: grams in parts/supports/clip");
    assertThat(totals.whole().byKind().get("wires"))
        .extracting(PartTotals.Part::metres, PartTotals.Part::lacks)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("not known", "1 without a length"),
            org.assertj.core.groups.Tuple.tuple("0.10 m", "1 without a length, 1 without a mass"));
  }

  @Test
  void saysNothingOfAnEmptyHarness() {
    PartTotals totals = of("{\"format\": 1}");
    assertThat(totals.whole().metres()).isEqualTo("0.00 m");
    assertThat(totals.whole().parts().isEmpty()).isTrue();
    assertThat(totals.looms().isEmpty()).isTrue();
    assertThat(totals.wants().isEmpty()).isTrue();
  }
}
