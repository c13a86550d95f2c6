package org.tugtest.report.sheets.ringout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.ReadingsReader;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.sheets.DocumentFolder;

class RingOutSheetsTest {
  private static MemorySink written(Report report) throws IOException {
    MemorySink sink = new MemorySink();
    new DocumentFolder(List.of(new RingOutSheets())).write(report, sink);
    return sink;
  }

  private static MemorySink written(String json) throws IOException {
    return written(SampleCar.checked(Map.of("a.harness.json", json), "a.harness.json"));
  }

  @Test
  void thereIsOneForEachLoomAndOneForTheVehicle() throws IOException {
    assertThat(written(SampleCar.whole()).paths())
        .contains(
            "loom-engine/ring-out.html",
            "loom-engine/ring-out.csv",
            "loom-nose/ring-out.html",
            "loose/ring-out.html",
            "ring-out-plugged.html",
            "ring-out-plugged.csv");
  }

  @Test
  void theEmptyFileOfReadingsIsOneOnceItIsFilledIn() throws IOException {
    MemorySink sink = written(SampleCar.whole());
    for (String path : sink.paths()) {
      if (path.endsWith(".csv")) {
        String form = sink.text(path);
        String filled =
            form.replaceAll("(?m)^(\"?[^,\n]+,[^,\n]+),,,(meter|insulation),,,", "$1,0.01,,$2,,,");
        assertThat(filled).as(path).isNotEqualTo(form);
        var read =
            new ReadingsReader(
                    MemoryFiles.of(Map.of("readings/a.csv", filled)), ReadLimits.STANDARD)
                .read("readings/a.csv");
        assertThat(read.problems()).as(path).isEmpty();
        assertThat(read.value()).as(path).hasSize((int) form.lines().count() - 1);
      }
    }
  }

  @Test
  void saysWhatShouldBeReadAndWhatCannotBeSeen() throws IOException {
    String page =
        written(
                """
                {"format": 1,
                 "parts": {"housings": {"h": {"side": "socket", "rows": [["1", "2"]]}}},
                 "connectors": {"X1": {"housing": "h", "parked": "capped"}, "X2": {"housing": "h", "parked": "capped"}},
                 "wires": {
                   "W1": {"from": "X1:1", "to": "X2:1", "areaMm2": 1, "cutMm": 10000, "colour": "RD"},
                   "W2": {"from": "X1:1", "to": "X2:1", "areaMm2": 1, "cutMm": 10000},
                   "W3": {"from": "X1:2", "to": "X2:2"}}}
                """)
            .text("ring-out.html");
    assertThat(page)
        .contains("whether W1 is broken: it lies in parallel with W2")
        .contains("side by side in X1")
        .contains("<td class=\"num\" data-head=\"should read\">not known</td>")
        .containsPattern("data-head=\"should read\">0\\.[0-9]+ Ω</td>");
  }

  @Test
  void escapesWhatFilesSay() throws IOException {
    String odd = "<img src=x>\\\"'&🏁";
    String page =
        written(
                """
                {"format": 1, "title": "%1$s", "sketch": true,
                 "wires": {"W1": {"from": "A:1", "to": "B:1", "note": "%1$s", "circuit": "%1$s", "colour": "%1$s"}}}
                """
                    .formatted(odd))
            .text("ring-out.html");
    assertThat(page).doesNotContain("<img").contains("&lt;img src=x&gt;");
    assertThat(page.split("<script", -1)).hasSize(3);
  }

  @Test
  void aHarnessWithoutWiresHasNone() throws IOException {
    assertThat(written("{\"format\": 1}").paths()).containsExactly("index.html");
  }
}
