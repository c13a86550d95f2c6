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
}
