package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;
import org.tugtest.finding.Level;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;

/** What a page says of findings, of rules that did not run, and of the verdict. */
class FindingsRoomTest {
  private static final Report BROKEN = SampleCar.broken();

  @Test
  void spellsOutWhatIsNotToBeSeen() {
    Document page =
        SampleCar.page(
            Reports.of(
                Reports.root(
                    "car.harness.json",
                    standing(finding(Level.ERROR, "W1", 1, null, "wire \u202eW1\u0007 is bad")))));
    assertThat(page.select(".says").text()).isEqualTo("wire \\u202eW1\\u0007 is bad");
  }

  @Test
  void tellsWhyItBlocks() {
    HarnessReport root =
        Reports.root(
            "car.harness.json",
            standing(finding(Level.ERROR, "W1", 1, null)),
            standing(finding(Level.NOTE, "W2", 1, null)),
            waived(finding(Level.ERROR, "W3", 1, null)));
    Document page = SampleCar.page(Reports.of(root));
    assertThat(page.select(".verdict .word").text()).isEqualTo("Blocked");
    assertThat(page.select(".verdict").text()).contains("Blocked by 1 error");
    assertThat(page.select(".counts li").eachText())
        .containsExactly("1 error", "0 warnings", "1 note", "1 waived");
    Document passes = SampleCar.page(Reports.of(new Gate(null, 0), root));
    assertThat(passes.select(".verdict .word").text()).isEqualTo("Passes");
    assertThat(passes.select(".verdict").text()).contains("Findings are shown and never block.");
  }

  @Test
  void tellsOfRulesThatBrokeAndThatDidNotRun() {
    HarnessReport whole = Reports.root("car.harness.json");
    Document page =
        SampleCar.page(
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
        SampleCar.page(
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
    Document page = SampleCar.page(BROKEN);
    Element doubled = page.selectFirst(".finding[data-rule=cavity-doubled]");
    assertThat(doubled.select(".says").text()).startsWith("XN-DASH:2 holds N002 and N004");
    assertThat(doubled.select(".facts").text()).contains("Figure 2, limit at most 1", "Loom nose");
    assertThat(doubled.select("mark").eachText()).containsExactly("\"XN-DASH:2\"", "\"XN-DASH:2\"");
    assertThat(doubled.select(".subject").eachAttr("data-ask"))
        .containsExactly("XN-DASH:2", "N002", "N004");
    assertThat(page.select("#rule-cavity-doubled h3").text()).isEqualTo("cavity-doubled");
  }
}
