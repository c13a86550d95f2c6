package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.Stream;
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

  private static final String HEIGHTS =
      """
      {"format": 1, "sketch": true,
       "parts": {
         "housings": {"h": {"side": "socket", "family": "a", "rows": [["1", "2", "3", "4", "5"]],
                            "terminals": ["t"]},
                      "g": {"side": "socket", "family": "b", "rows": [["1"]], "terminals": ["u"]}},
         "terminals": {
           "t": {"family": "a", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 2.5, "maxWires": 2,
                 "crimps": [{"areaMinMm2": 0.35, "areaMaxMm2": 0.5, "heightMm": 1.1,
                             "toleranceMm": 0.05, "widthMm": 1.7, "insulationHeightMm": 2.1},
                            {"areaMinMm2": 0.75, "areaMaxMm2": 1, "heightMm": 1.3, "pullN": 110}]},
           "u": {"family": "b", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 2.5}}},
       "connectors": {"X": {"housing": "h", "parked": "capped"},
                      "Z": {"housing": "g", "parked": "capped"}},
       "wires": {"W1": {"from": "X:1", "to": "S1", "areaMm2": 0.5},
                 "W2": {"from": "X:2", "to": "S1", "areaMm2": 0.5},
                 "W3": {"from": "X:2", "to": "S2", "areaMm2": 0.35},
                 "W4": {"from": "X:3", "to": "S2", "areaMm2": 1},
                 "W5": {"from": "X:4", "to": "S3", "areaMm2": 0.501},
                 "W6": {"from": "Z:1", "to": "S3", "areaMm2": 0.5}}}
      """;

  /** What a row of the set-ups says in these columns, by its terminal and sizes. */
  private static String setup(Made made, String terminal, String size) {
    CSVRecord row =
        made.rows("crimps-setups.csv").stream()
            .filter(one -> one.get("terminal").equals(terminal) && one.get("size").equals(size))
            .findFirst()
            .orElseThrow();
    return Stream.of(
            "ends",
            "height_mm",
            "height_tolerance_mm",
            "width_mm",
            "insulation_height_mm",
            "pull_n",
            "pull_as")
        .map(row::get)
        .collect(Collectors.joining(" | "));
  }

  @Test
  void theHeightIsThatOfTheAreaInTheTerminal() {
    Made made = Made.of(new CrimpTable(), HEIGHTS);
    // 114-2157 rev G figure 7: AWG 22 (0.326) 35.6 N for 0.35 and 0.5, AWG 18 89 N for 1 mm2
    assertThat(setup(made, "t", "0.5 mm²")).isEqualTo("1 | 1.1 | 0.05 | 1.7 | 2.1 | 35.6 | AWG 22");
    assertThat(setup(made, "t", "1 mm²")).isEqualTo("1 | 1.3 |  |  |  | 110 | the terminal's own");
    assertThat(setup(made, "t", "0.501 mm²"))
        .isEqualTo("1 | not known: none given for 0.501 mm² |  |  |  | 35.6 | AWG 22");
    assertThat(setup(made, "u", "0.5 mm²"))
        .isEqualTo("1 | not known: the terminal gives none |  |  |  | 35.6 | AWG 22");
    assertThat(made.words("crimps.html"))
        .contains("± 0.05, width 1.7, over insulation 2.1")
        .contains("Measured height, mm")
        .contains("The files name no tool, and not every crimp height: take them");
  }

  @Test
  void severalWiresInOneTerminalAreOneCrimpOfTheSumOfTheirAreas() {
    Made made = Made.of(new CrimpTable(), HEIGHTS);
    // 0.35 + 0.5 = 0.85 mm2 lies in the second range
    assertThat(setup(made, "t", "0.5 mm² + 0.35 mm²"))
        .isEqualTo("2 | 1.3 |  |  |  | 110 | the terminal's own");
    assertThat(made.words("crimps.html")).contains("Several wires in one terminal are one crimp");
  }

  @Test
  void whereEveryHeightIsGivenOnlyTheToolIsLacking() {
    String all =
        HEIGHTS
            .replace("0.501", "0.5")
            .replace(
                "\"areaMaxMm2\": 2.5}}}",
                "\"areaMaxMm2\": 2.5, \"crimps\": [{\"areaMinMm2\":"
                    + " 0.35, \"areaMaxMm2\": 2.5, \"heightMm\": 1}]}}}");
    assertThat(Made.of(new CrimpTable(), all).words("crimps.html"))
        .contains("The files name no tool: take it");
  }
}
