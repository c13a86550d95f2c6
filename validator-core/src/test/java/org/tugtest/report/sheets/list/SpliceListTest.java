package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class SpliceListTest {
  @Test
  void thePodIsAsWorkedByHandInTheReadmeOfTheSample() {
    Made made = Made.ofSample(new SpliceList());
    assertThat(made.column(Made.POD + "splices.csv", "splice"))
        .containsExactly("S-58L", "S-31L", "S-31R");
    CSVRecord first = made.row(Made.POD + "splices.csv", "S-58L");
    assertThat(first.get("segment")).isEqualTo("l2");
    assertThat(first.get("offset_mm")).isEqualTo("60");
    assertThat(first.get("start")).isEqualTo("pod-tee");
    // L005 comes from the plug and L007 goes back to the tee and on to the right lamp
    assertThat(first.get("towards_start")).isEqualTo("L005, L007");
    assertThat(first.get("towards_end")).isEqualTo("L006");
    CSVRecord earth = made.row(Made.POD + "splices.csv", "S-31L");
    // 2.5 + 1 + 1 + 0.5 mm2
    assertThat(earth.get("area_mm2")).isEqualTo("5");
    assertThat(earth.get("takes")).isEqualTo("2.5 to 9 mm², 6 wires");
  }

  @Test
  void turningAWireRoundChangesNoSide() {
    String json =
        """
        {"format": 1, "sketch": true,
         "connectors": {"A": {"at": "n1"}, "B": {"at": "n2"}},
         "splices": {"S1": {"on": "s", "offsetMm": 200}, "S2": {"at": "n2"}},
         "layout": {"nodes": {"n1": {}, "n2": {}},
                    "segments": {"s": {"from": "n1", "to": "n2", "lengthMm": 500}}},
         "wires": {"W1": {"from": "A:1", "to": "S1", "awg": "20"},
                   "W2": {"from": %s, "to": %s, "awg": "20"},
                   "W3": {"from": "S1", "to": "S1", "awg": "20"}}}
        """;
    for (String json2 :
        new String[] {json.formatted("\"S1\"", "\"S2\""), json.formatted("\"S2\"", "\"S1\"")}) {
      CSVRecord row = Made.of(new SpliceList(), json2).row("splices.csv", "S1");
      assertThat(row.get("towards_start")).isEqualTo("W1");
      assertThat(row.get("towards_end")).isEqualTo("W2");
      assertThat(row.get("elsewhere")).isEqualTo("W3, W3");
    }
  }

  @Test
  void whatNobodyPlacesComesLastAndSaysSo() {
    Made made =
        Made.of(
            new SpliceList(),
            """
            {"format": 1, "sketch": true, "splices": {"S9": {"at": "n"}},
             "layout": {"nodes": {"n": {}}},
             "wires": {"W1": {"from": "S1", "to": "S9"}, "W2": {"from": "S1", "to": "A:1"}}}
            """);
    assertThat(made.column("splices.csv", "splice")).containsExactly("S9", "S1");
    assertThat(made.column("splices.csv", "segment"))
        .containsExactly("at node n", "not known: nothing says where it stands");
    assertThat(made.column("splices.csv", "area_mm2"))
        .containsOnly("not known: a wire gives no size");
  }
}
