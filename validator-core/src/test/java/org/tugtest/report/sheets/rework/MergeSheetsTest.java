package org.tugtest.report.sheets.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.html.HtmlReport;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.sheets.documents.Documents;

class MergeSheetsTest {
  private static final String ROOT = "a.harness.json";
  private static final String CAR =
      """
      {"format": 1, "sketch": true,
       "parts": {
         "housings": {
           "s2": {"side": "socket", "family": "a", "rows": [["1", "2"]], "terminals": ["as"]},
           "p2": {"side": "pin", "family": "a", "rows": [["2", "1"]], "terminals": ["ap"]},
           "s4": {"side": "socket", "family": "a", "rows": [["1", "2", "3", "4"]],
                  "terminals": ["as"]},
           "p4": {"side": "pin", "family": "a", "rows": [["4", "3", "2", "1"]],
                  "terminals": ["ap2", "ap"]}},
         "terminals": {
           "as": {"family": "a", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 1},
           "ap": {"family": "a", "side": "pin", "areaMinMm2": 0.5, "areaMaxMm2": 1},
           "ap2": {"family": "a", "side": "pin", "areaMinMm2": 0.35, "areaMaxMm2": 2}}},
       "connectors": {
         "X1": {"housing": "s4", "mates": "Y1", "at": "n", "blanked": true},
         "Y1": {"housing": "p4", "cavities": {"3": {"blank": true}}},
         "X2": {"housing": "s2", "mates": "Y2", "at": "n"}, "Y2": {"housing": "p2"}},
       "wires": {
         "W1": {"from": "A:1", "to": "X1:1", "areaMm2": 0.75, "cutMm": 500},
         "V1": {"from": "Y1:1", "to": "B:1", "areaMm2": 0.75, "cutMm": 500},
         "W2": {"from": "A:2", "to": "X1:2", "areaMm2": 0.75, "cutMm": 500},
         "V2": {"from": "Y1:2", "to": "B:2", "areaMm2": 0.75, "cutMm": 500},
         "W3": {"from": "A:3", "to": "X2:1", "areaMm2": 0.75, "cutMm": 500},
         "V3": {"from": "Y2:1", "to": "B:3", "areaMm2": 0.75, "cutMm": 500}}}
      """;

  private static MemorySink written(Map<String, String> files, String... roots) throws IOException {
    MemorySink sink = new MemorySink();
    Documents.standard().write(SampleCar.checked(files, roots), sink);
    return sink;
  }

  private static List<String> rows(MemorySink sink, String path) {
    try {
      return CSVFormat.RFC4180.builder().get().parse(new StringReader(sink.text(path))).stream()
          .skip(1)
          .map(CSVRecord::toList)
          .map(cells -> String.join(" | ", cells))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aProposalHasASheetWithMovesStepsAndWhatTheFilesSayThen() throws IOException {
    MemorySink sink = written(Map.of(ROOT, CAR), ROOT);
    assertThat(rows(sink, "merge-X2-moves.csv"))
        .containsExactly("W3 | X2:1 | X1:3 | as, as it is", "V3 | Y2:1 | Y1:3 | ap, as it is");
    assertThat(rows(sink, "merge-X2-files.csv"))
        .containsExactly(
            "wires/W3 | to | X2:1 | X1:3",
            "wires/V3 | from | Y2:1 | Y1:3",
            "connectors/Y1 | cavities.3.terminal |  | ap",
            "connectors/Y1 | cavities.3.blank | 'true | left out",
            "connectors/X2 |  | there | gone",
            "connectors/Y2 |  | there | gone");
    List<String> steps =
        rows(sink, "merge-X2.csv").stream()
            .map(row -> String.join(" | ", List.of(row.split(" \\| ", -1)).subList(2, 5)))
            .toList();
    assertThat(steps)
        .anyMatch(step -> step.startsWith("unblank | X1"))
        .anyMatch(step -> step.startsWith("insert | X1") && step.contains("X1:3"))
        .anyMatch(step -> step.startsWith("take-away | Y2"))
        .noneMatch(step -> step.startsWith("cut") || step.startsWith("crimp"));
    assertThat(sink.text("merge-X2.html"))
        .contains("Merge X2 and Y2 into X1 and Y1")
        .contains("Nobody has decided this yet.")
        .contains("Measure again");
    assertThat(sink.text("index.html")).contains("merge-X2.html");
  }

  @Test
  void theReportLeadsToIt() throws IOException {
    Report one = SampleCar.checked(Map.of(ROOT, CAR), ROOT);
    MemorySink sink = new MemorySink();
    new HtmlReport().write(one, sink);
    assertThat(sink.text("report.html")).contains("<a href=\"documents/merge-X2.html\">");
    Map<String, String> files = Map.of(ROOT, CAR, "b.harness.json", CAR);
    MemorySink both = new MemorySink();
    new HtmlReport().write(SampleCar.checked(files, ROOT, "b.harness.json"), both);
    assertThat(both.text("report-b.html")).contains("<a href=\"documents/b/merge-X2.html\">");
    assertThat(written(files, ROOT, "b.harness.json").paths()).contains("b/merge-X2.html");
  }

  @Test
  void whatIsWaivedOrSwitchedOffHasNone() throws IOException {
    String waived =
        CAR.replace(
            "\"format\": 1,",
            "\"format\": 1, \"waivers\": {\"m\": {\"rule\": \"connector-could-merge\", \"at\":"
                + " \"connectors/X2\", \"reason\": \"unplugged alone\"}},");
    assertThat(written(Map.of(ROOT, waived), ROOT).paths()).doesNotContain("merge-X2.html");
    for (String limits :
        List.of(
            "{\"level\": \"off\"}",
            "{\"places\": {\"connectors/X1\": {\"level\": \"off\"}}}",
            "{\"places\": {\"connectors/X2\": {\"level\": \"off\"}}}")) {
      String off =
          CAR.replace(
              "\"format\": 1,",
              "\"format\": 1, \"limits\": {\"connector-could-merge\": " + limits + "},");
      assertThat(written(Map.of(ROOT, off), ROOT).paths()).doesNotContain("merge-X2.html");
    }
  }

  @Test
  void ofManyTheFirstHaveOneAndSayThatThereAreMore() throws IOException {
    StringBuilder connectors = new StringBuilder();
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= 26; i++) {
      String node = "m" + i;
      connectors.append(pair("K" + i, 4, node)).append(pair("L" + i, 2, node));
      wires.append(wire("K" + i)).append(wire("L" + i));
    }
    String car =
        CAR.replace("\"connectors\": {", "\"connectors\": {" + connectors)
            .replace("\"wires\": {", "\"wires\": {" + wires);
    MemorySink sink = written(Map.of(ROOT, car), ROOT);
    assertThat(sink.paths().stream().filter(path -> path.matches("merge-[A-Z0-9]+\\.html")))
        .hasSize(24);
    assertThat(sink.text("merge-L1.html")).contains("Of 27 proposals the first 24 have a sheet");
    MemorySink report = new MemorySink();
    new HtmlReport().write(SampleCar.checked(Map.of(ROOT, car), ROOT), report);
    String page = report.text("report.html");
    assertThat(page.split("href=\"documents/merge-", -1).length - 1).isLessThanOrEqualTo(24);
  }

  private static String pair(String id, int ways, String node) {
    return "\"%1$s\": {\"housing\": \"s%2$d\", \"mates\": \"%1$sY\", \"at\": \"%3$s\"}, \"%1$sY\": {\"housing\": \"p%2$d\"}, "
        .formatted(id, ways, node);
  }

  private static String wire(String id) {
    return "\"W%1$s\": {\"from\": \"A:%1$s\", \"to\": \"%1$s:1\"}, \"V%1$s\": {\"from\": \"%1$sY:1\", \"to\": \"B:%1$s\"}, "
        .formatted(id);
  }

  @Test
  void withoutAProposalThereIsNone() throws IOException {
    String apart =
        CAR.replace(
            "\"X2\": {\"housing\": \"s2\", \"mates\": \"Y2\", \"at\": \"n\"}",
            "\"X2\": {\"housing\": \"s2\", \"mates\": \"Y2\", \"at\": \"m\"}");
    assertThat(written(Map.of(ROOT, apart), ROOT).paths()).noneMatch(p -> p.startsWith("merge-"));
    HarnessReport none = SampleCar.checked(Map.of(ROOT, apart), ROOT).harnesses().get(0);
    assertThat(new MergeSheets().of(none)).isEmpty();
  }
}
