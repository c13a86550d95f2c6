package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.tugtest.report.Cautions;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;

/** The frame of a page: its files, its head and foot, its markup and its size. */
class HtmlReportTest {
  private static final Report WHOLE = SampleCar.whole();
  private static final Report BROKEN = SampleCar.broken();

  @Test
  void writesEqualBytesForEqualReports() {
    byte[] once = SampleCar.written(BROKEN).bytes("report.html");
    assertThat(SampleCar.written(SampleCar.broken()).bytes("report.html")).isEqualTo(once);
  }

  @Test
  void writesOneFileForOneRoot() {
    MemorySink sink = SampleCar.written(WHOLE);
    assertThat(sink.paths()).containsExactly("report.html");
    assertThat(sink.leftOpen()).isEmpty();
  }

  @Test
  void writesAnIndexAndAPageForEachOfSeveralRoots() {
    MemorySink sink = SampleCar.written(Sample.report());
    assertThat(sink.paths())
        .containsExactlyInAnyOrder("report.html", "report-car.html", "report-van.html");
    Document index = SampleCar.page(sink, "report.html");
    assertThat(index.select("tbody th a").eachAttr("href"))
        .containsExactly("report-car.html", "report-van.html");
    assertThat(index.select("tbody th a").first().text()).isEqualTo("Night <car> | \"A&B\" 🔋");
    assertThat(SampleCar.page(sink, "report-car.html").select("header.mast .back a").attr("href"))
        .isEqualTo("report.html");
  }

  @Test
  void saysThatThereWasNothingToCheck() {
    Document index = SampleCar.page(Reports.of());
    assertThat(index.select(".verdict").text())
        .isEqualTo("Not checked There was no harness to check.");
  }

  @Test
  void letsNothingThatAFileSaysBecomeMarkup() {
    MemorySink sink = SampleCar.written(Sample.report());
    for (String file : sink.paths()) {
      String text = sink.text(file);
      Document page = Jsoup.parse(text);
      assertThat(page.select("img, iframe, object, embed, link, base")).as(file).isEmpty();
      assertThat(page.select("script")).as(file).hasSize(file.equals("report.html") ? 0 : 2);
      assertThat(text).doesNotContain("<car>", "<img", "\u001b");
    }
  }

  @Test
  void allowsExactlyItsOwnStyleAndScript() throws Exception {
    Document page = SampleCar.page(WHOLE);
    String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
    assertThat(policy)
        .isEqualTo(
            "default-src 'none'; style-src "
                + hash(page.selectFirst("style").data())
                + "; script-src "
                + hash(page.selectFirst("script:not([type])").data())
                + "; base-uri 'none'; form-action 'none'");
    assertThat(page.select("[style], [onclick]")).isEmpty();
  }

  private static String hash(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
  }

  @Test
  void pointsAtNothingOutsideAndAtNothingThatIsMissing() {
    for (Report report : List.of(BROKEN, WHOLE, Sample.report())) {
      MemorySink sink = SampleCar.written(report);
      for (String file : sink.paths()) {
        Document page = SampleCar.page(sink, file);
        Set<String> ids = new HashSet<>(page.select("[id]").eachAttr("id"));
        assertThat(page.select("[id]")).as("ids are unique").hasSize(ids.size());
        for (Element link : page.select("[href]")) {
          String target = link.attr("href");
          if (target.startsWith("#")) {
            assertThat(ids).as(link.outerHtml()).contains(target.substring(1));
          } else {
            assertThat(sink.paths()).contains(target);
          }
        }
        assertThat(page.select("[src], [action]")).isEmpty();
        for (String names : List.of("aria-labelledby", "aria-describedby", "for")) {
          for (Element element : page.select("[" + names + "]")) {
            assertThat(ids).as(element.tagName()).contains(element.attr(names));
          }
        }
      }
    }
  }

  @Test
  void namesItsLandmarksTablesAndControls() {
    Document page = SampleCar.page(BROKEN);
    assertThat(page.select("html").attr("lang")).isEqualTo("en");
    assertThat(page.select("body > header, body > nav, body > main, body > footer")).hasSize(4);
    assertThat(page.select("h1")).hasSize(1);
    assertThat(page.select("nav:not([aria-label]), section:not([aria-labelledby])")).isEmpty();
    assertThat(page.select("table:not(:has(caption))")).isEmpty();
    assertThat(page.select("th:not([scope])")).isEmpty();
    assertThat(page.select("[role=region]:not([aria-label]):not([aria-labelledby])")).isEmpty();
    for (Element control : page.select("input, select")) {
      boolean labelled =
          control.closest("label") != null
              || !page.select("label[for=" + control.id() + "]").isEmpty();
      assertThat(labelled).as(control.outerHtml()).isTrue();
    }
    assertThat(page.select("#ask-status[role=status], #filter-status[role=status]")).hasSize(2);
    assertThat(page.select("noscript").text()).contains("need JavaScript");
  }

  @Test
  void carriesTheCautionsAndTheRevisionOnEveryPage() {
    MemorySink sink = SampleCar.written(Sample.report());
    for (String file : sink.paths()) {
      Document page = SampleCar.page(sink, file);
      assertThat(page.select("footer p").eachText()).isEqualTo(Cautions.SENTENCES);
      assertThat(page.select(".stamp").text())
          .contains("Commit 0123456", "Checked as of 2026-11-25 (date of the commit)");
      assertThat(page.selectFirst("style").data())
          .contains("@bottom-left{content:\"Checks the description of a loom", "counter(page)");
    }
  }

  @Test
  void printsLoomsAndCommitInTheMargin() {
    assertThat(SampleCar.page(WHOLE).selectFirst("style").data())
        .contains("@top-left{content:\"Pebble Owl\\00002c  single\\00002d seat")
        .contains("nose rev A")
        .contains("@top-right{content:\"0123456 \\0000b7  2026\\00002d 11\\00002d 25\"");
  }

  @Test
  void leavesNoHeadingOut() {
    for (Report report : List.of(BROKEN, Sample.report())) {
      MemorySink sink = SampleCar.written(report);
      for (String file : sink.paths()) {
        int last = 0;
        for (Element heading : SampleCar.page(sink, file).select("h1, h2, h3, h4, h5, h6")) {
          int level = heading.tagName().charAt(1) - '0';
          assertThat(level).as(file + ": " + heading.text()).isLessThanOrEqualTo(last + 1);
          last = level;
        }
      }
    }
  }

  @Test
  void namesTheRowsAndColumnsOfEveryTable() {
    for (Element table : SampleCar.page(BROKEN).select("table:not(.cavities)")) {
      assertThat(table.select("caption").text()).as(table.outerHtml()).isNotBlank();
      assertThat(table.select("thead th[scope=col]")).as(table.text()).isNotEmpty();
      for (Element row : table.select("tbody tr")) {
        assertThat(row.select("th[scope]")).as(row.text()).hasSize(1);
      }
      int columns = table.select("thead th").size();
      for (Element row : table.select("tbody tr:not(.heading)")) {
        assertThat(row.children()).as(row.text()).hasSize(columns);
      }
    }
  }

  @Test
  void keepsAPageOfTenThousandWiresSmall() {
    assertThat(SampleCar.written(SampleCar.ofWires(10_000)).bytes("report.html").length)
        .isLessThan(5_000_000);
  }
}
