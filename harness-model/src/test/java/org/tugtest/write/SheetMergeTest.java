package org.tugtest.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;

class SheetMergeTest {
  private static final String ROOT = "car.harness.json";
  private static final SheetMerge.Options KEEP = new SheetMerge.Options(null, false);

  private static final String CAR =
      """
      {
        "format": 1, "uses": ["front.json"],
        "parts": {"housings": {"h3": {"side": "pin", "rows": [["1", "2", "3"]]}}},
        "devices": {
          "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.60}}},
          "ECU": {"at": "dash", "pins": {"1": {}, "2": {"family": "b6.3"}},
                  "boltedTo": {"case": "BAT:-"}, "ports": {"A": {"housing": "h3"}},
                  "elements": {"fan": {"kind": "load", "a": "1", "b": "2", "watts": 35.0, "critical": true}}}
        },
        "connectors": {
          "R1": {"housing": "h3", "mates": "ECU",   "cavities": {"2": {"seal": "s"}}, "note": "=1+1"}
        },
        "wires": {
          "W2": {"to": "R1:2", "from": "BAT:+", "areaMm2": 2.50, "label": "", "colour": "RD/WH" },
          "W10": {"from": "R1:1", "to": "ECU:1", "awg": "4/0", "circuit": "Zündung", "via": ["a", "b"]}
        }
      }
      """;

  private static final String FRONT =
      """
      {"format": 1, "loom": {"id": "front"}, "wires": {
        "W3": {"from": "R1:2", "to": "ECU:2", "areaMm2": 0.5, "cutMm": 400}
      }}
      """;

  private static final Map<String, String> FILES = Map.of(ROOT, CAR, "front.json", FRONT);

  @Test
  void writesTheWires() {
    assertThat(SheetExport.write(SheetKind.WIRES, read(FILES)))
        .isEqualTo(
            """
            id,from,to,part,areaMm2,awg,colour,colourDrawn,circuit,via,laidInPlace,cutMm,builtMm,fromTerminal,toTerminal,label,evidence,decision,reason,note,file,stamp
            W2,BAT:+,R1:2,,2.50,,RD/WH,,,,,,,,,',,,,,car.harness.json,x9c5e2fb1
            W3,R1:2,ECU:2,,0.5,,,,,,,400,,,,,,,,,front.json,x6e57cb85
            W10,R1:1,ECU:1,,,'4/0,,,Zündung,"a, b",,,,,,,,,,,car.harness.json,x17dccf0b
            """);
  }

  @Test
  void writesARowForEachCavityWithWhatIsOnIt() {
    assertThat(
            SheetExport.write(SheetKind.CONNECTORS, read(FILES))
                .lines()
                .map(SheetMergeTest::unstamped))
        .containsExactly(
            "connector,cavity,housing,mates,at,parked,terminals,seals,blanked,label,boot,breakoutMm,serviceMm,terminal,seal,blank,evidence,pinMap,note,wires,circuits,colours,file",
            "R1,,h3,ECU,,,,,,,,,,,,,,,'=1+1,,,,car.harness.json",
            "R1,1,,,,,,,,,,,,,,,,,,W10,Zündung,,car.harness.json",
            "R1,2,,,,,,,,,,,,,s,,,,,\"W2, W3\",,RD/WH,car.harness.json",
            "R1,3,,,,,,,,,,,,,,,,,,,,,car.harness.json");
  }

  @ParameterizedTest
  @CsvSource({"WIRES", "CONNECTORS", "DEVICES"})
  void changesNotAByteOutAndInAgain(SheetKind kind) {
    String sheet = SheetExport.write(kind, read(FILES));

    assertThat(merge(kind, sheet)).isEqualTo(nothing());
    assertThat(merge(kind, "\uFEFF" + sheet.replace("\n", "\r\n"))).isEqualTo(nothing());
    assertThat(merge(kind, mangled(sheet))).isEqualTo(nothing());
    assertThat(merge(kind, new String(sheet.getBytes(UTF_8), Charset.forName("windows-1252"))))
        .isEqualTo(nothing());
  }

  @Test
  void changesOnlyTheTouchedFields() {
    String sheet =
        SheetExport.write(SheetKind.WIRES, read(FILES))
            .replace("2.50,,RD/WH", "4,,BK")
            .replace(",Zündung,", ",,")
            .replace("0.5,,,", "0.5,,GN,");
    SheetMergeResult result = merge(SheetKind.WIRES, sheet);

    assertThat(result.problems()).isEmpty();
    assertThat(result.changed()).containsExactly("wires/W2", "wires/W3", "wires/W10");
    assertThat(result.files())
        .isEqualTo(
            Map.of(
                ROOT,
                CAR.replace("2.50", "4")
                    .replace("\"RD/WH\"", "\"BK\"")
                    .replace(", \"circuit\": \"Zündung\"", ""),
                "front.json",
                FRONT.replace("\"areaMm2\": 0.5,", "\"areaMm2\": 0.5, \"colour\": \"GN\",")));
  }

  @Test
  void takesAnEmptyCellForNothingAndAnApostropheForTheEmptyText() {
    String sheet = SheetExport.write(SheetKind.WIRES, read(FILES));
    SheetMergeResult gone = merge(SheetKind.WIRES, sheet.replace(",',", ",,"));
    SheetMergeResult empty = merge(SheetKind.WIRES, sheet.replace("400,,,,,", "400,,,,',"));

    assertThat(gone.files()).containsEntry(ROOT, CAR.replace(" \"label\": \"\",", ""));
    assertThat(empty.files())
        .containsEntry("front.json", FRONT.replace("400}", "400, \"label\": \"\"}"));
  }

  @Test
  void editsCavitiesPinsAndElements() {
    String connectors =
        SheetExport.write(SheetKind.CONNECTORS, read(FILES))
            .replaceFirst("R1,3,(,*)car", "R1,3,,,,,,,,,,,,t3,,true,,,,,,,car");
    String devices =
        SheetExport.write(SheetKind.DEVICES, read(FILES))
            .replace("35.0", "40")
            .replace("b6.3", "stud-m6");

    assertThat(merge(SheetKind.CONNECTORS, connectors).files())
        .containsEntry(
            ROOT,
            CAR.replace(
                "{\"2\": {\"seal\": \"s\"}}",
                "{\"2\": {\"seal\": \"s\"}, \"3\": {\"terminal\": \"t3\", \"blank\": true}}"));
    assertThat(merge(SheetKind.DEVICES, devices).files())
        .containsEntry(
            ROOT,
            CAR.replace("35.0", "40")
                .replace("b6.3\"}, ", "stud-m6\"}, ")
                .replace("b6.3", "stud-m6"));
  }

  @Test
  void addsNewRowsToTheFileTheyName() {
    String sheet =
        SheetExport.write(SheetKind.WIRES, read(FILES))
            + "W4,R1:3,ECU:2,,0.35,,,,,,,,,,,,,,,,front.json,\n"
            + "W1,R1:3,ECU:2,,\"0.75\",,BK,,,,,,,,,,,,,,,\n";
    SheetMergeResult result =
        SheetMerge.merge(
            SheetKind.WIRES,
            sheet.getBytes(UTF_8),
            read(FILES),
            new SheetMerge.Options(ROOT, false));

    assertThat(result.problems()).isEmpty();
    assertThat(result.added()).containsExactly("wires/W4", "wires/W1");
    assertThat(result.files())
        .containsEntry(
            "front.json",
            FRONT.replace(
                "400}\n",
                "400},\n  \"W4\": {\"from\": \"R1:3\", \"to\": \"ECU:2\", \"areaMm2\": 0.35}\n"))
        .containsEntry(
            ROOT,
            CAR.replace(
                "    \"W2\"",
                "    \"W1\": {\"from\": \"R1:3\", \"to\": \"ECU:2\", \"areaMm2\": 0.75, \"colour\":"
                    + " \"BK\"},\n    \"W2\""));
  }

  @Test
  void addsAConnectorWithItsCavities() {
    String sheet =
        SheetExport.write(SheetKind.CONNECTORS, read(FILES))
            + "R2,1,,,,,,,,,,,,t3,,,,,,,,,,\nR2,,h3,,,,,,,,,,,,,,,,,,,,front.json,\n";
    SheetMergeResult result = merge(SheetKind.CONNECTORS, sheet);

    assertThat(result.problems()).isEmpty();
    assertThat(result.added()).containsExactly("connectors/R2", "connectors/R2:1");
    assertThat(result.files().get("front.json"))
        .contains("\"R2\": {\"housing\": \"h3\", \"cavities\": {\"1\": {\"terminal\": \"t3\"}}}");
  }

  @Test
  void reportsRemovedRowsAndRemovesThemOnlyWhenAsked() {
    String sheet = SheetExport.write(SheetKind.WIRES, read(FILES)).replaceAll("(?m)^W2,.*\n", "");
    SheetMergeResult kept = merge(SheetKind.WIRES, sheet);
    SheetMergeResult removed =
        SheetMerge.merge(
            SheetKind.WIRES,
            sheet.getBytes(UTF_8),
            read(FILES),
            new SheetMerge.Options(null, true));

    assertThat(kept.missing()).containsExactly("wires/W2");
    assertThat(kept.files()).isEmpty();
    assertThat(removed.missing()).containsExactly("wires/W2");
    assertThat(removed.files()).isEqualTo(Map.of(ROOT, CAR.replaceAll("(?m)^ +\"W2\": .*\n", "")));
  }

  @Test
  void refusesWhatChangedInTheFileMeanwhile() {
    String sheet = SheetExport.write(SheetKind.WIRES, read(FILES)).replace("2.50,,RD/WH", "4,,BK");
    Map<String, String> later = new HashMap<>(FILES);
    later.put(ROOT, CAR.replace("\"RD/WH\"", "\"GN\""));
    SheetMergeResult result =
        SheetMerge.merge(SheetKind.WIRES, sheet.getBytes(UTF_8), read(later), KEEP);

    assertThat(result.files()).isEmpty();
    assertThat(result.problems().stream().map(CellProblem::shown))
        .containsExactly(
            "row 2, column 5: wires/W2 was changed in car.harness.json after the sheet was written."
                + " Write the sheet anew and edit that.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          areaMm2        | area           | row 1, column 5: "area" is no column of wires.csv.
          id,from        | no,from        | row 1, column 1: "no" is no column of wires.csv.
          id,from        | note,from      | row 1, column 20: "note" is there twice.
          W2,BAT:+       | W99,BAT:+      | row 2, column 1: wires/W99 is in no file any more.
          W10,R1:1       | W2,R1:1        | row 4, column 1: wires/W2 is in row 2 too.
          W2,BAT:+       | ,BAT:+         | row 2, column 1: The row does not say plainly what it is about.
          ,2.50,         | ,thick,        | row 2, column 5: areaMm2 of wires/W2 is "thick", not plainly a number.
          ,2.50,         | ,"1,500",      | row 2, column 5: areaMm2 of wires/W2 is "1,500", not plainly a number.
          ,2.50,         | ,2500,         | row 2, column 5:
          RD/WH          | red            | row 2, column 7:
          BAT:+,R1:2     | BAT + ,R1:2    | row 2, column 2:
          front.json     | car.harness.json | row 3, column 21: wires/W3 is written in front.json, not in "car.harness.json".
          """)
  void listsWhatCannotBeMerged(String from, String to, String message) {
    String sheet =
        SheetExport.write(SheetKind.WIRES, read(FILES))
            .replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
    SheetMergeResult result = merge(SheetKind.WIRES, sheet);

    assertThat(result.problems()).isNotEmpty();
    assertThat(result.problems().get(0).shown()).startsWith(message);
    assertThat(result.problems().get(0).remedy()).isNotEmpty();
    assertThat(result.files()).isEmpty();
  }

  @Test
  void writesTheFilesThatHaveNoProblem() {
    String sheet =
        SheetExport.write(SheetKind.WIRES, read(FILES))
            .replace("2.50", "thick")
            .replace("400", "450");
    SheetMergeResult result = merge(SheetKind.WIRES, sheet);

    assertThat(result.problems()).hasSize(1);
    assertThat(result.files()).isEqualTo(Map.of("front.json", FRONT.replace("400", "450")));
    assertThat(result.changed()).containsExactly("wires/W3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          W9,R1:3,ECU:2,,,,,,,,,,,,,,,,,,nowhere.json, | "nowhere.json" is no file of this harness
          W9,R1:3,ECU:2,,,,,,,,,,,,,,,,,,,             | wires/W9 is new and names no file
          R1,R1:3,ECU:2,,,,,,,,,,,,,,,,,,front.json,   | "R1" is the id of something else
          w 9,R1:3,ECU:2,,,,,,,,,,,,,,,,,,front.json,  | wires/w 9 is no legal id
          W9,R1:3,ECU:2,,,,,,,,,,,,,,,,,,front.json,x1 | wires/W9 is in no file any more
          """)
  void listsNewRowsThatCannotBeAdded(String row, String message) {
    String sheet = SheetExport.write(SheetKind.WIRES, read(FILES)) + row + "\n";
    SheetMergeResult result = merge(SheetKind.WIRES, sheet);

    assertThat(result.files()).isEmpty();
    assertThat(result.problems().get(0).shown()).startsWith("row 5, column ").contains(message);
  }

  @Test
  void passesOverBlankRows() {
    String sheet = SheetExport.write(SheetKind.WIRES, read(FILES)) + ",,,,,\n\n";

    assertThat(merge(SheetKind.WIRES, sheet)).isEqualTo(nothing());
  }

  @Test
  void keepsAnEditFromEndingAListOfPins() {
    String sheet =
        SheetExport.write(SheetKind.DEVICES, read(FILES))
            .replaceFirst("BAT,pin,'\\+,,,,,,,", "BAT,pin,'+,,,,,,stud-m6,");
    SheetMergeResult result = merge(SheetKind.DEVICES, sheet);

    assertThat(sheet).contains("stud-m6");
    assertThat(result.problems().get(0).message())
        .isEqualTo("devices/BAT:+ cannot be written from a sheet: BAT lists no pins.");
  }

  @Test
  void refusesColumnsThatAreOnlyShown() {
    String sheet =
        SheetExport.write(SheetKind.CONNECTORS, read(FILES)).replace("\"W2, W3\"", "\"W2, W4\"");

    assertThat(merge(SheetKind.CONNECTORS, sheet).problems().get(0).message())
        .isEqualTo("wires of connectors/R1:2 is only shown here.");
  }

  @Test
  void refusesWhatIsNoSheet() {
    assertThat(merge(SheetKind.WIRES, "").problems()).hasSize(1);
    assertThat(merge(SheetKind.WIRES, "a,b\n1,2\n").problems()).hasSize(1);
    assertThat(merge(SheetKind.WIRES, "id,from\nW2,\"BAT\n").problems()).hasSize(1);
    assertThat(merge(SheetKind.WIRES, "from,to\nBAT:+,R1:2\n").problems().get(0).message())
        .isEqualTo("The column id is missing.");
  }

  /** As a spreadsheet of a country with decimal commas saves it. */
  private static String mangled(String sheet) {
    StringBuilder out = new StringBuilder();
    for (CsvTable.Row row : CsvTable.read(sheet, ',').rows()) {
      List<String> cells =
          row.cells().stream()
              .map(
                  c ->
                      c.matches("\\d+\\.\\d+")
                          ? c.replaceFirst("[.]?0+$", "").replace('.', ',')
                          : c)
              .map(c -> c.equals("true") ? "WAHR" : c)
              .map(c -> '"' + c.replace("\"", "\"\"") + '"')
              .toList();
      out.append(String.join(";", cells)).append("\r\n");
    }
    return out.toString();
  }

  private static String unstamped(String line) {
    return line.substring(0, line.lastIndexOf(','));
  }

  private static SheetMergeResult nothing() {
    return new SheetMergeResult(Map.of(), List.of(), List.of(), List.of(), List.of());
  }

  private static SheetMergeResult merge(SheetKind kind, String sheet) {
    return SheetMerge.merge(kind, sheet.getBytes(UTF_8), read(FILES), KEEP);
  }

  private static ReadHarness read(Map<String, String> files) {
    return new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD).read(ROOT);
  }
}
