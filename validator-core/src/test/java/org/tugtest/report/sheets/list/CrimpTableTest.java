package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CrimpTableTest {
  @Test
  void thePodNeedsFiveSetUps() {
    Made made = Made.ofSample(new CrimpTable());
    assertThat(made.column(Made.POD + "crimps-setups.csv", "ends"))
        .containsExactly("4", "2", "1", "4", "8");
    // 15 wires, 30 ends, of which 4 + 4 + 3 sit in splices
    assertThat(made.rows(Made.POD + "crimps.csv")).hasSize(30 - 11);
    CSVRecord end = made.row(Made.POD + "crimps.csv", "XL-NUMBERL:1");
    assertThat(end.get("strip_mm")).isEqualTo("4");
    assertThat(end.get("seal")).isEqualTo("seal1.5-s");
    assertThat(end.get("terminal")).isEqualTo("t1.5-skt-s");
  }

  private static CSVRecord setup(String size) {
    return Made.of(
            new CrimpTable(),
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"A:1\", \"to\":"
                + " \"S\", "
                + size
                + "}}}")
        .rows("crimps-setups.csv")
        .get(0);
  }

  @Test
  void forcesAreThoseOfTheCrimpingSpecification() {
    // 114-2157 rev G figure 7, commercial: AWG 20 57.9 N, AWG 12 311.5 N
    assertThat(setup("\"awg\": \"20\"").get("pull_n")).isEqualTo("57.9");
    assertThat(setup("\"awg\": \"12\"").get("pull_n")).isEqualTo("311.5");
    // 1 mm2 lies between AWG 18 (0.823) and AWG 16 (1.31)
    assertThat(setup("\"areaMm2\": 1").get("pull_n")).isEqualTo("89");
    assertThat(setup("\"areaMm2\": 1").get("pull_as")).isEqualTo("AWG 18");
  }

  @Test
  void noForceIsNamedForASizeThatTheTableLacks() {
    assertThat(setup("\"areaMm2\": 0.12").get("pull_n"))
        .isEqualTo("not known: no such size in the table");
    assertThat(setup("\"label\": \"x\"").get("pull_n"))
        .isEqualTo("not known: no such size in the table");
    assertThat(setup("\"awg\": \"20\"").get("terminal")).isEqualTo("not known: no terminal given");
    assertThat(setup("\"awg\": \"20\"").get("strip_mm")).isEqualTo("6");
  }

  @Test
  void aDonorsWireHasItsTerminalsAlready() {
    Made made =
        Made.of(
            new CrimpTable(),
            """
            {"format": 1, "sketch": true, "wires": {
              "W1": {"from": "A:1", "to": "S1", "decision": "keep"},
              "W2": {"from": "A:2", "to": "S1"}}}
            """);
    assertThat(made.column("crimps.csv", "wire")).containsExactly("W2");
    assertThat(made.words("crimps.html")).contains("1 wire of a donor has its terminals already.");
  }
}
