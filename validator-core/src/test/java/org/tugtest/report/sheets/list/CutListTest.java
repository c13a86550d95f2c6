package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.SampleCar;
import org.tugtest.route.Totals;

class CutListTest {
  @Test
  void podIsCutAsWorkedByHandInTheReadmeOfTheSample() {
    Made made = Made.ofSample(new CutList());
    assertThat(made.column(Made.POD + "cut-list.csv", "wire"))
        .containsExactly(
            "L007", "L006", "L005", "L011", "L015", "L001", "L003", "L002", "L004", "L009", "L010",
            "L013", "L014", "L008", "L012");
    assertThat(made.column(Made.POD + "cut-list.csv", "cut_mm"))
        .containsExactly(
            "450", "360", "275", "260", "240", "620", "620", "590", "590", "265", "265", "245",
            "245", "375", "365");
  }

  @Test
  void metresAreThoseOfTheTotalsLoomByLoom() {
    Made made = Made.ofSample(new CutList());
    Facts facts = SampleCar.facts();
    Map<String, String> folders =
        Map.of(
            "nose", "loom-nose/", "engine", "loom-engine/", "night-lamps", Made.POD, "", "loose/");
    folders.forEach(
        (loom, folder) -> {
          Map<String, Double> expected = new TreeMap<>();
          for (Totals.Line line : facts.totals().byLoom().get(loom).lines()) {
            if (line.kind() == Totals.Kind.WIRE || line.kind() == Totals.Kind.CABLE) {
              expected.put(line.part(), line.metres());
            }
          }
          Map<String, Double> metres = new TreeMap<>();
          for (CSVRecord row : made.rows(folder + "cut-list-sums.csv")) {
            metres.put(row.get("part"), Double.valueOf(row.get("metres")));
          }
          assertThat(metres.keySet()).as(loom).isEqualTo(expected.keySet());
          metres.forEach(
              (part, sum) -> assertThat(sum).as(part).isCloseTo(expected.get(part), within(6e-4)));
        });
  }

  @Test
  void aCableIsCutOnceAsLongAsItsLongestWire() {
    Made made =
        Made.of(
            new CutList(),
            """
            {"format": 1, "sketch": true,
             "groups": {"G1": {"kind": "cable", "wires": ["W1", "W2"], "screen": "W3"}},
             "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 0.5, "cutMm": 900},
                       "W2": {"from": "A:2", "to": "B:2", "areaMm2": 0.5, "cutMm": 950},
                       "W3": {"from": "A:3", "to": "B:3", "areaMm2": 0.35, "cutMm": 920},
                       "W4": {"from": "A:4", "to": "B:4", "areaMm2": 0.5, "cutMm": 400}}}
            """);
    assertThat(made.column("cut-list.csv", "wire")).containsExactly("W4");
    CSVRecord cable = made.row("cut-list-cables.csv", "G1");
    assertThat(cable.get("cut_mm")).isEqualTo("950");
    assertThat(cable.get("wires")).isEqualTo("W1, W2, W3");
    assertThat(made.column("cut-list-sums.csv", "metres")).containsExactly("0.4", "0.95");
  }

  @Test
  void donorWiresAreNotCutAndWiresWithoutLengthAreCounted() {
    Made made =
        Made.of(
            new CutList(),
            """
            {"format": 1, "sketch": true, "wires": {
              "W1": {"from": "A:1", "to": "B:1", "areaMm2": 1, "decision": "keep"},
              "W2": {"from": "A:2", "to": "B:2", "areaMm2": 1},
              "W3": {"from": "A:3", "to": "B:3", "areaMm2": 1, "cutMm": 200}}}
            """);
    assertThat(made.column("cut-list.csv", "wire")).containsExactly("W3", "W2");
    assertThat(made.words("cut-list.html")).contains("since the donor loom has them: W1.");
    CSVRecord sum = made.rows("cut-list-sums.csv").get(0);
    assertThat(sum.get("count")).isEqualTo("2");
    assertThat(sum.get("metres")).isEqualTo("0.2");
    assertThat(sum.get("without_length")).isEqualTo("1");
  }

  private static final String LAID =
      """
      {"format": 1, "sketch": true,
       "layout": {"segments": {"s1": {"from": "a", "to": "m", "lengthMm": 1300},
                               "s2": {"from": "m", "to": "b", "lengthMm": 801,
                                      "coverings": ["braid"]}}},
       "parts": {"coverings": {"braid": {"kind": "braided-sleeve", "innerMm": 9}}},
       "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
       "groups": {"G1": {"kind": "cable", "wires": ["W3", "W4"]}},
       "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 25, "laidInPlace": true},
                 "W2": {"from": "A:2", "to": "B:2", "areaMm2": 1},
                 "W3": {"from": "A:3", "to": "B:3", "areaMm2": 1, "laidInPlace": true},
                 "W4": {"from": "A:4", "to": "B:4", "areaMm2": 1},
                 "W5": {"from": "A:5", "to": "C:5", "areaMm2": 1, "laidInPlace": true}}}
      """;

  /** Worked by hand: 1300 + 801 + twice 60 breakout, 30 spare and 6 strip = 2293; 100 mm longer. */
  @Test
  void whatIsLaidInPlaceHasNoCutLength() {
    Made made = Made.of(new CutList(), LAID);
    assertThat(made.column("cut-list.csv", "wire")).containsExactly("W2");
    assertThat(made.column("cut-list.csv", "cut_mm")).containsExactly("2295");
    assertThat(made.column("cut-list-laid.csv", "wire")).containsExactly("W5", "W1");
    CSVRecord laid = made.row("cut-list-laid.csv", "25 mm²");
    assertThat(laid.get("routed_mm")).isEqualTo("2293");
    assertThat(laid.get("plus_mm")).isEqualTo("100");
    assertThat(laid.get("way")).isEqualTo("a – m – b");
    assertThat(made.column("cut-list-laid.csv", "routed_mm").get(0)).startsWith("not known: ");
    CSVRecord cable = made.row("cut-list-cables.csv", "G1");
    assertThat(cable.get("cut_from")).isEqualTo("laid in place");
    assertThat(made.row("cut-list-sums.csv", "25 mm²").get("metres")).isEqualTo("2.293");
  }

  @Test
  void theWireListShowsTheRoutedLengthWithItsBand() {
    Made made = Made.of(new WireList(), LAID);
    CSVRecord laid = made.row("wire-list.csv", "W1");
    assertThat(laid.get("cut_mm")).isEqualTo("laid in place");
    assertThat(laid.get("cut_from")).isEqualTo("laid in place");
    assertThat(laid.get("routed_mm")).isEqualTo("2293");
    assertThat(laid.get("plus_mm")).isEqualTo("100");
    assertThat(made.row("wire-list.csv", "W2").get("routed_mm")).isEqualTo("2293");
    assertThat(made.row("wire-list.csv", "W5").get("routed_mm")).startsWith("not known: ");
  }

  @Test
  void itIsLaidAfterTheCuttingAndBeforeAnyCovering() {
    Made made = Made.of(new BuildOrder(), LAID);
    assertThat(made.column("build-order.csv", "stage"))
        .containsSubsequence("Cut", "Laid in place", "Closed coverings", "Seals and terminals");
    int step = made.column("build-order.csv", "on").indexOf("W1, A:1 to B:1");
    assertThat(made.column("build-order.csv", "do").get(step))
        .isEqualTo("run it along a – m – b, mark it at both ends, cut it there");
    assertThat(made.column("build-order.csv", "with").get(step))
        .isEqualTo("25 mm², 2293 mm, or up to 100 mm longer");
    assertThat(made.column("build-order.csv", "do"))
        .contains("cut 1 by the cut list and mark it at both ends");
  }

  @Test
  void metresThatNobodyKnowsAreNotNone() {
    Made made =
        Made.of(
            new CutList(),
            """
            {"format": 1, "sketch": true,
             "wires": {"W1": {"from": "A:1", "to": "B:1", "awg": "20"},
                       "W2": {"from": "A:2", "to": "B:2", "awg": "18"},
                       "W3": {"from": "A:3", "to": "B:3", "awg": "18", "cutMm": 250}}}
            """);
    assertThat(made.column("cut-list-sums.csv", "metres"))
        .containsExactlyInAnyOrder("not known: no length", "0.25");
    assertThat(made.column("cut-list-sums.csv", "without_length"))
        .containsExactlyInAnyOrder("1", "1");
    assertThat(made.words("cut-list.html")).doesNotContain("twisted group");
  }
}
