package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;
import org.tugtest.finding.Level;
import org.tugtest.report.Cautions;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;

class HtmlReportTest {
  private static final Report WHOLE = SampleCar.whole();
  private static final Report BROKEN = SampleCar.broken();

  private static Document page(Report report) {
    return page(SampleCar.written(report), "report.html");
  }

  private static Document page(MemorySink sink, String file) {
    return Jsoup.parse(sink.text(file));
  }

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
    Document index = page(sink, "report.html");
    assertThat(index.select("tbody th a").eachAttr("href"))
        .containsExactly("report-car.html", "report-van.html");
    assertThat(index.select("tbody th a").first().text()).isEqualTo("Night <car> | \"A&B\" 🔋");
    assertThat(page(sink, "report-car.html").select("header.mast .back a").attr("href"))
        .isEqualTo("report.html");
  }

  @Test
  void saysThatThereWasNothingToCheck() {
    Document index = page(Reports.of());
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
  void spellsOutWhatIsNotToBeSeen() {
    Document page =
        page(
            Reports.of(
                Reports.root(
                    "car.harness.json",
                    standing(finding(Level.ERROR, "W1", 1, null, "wire \u202eW1\u0007 is bad")))));
    assertThat(page.select(".says").text()).isEqualTo("wire \\u202eW1\\u0007 is bad");
  }

  @Test
  void allowsExactlyItsOwnStyleAndScript() throws Exception {
    Document page = page(WHOLE);
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
        Document page = page(sink, file);
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
    Document page = page(BROKEN);
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
      Document page = page(sink, file);
      assertThat(page.select("footer p").eachText()).isEqualTo(Cautions.SENTENCES);
      assertThat(page.select(".stamp").text())
          .contains("Commit 0123456", "Checked as of 2026-11-25 (date of the commit)");
      assertThat(page.selectFirst("style").data())
          .contains("@bottom-left{content:\"Checks the description of a loom", "counter(page)");
    }
  }

  @Test
  void printsLoomsAndCommitInTheMargin() {
    assertThat(page(WHOLE).selectFirst("style").data())
        .contains("@top-left{content:\"Pebble Owl\\00002c  single\\00002d seat")
        .contains("nose rev A")
        .contains("@top-right{content:\"0123456 \\0000b7  2026\\00002d 11\\00002d 25\"");
  }

  @Test
  void tellsWhyItBlocks() {
    HarnessReport root =
        Reports.root(
            "car.harness.json",
            standing(finding(Level.ERROR, "W1", 1, null)),
            standing(finding(Level.NOTE, "W2", 1, null)),
            waived(finding(Level.ERROR, "W3", 1, null)));
    Document page = page(Reports.of(root));
    assertThat(page.select(".verdict .word").text()).isEqualTo("Blocked");
    assertThat(page.select(".verdict").text()).contains("Blocked by 1 error");
    assertThat(page.select(".counts li").eachText())
        .containsExactly("1 error", "0 warnings", "1 note", "1 waived");
    Document passes = page(Reports.of(new Gate(null, 0), root));
    assertThat(passes.select(".verdict .word").text()).isEqualTo("Passes");
    assertThat(passes.select(".verdict").text()).contains("Findings are shown and never block.");
  }

  @Test
  void tellsOfRulesThatBrokeAndThatDidNotRun() {
    HarnessReport whole = Reports.root("car.harness.json");
    Document page =
        page(
            Reports.of(
                new HarnessReport(
                    whole.facts(),
                    new CheckResult(
                        "car.harness.json",
                        List.of(),
                        List.of(),
                        List.of(
                            new NotRun("made-up", "skipped by tugtest.skipRules"),
                            new NotRun("another", "nothing is built"),
                            new NotRun("made-up-too", "skipped by tugtest.skipRules")),
                        List.of(new Crash("other", "Broken: <b>", List.of("a.B.c(B.java:1)"))),
                        List.of()))));
    assertThat(page.select(".verdict .word").text()).isEqualTo("Not checked");
    assertThat(page.select("#not-run h3").text()).isEqualTo("other broke");
    assertThat(page.select("#not-run pre").text()).contains("Broken: <b>", "at a.B.c(B.java:1)");
    assertThat(page.select("#not-run tbody th").eachText())
        .containsExactly("skipped by tugtest.skipRules", "nothing is built");
    assertThat(page.select("#not-run td").eachText())
        .containsExactly("made-up made-up-too", "another");
    assertThat(page.select(".rooms a[href=#not-run]").text()).isEqualTo("Not run 4");
  }

  @Test
  void putsTheGravestFirstWaivedApartAndFollowersBelowTheirCause() {
    var cause = finding(Level.WARNING, "W1", 9, null);
    Document page =
        page(
            Reports.of(
                Reports.root(
                    "car.harness.json",
                    standing(finding(Level.NOTE, "W4", 1, null)),
                    standing(cause),
                    standing(finding(Level.ERROR, "W3", 20, null)),
                    standing(finding(Level.WARNING, "W2", 3, cause.identity())),
                    waived(finding(Level.ERROR, "W5", 2, null)))));
    assertThat(page.select("#findings > .list:first-of-type > .finding > header .says").eachText())
        .containsExactly("wire W3 is bad", "wire W1 is bad", "wire W4 is bad");
    assertThat(page.select("details.follow summary").text()).isEqualTo("1 more follows from this");
    assertThat(page.select("details.follow .says").text()).isEqualTo("wire W2 is bad");
    assertThat(page.select(".finding[data-waived=yes] .says").text()).isEqualTo("wire W5 is bad");
    assertThat(page.select(".finding[data-waived=yes] .facts").text())
        .contains("Waiver known settled with the bench");
    assertThat(page.select(".stop")).hasSize(1);
  }

  @Test
  void showsFigureRemedyAndTheMarkedLines() {
    Document page = page(BROKEN);
    Element doubled = page.selectFirst(".finding[data-rule=cavity-doubled]");
    assertThat(doubled.select(".says").text()).startsWith("XN-DASH:2 holds N002 and N004");
    assertThat(doubled.select(".facts").text()).contains("Figure 2, limit at most 1", "Loom nose");
    assertThat(doubled.select("mark").eachText()).containsExactly("\"XN-DASH:2\"", "\"XN-DASH:2\"");
    assertThat(doubled.select(".subject").eachAttr("data-ask"))
        .containsExactly("XN-DASH:2", "N002", "N004");
    assertThat(page.select("#rule-cavity-doubled h3").text()).isEqualTo("cavity-doubled");
  }

  @Test
  void drawsAConnectorFromBothSides() {
    Document page = page(BROKEN);
    Element face =
        page.select(".face").stream()
            .filter(article -> article.select("h4").text().equals("XN-DASH"))
            .findFirst()
            .orElseThrow();
    assertThat(face.select("caption").eachText())
        .containsExactly("Wire side", "Mating side, mirrored");
    assertThat(row(face, 0)).containsExactly("1", "2", "3", "4", "5", "6", "7", "8");
    assertThat(row(face, 1)).containsExactly("8", "7", "6", "5", "4", "3", "2", "1");
    Element doubled = face.select("td.cav").get(1);
    assertThat(doubled.select(".mark").text()).isEqualTo("doubled");
    assertThat(doubled.select(".w").get(0).text()).isEqualTo("N002 guess OG/BU 0.5 mm²");
    assertThat(doubled.select(".sw").get(0).className()).isEqualTo("sw b-OG s-BU");
    assertThat(face.select("td.cav").get(0).text()).isEqualTo("1 plugged");
  }

  private static List<String> row(Element face, int side) {
    return face.select("table").get(side).select("tr").first().select("b.no").eachText();
  }

  @Test
  void saysWhatCannotBeSeenOfAConnectorWithoutAHousing() {
    Document page =
        page(
            SampleCar.checked(
                Map.of(
                    SampleCar.ROOT,
                    """
                    {"format": 1, "sketch": true, "wires": {"W1": {"from": "R1:2", "to": "R1:10"}}}
                    """),
                SampleCar.ROOT));
    assertThat(page.select("#faces caption").eachText())
        .containsExactly("Cavities in order of their names");
    assertThat(page.select("#faces .face b.no").eachText()).containsExactly("2", "10");
    assertThat(page.select("#faces .face").text()).contains("its housing gives no rows");
    assertThat(page.select("#verdict").text())
        .contains("What to add next", "the area of 1 wire (W1)");
    assertThat(page.select("#totals tbody").last().text()).isEqualTo("R1 not known 2 0 not known");
  }

  @Test
  void drawsNoFacesInAPageThatWouldBeTooLong() {
    Document page = page(SampleCar.ofWires(2600));
    assertThat(page.select("#faces .face").size()).isGreaterThan(200);
    assertThat(page.select("#faces table")).isEmpty();
    assertThat(page.select("#faces noscript").text()).contains("draws its connectors on demand");
  }

  @Test
  void countsWhatIsThere() {
    Document page = page(WHOLE);
    int wires = WHOLE.harnesses().get(0).facts().harness().wires().size();
    assertThat(page.select("#totals .tiles div").eachText()).contains("wires " + wires);
    int byLoom =
        page.select("#totals table:has(caption:contains(Looms)) tbody tr").stream()
            .mapToInt(row -> Integer.parseInt(row.select("td.num").first().text()))
            .sum();
    assertThat(byLoom).isEqualTo(wires);
  }

  @Test
  void listsEveryNetWithItsPointsAndWires() {
    Document page =
        page(
            SampleCar.checked(
                Map.of(
                    SampleCar.ROOT,
                    """
                    {"format": 1, "sketch": true, "wires": {
                      "W1": {"from": "R1:1", "to": "S1", "circuit": "feed"},
                      "W2": {"from": "S1", "to": "R2:1"},
                      "W3": {"from": "R1:2", "to": "R2:2"}}}
                    """),
                SampleCar.ROOT));
    assertThat(page.select("#nets tbody tr").eachText())
        .containsExactly("R1:1 feed R1:1 R2:1 S1 W1 W2", "R1:2 R1:2 R2:2 W3");
  }

  @Test
  void hasARoomForEachQuestion() {
    Document page = page(WHOLE);
    for (String room :
        List.of(
            "loom",
            "bundles",
            "circuits",
            "fuses",
            "protection",
            "isolation",
            "volts",
            "what-if")) {
      assertThat(page.select("#" + room)).as(room).hasSize(1);
      assertThat(page.select("nav a[href=#" + room + "]")).as(room).hasSize(1);
    }
    assertThat(page.select("svg[role=img]:not([aria-label])")).isEmpty();
    assertThat(page.select("#loom svg, #bundles svg.cross, svg.loop, svg.timechart"))
        .hasSizeGreaterThan(100);
  }

  @Test
  void letsNoTextBecomeMarkupInTheRooms() {
    Document page =
        page(
            SampleCar.checked(
                Map.of(
                    SampleCar.ROOT,
                    """
                    {"format": 1, "devices": {
                       "B": {"elements": {"c": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                       "F": {"elements": {"f": {"kind": "fuse", "a": "1", "b": "2", "ratingA": 5, "style": "<img src=x onerror=y>"}}},
                       "L": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
                     "wires": {
                       "V": {"from": "B:+", "to": "F:1", "areaMm2": 1, "circuit": "</script><img src=x>"},
                       "W": {"from": "F:2", "to": "L:1", "areaMm2": 1},
                       "X": {"from": "L:2", "to": "B:-", "areaMm2": 1}}}
                    """),
                SampleCar.ROOT));
    assertThat(page.select("img, [onerror]")).isEmpty();
    assertThat(page.select("script")).hasSize(2);
    assertThat(page.select("#fuses").text()).contains("<img src=x onerror=y>");
  }

  @Test
  void asksToMendWhatCannotBeReadBeforeItAsksForMore() {
    Map<String, String> files = new java.util.TreeMap<>(SampleCar.files());
    files.remove("layout.json");
    files.computeIfPresent("looms/nose.json", (path, text) -> text.substring(0, 3000));
    Document page = page(SampleCar.checked(files, SampleCar.ROOT));
    assertThat(page.select("#verdict").text())
        .contains("What to do first")
        .contains("Mend src/main/harness/layout.json, src/main/harness/looms/nose.json.")
        .doesNotContain("What to add next");
    assertThat(page.select("nav.rooms .unread").text())
        .startsWith("Not read: src/main/harness/layout.json, src/main/harness/looms/nose.json.");
    assertThat(page.select("#loom figcaption").text()).contains("No layout could be read: ");
    assertThat(page.select("#loom .arm.bent")).isEmpty();
  }

  @Test
  void saysInEveryRoomWhyItIsEmpty() {
    Document page =
        page(SampleCar.checked(Map.of(SampleCar.ROOT, "{\"format\": 1}"), SampleCar.ROOT));
    for (Element room : page.select("section.room")) {
      assertThat(room.select("p, table, dl").text()).as(room.id()).isNotBlank();
      assertThat(page.select("nav a[href=#" + room.id() + "]")).as(room.id()).hasSize(1);
    }
    assertThat(page.select("#bundles").text()).contains("no wire runs along a segment");
    assertThat(page.select("#isolation").text()).contains("No device has a source");
    assertThat(page.select("#what-if").text()).contains("No load is fed");
    assertThat(page.select("#protection").text()).contains("No fuse is fitted");
  }

  @Test
  void leavesNoHeadingOut() {
    for (Report report : List.of(BROKEN, Sample.report())) {
      MemorySink sink = SampleCar.written(report);
      for (String file : sink.paths()) {
        int last = 0;
        for (Element heading : page(sink, file).select("h1, h2, h3, h4, h5, h6")) {
          int level = heading.tagName().charAt(1) - '0';
          assertThat(level).as(file + ": " + heading.text()).isLessThanOrEqualTo(last + 1);
          last = level;
        }
      }
    }
  }

  @Test
  void namesTheRowsAndColumnsOfEveryTable() {
    for (Element table : page(BROKEN).select("table:not(.cavities)")) {
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
