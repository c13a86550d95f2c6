package org.tugtest.report.sheets.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.html.SampleCar;

class DocumentsTest {
  private static final Pattern LINK = Pattern.compile("<a [^>]*href=\"([^\"#]+)\"");

  private static MemorySink written(Report report) throws IOException {
    MemorySink sink = new MemorySink();
    List<String> paths = Documents.standard().write(report, sink);
    assertThat(paths).containsExactlyInAnyOrderElementsOf(sink.paths());
    assertThat(paths.get(0)).isEqualTo("index.html");
    assertThat(sink.leftOpen()).isEmpty();
    return sink;
  }

  private static List<String> pages(MemorySink sink) {
    return sink.paths().stream().filter(path -> path.endsWith(".html")).sorted().toList();
  }

  private static String resolved(String page, String link) {
    String folder = page.substring(0, page.lastIndexOf('/') + 1);
    String to = link;
    while (to.startsWith("../")) {
      to = to.substring(3);
      folder = folder.substring(0, folder.lastIndexOf('/', folder.length() - 2) + 1);
    }
    return folder + to;
  }

  @Test
  void everyFileIsReachedFromTheIndexAndEveryLinkLeadsSomewhere() throws IOException {
    Map<String, String> files = SampleCar.files();
    String second = "pebble-owl-2.harness.json";
    files.put(second, files.get(SampleCar.ROOT));
    for (Report report :
        List.of(SampleCar.whole(), SampleCar.checked(files, second, SampleCar.ROOT))) {
      MemorySink sink = written(report);
      TreeSet<String> reached = new TreeSet<>(List.of("index.html"));
      for (String page : pages(sink)) {
        Matcher link = LINK.matcher(sink.text(page));
        while (link.find()) {
          reached.add(resolved(page, link.group(1)));
        }
      }
      assertThat(reached).isEqualTo(new TreeSet<>(sink.paths()));
    }
  }

  @Test
  void equalReportsGiveEqualBytes() throws IOException {
    MemorySink one = written(SampleCar.whole());
    MemorySink other = written(SampleCar.whole());
    assertThat(one.paths()).isEqualTo(other.paths());
    one.paths().forEach(path -> assertThat(one.bytes(path)).as(path).isEqualTo(other.bytes(path)));
  }

  @Test
  void everySheetOfABrokenHarnessSaysThatItIsNotComplete() throws IOException {
    MemorySink sink = written(SampleCar.broken());
    for (String page : pages(sink)) {
      String text = sink.text(page);
      String box =
          text.substring(text.indexOf("<main>"), text.indexOf("</div>", text.indexOf("<main>")));
      assertThat(box)
          .as(page)
          .contains("<b>Not complete</b>")
          .contains("2 references lead nowhere: wires/N006 and wires/N008");
    }
  }

  @Test
  void noSheetOfAWholeHarnessSaysSo() throws IOException {
    MemorySink sink = written(SampleCar.whole());
    assertThat(pages(sink)).isNotEmpty();
    pages(sink)
        .forEach(page -> assertThat(sink.text(page).contains("Not complete")).as(page).isFalse());
  }

  @Test
  void aHarnessWithNothingInItGivesPagesThatSaySo() throws IOException {
    Report report =
        SampleCar.checked(Map.of("a.harness.json", "{\"format\": 1}"), "a.harness.json");
    assertThat(written(report).paths()).contains("index.html");
  }

  @Test
  void theIndexNamesWhatThereIsNoneOf() throws IOException {
    Report splices =
        SampleCar.checked(
            Map.of(
                "a.harness.json",
                """
                {"format": 1, "sketch": true, "wires": {"W1": {"from": "S1", "to": "S2"}}}
                """),
            "a.harness.json");
    assertThat(written(splices).text("index.html"))
        .contains(
            "Not made, as there is nothing to stand on them: Covering and heat-shrink list; Crimp,"
                + " strip and seal table; Pinouts; Cross-mate study.");
    assertThat(written(SampleCar.whole()).text("index.html")).doesNotContain("Not made");
  }
}
