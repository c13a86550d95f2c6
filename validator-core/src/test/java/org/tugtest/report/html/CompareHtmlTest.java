package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.tugtest.report.ComparedSample;
import org.tugtest.report.Report;
import org.tugtest.report.Written;

class CompareHtmlTest {
  @Test
  void saysTheMeaningTheCircuitsAndTheChanges() {
    Document page = page(ComparedSample.report());
    assertThat(page.text())
        .contains("Circuits change: 2 nets change.")
        .contains("W5 moves from X1:3 to X1:4.")
        .contains("Caused by: W5 moves from X1:3 to X1:4.")
        .contains("The limit of colour-ambiguous is new.");
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
