package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class WireListTest {
  @Test
  void podWiresAreAsWorkedByHandInTheReadmeOfTheSample() {
    Made made = Made.ofSample(new WireList());
    CSVRecord earth = made.row(Made.POD + "wire-list.csv", "L008");
    assertThat(earth.get("from")).isEqualTo("XL1:6");
    assertThat(earth.get("from_housing")).isEqualTo("in8-pin");
    assertThat(earth.get("from_contact")).isEqualTo("6");
    assertThat(earth.get("to")).isEqualTo("S-31L");
    assertThat(earth.get("to_housing")).isEqualTo("splice sp-l");
    assertThat(earth.get("routed_mm")).isEqualTo("371");
    assertThat(earth.get("cut_mm")).isEqualTo("375");
    assertThat(earth.get("cut_from")).isEqualTo("routed");
    // IPC/WHMA-A-620 table 11-1: over 0.3 to 1.5 m 50 mm, up to 0.3 m 25 mm
    assertThat(earth.get("plus_mm")).isEqualTo("50");
    assertThat(made.row(Made.POD + "wire-list.csv", "L009").get("plus_mm")).isEqualTo("25");
    assertThat(earth.get("from_strip_mm")).isEqualTo("5");
    assertThat(earth.get("to_strip_mm")).isEqualTo("6");
    assertThat(earth.get("from_terminal")).isEqualTo("t2.8-pin-l");
    assertThat(earth.get("from_seal")).isEqualTo("seal2.8-l");
    assertThat(earth.get("to_terminal")).isEmpty();
    assertThat(earth.get("area_mm2")).isEqualTo("2.5");
  }

  @Test
  void eachWireOfTheSampleStandsInOneListOnce() {
    Made made = Made.ofSample(new WireList());
    int rows = 0;
    for (String folder : new String[] {"loom-nose/", "loom-engine/", Made.POD, "loose/"}) {
      rows += made.rows(folder + "wire-list.csv").size();
    }
    // the README of the sample: 211 wires in three looms and eight loose battery cables
    assertThat(rows).isEqualTo(211);
  }

  @Test
  void whatIsNotKnownIsSaidAndNeverZero() {
    Made made =
        Made.of(
            new WireList(),
            """
            {"format": 1, "sketch": true, "wires": {
              "W1": {"from": "A:1", "to": "S1", "colour": "RD", "colourDrawn": "RD/WH",
                     "evidence": "guess"},
              "W2": {"from": "A:1", "to": "S1", "cutMm": 500, "builtMm": 510, "awg": "20"},
              "W3": {"from": "A:2"},
              "W4": {"from": "A:3", "to": "B:9"}},
              "parts": {"housings": {"h": {"side": "pin", "rows": [["1"]]}}},
              "connectors": {"B": {"housing": "h"}}}
            """);
    CSVRecord bare = made.row("wire-list.csv", "W1");
    assertThat(bare.get("cut_mm")).isEqualTo("not known: the harness has no layout");
    assertThat(bare.get("part")).isEqualTo("not known: no part given");
    assertThat(bare.get("size")).isEqualTo("not known: no size given");
    assertThat(bare.get("from_terminal")).startsWith("not known: ");
    assertThat(bare.get("colour")).isEqualTo("RD");
    assertThat(bare.get("colour_drawn")).isEqualTo("RD/WH");
    assertThat(bare.get("evidence")).isEqualTo("guess");
    CSVRecord given = made.row("wire-list.csv", "W2");
    assertThat(given.get("cut_mm")).isEqualTo("500");
    assertThat(given.get("cut_from")).isEqualTo("planned");
    assertThat(given.get("built_mm")).isEqualTo("510");
    assertThat(made.row("wire-list.csv", "W3").get("to")).isEqualTo("not known: open end");
    CSVRecord lost = made.row("wire-list.csv", "W4");
    assertThat(lost.get("to")).isEqualTo("B:9");
    assertThat(lost.get("to_terminal")).isEqualTo("not known: the end leads nowhere");
    assertThat(made.words("wire-list.html")).contains("W1 guess").contains("drawn as RD/WH");
  }
}
