package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.tugtest.report.ComparedSample;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.TotalRewrite;
import org.tugtest.report.Written;

class CompareHtmlTest {
  @Test
  void saysTheMeaningTheCircuitsAndTheChanges() {
    Document page = page(ComparedSample.report());
    assertThat(page.text())
        .contains("Circuits change: 2 nets change.")
        .contains("W5 moves from X1:3 to X1:4.")
        .contains("Caused by: W5 moves from X1:3 to X1:4.")
        .contains("The limit of colour-ambiguous is new");
  }

  @Test
  void whatFollowsFromANewFindingIsFoldedUnderIt() {
    String before = ComparedSample.before();
    String after = before.replaceAll("\"volts\": 12[.0-9]*", "\"volts\": 72");
    assertThat(after).isNotEqualTo(before);
    Document page = page(ComparedSample.of(before, after));
    assertThat(page.select("article.finding h3").eachText())
        .filteredOn(says -> says.contains("72"))
        .hasSize(1);
    String summary = page.select("article.finding .follow summary").text();
    assertThat(summary).matches("[0-9]+ more follow from this");
    int follow = Integer.parseInt(summary.replaceAll(" .*", ""));
    assertThat(page.select("article.finding .follow li")).hasSize(Math.min(12, follow));
    int all = page.select("article.finding").size() + follow;
    assertThat(page.text()).contains(all + " new, ").contains("New findings " + all + " ");
  }

  @Test
  void changedCavitiesAreMarkedBeforeAndAfterOnBothSides() {
    Document page = page(ComparedSample.report());
    assertThat(page.select(".face table caption").eachText())
        .containsExactly(
            "Before, wire side",
            "Before, mating side, mirrored",
            "After, wire side",
            "After, mating side, mirrored");
    assertThat(page.select("table:has(caption:contains(After, wire side)) .here .no").eachText())
        .containsExactly("2", "3", "4");
    assertThat(page.select("table:has(caption:contains(Before, wire side)) .here").eachText())
        .allMatch(cell -> cell.contains("changed"));
  }

  @Test
  void aConnectorCalledAnewIsOneAndTheSame() {
    String before = ComparedSample.before();
    String after = before.replace("X1", "X9").replace("X9:3", "X9:4");
    Document page = page(ComparedSample.of(before, after));
    assertThat(page.select(".face h3").eachText()).containsExactly("X9, before: X1");
    assertThat(page.select(".face header p").text()).isEqualTo("changed: cavities 3 and 4");
  }

  @Test
  void theMatingSideIsTheMirrorOfTheWireSide() {
    Document page = page(ComparedSample.report());
    for (String when : List.of("Before", "After")) {
      List<List<String>> wires = rows(page, when + ", wire side");
      List<List<String>> mating = rows(page, when + ", mating side, mirrored");
      assertThat(wires).as(when).isNotEmpty();
      wires.forEach(Collections::reverse);
      assertThat(mating).as(when).isEqualTo(wires);
    }
    assertThat(rows(page, "After, wire side").get(0))
        .containsExactly("1 W14", "2 W6 changed", "3 changed");
  }

  @Test
  void aNewConnectorMarksWhatItHolds() {
    String before = ComparedSample.before();
    String after =
        before
            .replace(
                "\"mates\": \"LAMPS\"}",
                "\"mates\": \"LAMPS\"}, \"X2\": {\"housing\": \"skt\", \"blanked\": true}")
            .replace("\"W2\":", "\"W9\": {\"from\": \"X2:6\", \"to\": \"SW:2\"}, \"W2\":");
    Document page = page(ComparedSample.of(before, after));
    assertThat(page.select(".face h3").eachText()).containsExactly("X2");
    assertThat(page.select(".face").text()).contains("new Before: not there After, wire side");
    assertThat(page.select(".face .here .no").eachText()).containsExactly("6", "6");
  }

  @Test
  void aCavityFittedOtherwiseOrSittingElsewhereIsMarked() {
    String before = ComparedSample.before();
    String fitted =
        before.replace(
            "\"mates\": \"LAMPS\"}",
            "\"mates\": \"LAMPS\", \"cavities\": {\"2\": {\"evidence\": \"guess\"}}}");
    assertThat(marked(page(ComparedSample.of(before, fitted)))).containsExactly("2");
    String turned = before.replace("[[\"1\", \"2\", \"3\"]", "[[\"1\", \"3\", \"2\"]");
    assertThat(marked(page(ComparedSample.of(before, turned)))).containsExactly("3", "2");
  }

  @Test
  void aWireThatOnlyHasAnotherNameMarksNothing() {
    String before = ComparedSample.before();
    Document page = page(ComparedSample.of(before, before.replace("\"W4\":", "\"W99\":")));
    assertThat(page.select(".face")).isEmpty();
    assertThat(page.text()).contains("W4 is called W99 now");
  }

  @Test
  void saysHowItIsReworkedAndWhatIsMeasuredAndTriedAgain() {
    Document page = page(ComparedSample.report());
    assertThat(page.select("#r1-rework li").eachText())
        .contains("X1:3: release W5 (YE/BK, 1 mm²); tag it X1:4");
    assertThat(page.select("#r1-retest tr").eachText())
        .anyMatch(line -> line.startsWith("LAMPS:1") || line.contains("proves"))
        .anyMatch(line -> line.contains("apart side by side in X1"));
    assertThat(page.select("#r1-retest li").text()).contains("LAMPS.left, in state on");
    assertThat(page.select(".rooms a[href]").eachAttr("href"))
        .isNotEmpty()
        .allMatch(ref -> page.selectFirst(ref) != null);
  }

  @Test
  void aTotalRewriteStaysAPageAndSaysWhatItLeftOut() {
    String html = Written.by(new CompareHtml(), TotalRewrite.ofWires(10_000));
    assertThat(html.getBytes(StandardCharsets.UTF_8).length).isBetween(200_000, 3_000_000);
    Document page = Jsoup.parse(html);
    for (String room : List.of("circuits", "changes", "rework", "retest")) {
      assertThat(page.select("#r1-" + room).text())
          .as(room)
          .containsPattern("And \\d+ more; compare\\.json has them all\\.");
    }
    assertThat(page.select("#r1-faces").text())
        .containsPattern("And \\d+ more connectors; compare\\.json has every change of them\\.");
  }

  @Test
  void manyRootsShareTheRoom() {
    HarnessReport one = TotalRewrite.ofWires(288).harnesses().get(0);
    Report alone = ComparedSample.report();
    for (int roots : new int[] {3, 150}) {
      Report report =
          new Report(
              alone.version(),
              alone.folder(),
              alone.revision(),
              alone.gate(),
              alone.rules(),
              Collections.nCopies(roots, one));
      String html = Written.by(new CompareHtml(), report);
      assertThat(html.length()).as("%d roots", roots).isLessThan(8_000_000);
      assertThat(Jsoup.parse(html).select("section[id~=r\\d+-changes]")).hasSize(roots);
    }
  }

  private static List<String> marked(Document page) {
    return page.select("table:has(caption:contains(After, wire side)) .here .no").eachText();
  }

  private static List<List<String>> rows(Document page, String caption) {
    List<List<String>> rows = new ArrayList<>();
    for (var row :
        page.select("table:has(caption:containsOwn(" + caption + "))").first().select("tr")) {
      List<String> cells = new ArrayList<>();
      row.select("td")
          .forEach(
              cell ->
                  cells.add(
                      (cell.select(".no").text()
                              + " "
                              + cell.select(".id").text()
                              + " "
                              + cell.select(".now").text())
                          .strip()
                          .replace("  ", " ")));
      rows.add(cells);
    }
    return rows;
  }

  @Test
  void nothingIsLoadedAndTextIsEscaped() {
    String before = ComparedSample.before();
    String html =
        Written.by(
            new CompareHtml(),
            ComparedSample.of(before, before.replace("Work lamps", "<script>alert(1)</script>")));
    assertThat(html)
        .doesNotContain("<script>alert")
        .doesNotContain("http://")
        .contains("default-src &#39;none&#39;");
  }

  @Test
  void whereTwoChangesMeetAndWithoutABase() {
    assertThat(page(ComparedSample.merge()).text()).contains("They meet at cavity X1:6.");
    assertThat(page(ComparedSample.first()).text()).contains("everything is new");
  }

  private static Document page(Report report) {
    return Jsoup.parse(Written.by(new CompareHtml(), report));
  }
}
