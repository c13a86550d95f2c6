package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.tugtest.report.html.CompareHtml;
import org.tugtest.report.json.CompareReport;
import org.tugtest.report.markdown.CompareMarkdown;
import org.tugtest.report.sheets.rework.ReworkWriter;
import tools.jackson.databind.JsonNode;

class AsBuiltReportTest {
  private static final String BLOCKS = "blocks: nobody has accepted that";

  private static Report report() {
    return AsBuiltSample.of(AsBuiltSample.ENTRIES, AsBuiltSample.READINGS);
  }

  private static List<String> standings(Report report) {
    HarnessReport harness = report.harnesses().get(0);
    return Objects.requireNonNull(harness.built()).deviations().stream()
        .map(judged -> AsBuiltText.standing(report, harness, judged))
        .toList();
  }

  @Test
  void aDeviationIsAcceptedBlocksOrLiesWithinItsLimits() {
    assertThat(standings(report()))
        .containsExactlyInAnyOrder("accepted until 2027-03-31", BLOCKS, "within its limits");
  }

  @Test
  void anAcceptanceThatIsOverBlocksNoLongerThanTheGateSays() {
    String over =
        "\"1\": {\"kind\": \"left-out\", \"at\": \"wires/W3\", \"reason\": \"forgotten\","
            + " \"accepted\": true, \"until\": \"2020-01-31\"}";
    Report report = AsBuiltSample.of(over, List.of());
    assertThat(standings(report)).containsExactly("blocks: it was accepted until 2020-01-31");
    assertThat(report.outcome()).isEqualTo(Report.Outcome.FINDINGS);
    Report never =
        new Report(
            report.version(),
            report.folder(),
            report.revision(),
            new Gate(null, 0),
            report.rules(),
            report.harnesses());
    assertThat(standings(never)).containsExactly("error: it was accepted until 2020-01-31");
    assertThat(never.outcome()).isEqualTo(Report.Outcome.CLEAN);
  }

  @Test
  void markdownTellsDeviationsReadingsAndWhatExplainsThem() {
    String page = Written.by(new CompareMarkdown(), report());
    assertThat(page)
        .contains("#### Deviations\n\n")
        .contains(
            "- **accepted until 2027-03-31** – wire W3 was built VT instead of BU (no blue in"
                + " stock)")
        .contains("- **" + BLOCKS + "** – wire W4 was built of w0.5 instead of w1.0")
        .contains("#### What explains the readings\n\n- 2 readings contradict the plan (")
        .contains("  1. W1 and W2 are exchanged in X1 (cavities 1 and 2, side by side)\n")
        .contains("a meter shows the same for the first two: look")
        .contains("#### Readings (1 as expected left out)\n\n")
        .contains(" reads open\n")
        .contains("#### Put back as planned: ");
  }

  @Test
  void theReadingThatTellsTheTwoBestApartIsInAllThree() {
    List<String> one = List.of("X1:1,X2:1,,no,", "X1:2,X2:2,0.03,,", "X1:4,X2:4,0.03,,");
    Report report = AsBuiltSample.of("", one);
    String telling = "to tell the first two apart measure ";
    JsonNode explained = built(report).get("explanations").get(0);
    assertThat(explained.get("next").stringValue()).startsWith(telling);
    assertThat(explained.get("telling").isNull()).isFalse();
    assertThat(explained.get("sets").size()).isGreaterThan(1);
    String next = explained.get("next").stringValue();
    assertThat(page(report).text()).contains(next);
    assertThat(Written.by(new CompareMarkdown(), report).replace("\u200B", "")).contains(next);
    assertThat(
            AsBuiltText.lines(
                report,
                Objects.requireNonNull(report.harnesses().get(0).built()).explanations().get(0)))
        .anyMatch(line -> line.equals("    " + next));
  }

  @Test
  void htmlTellsThemWithASignAndAWord() {
    Document page = page(report());
    assertThat(page.select("#r1-built table:contains(Deviation) tbody tr").eachText())
        .anyMatch(line -> line.contains("W3 was built VT") && line.contains("accepted until"))
        .anyMatch(line -> line.contains("W4 was built of w0.5") && line.contains(BLOCKS));
    assertThat(page.select("#r1-built").text())
        .contains("W1 and W2 are exchanged in X1")
        .contains("1 of 4 readings shows what is expected of the plan with these" + " deviations.");
    assertThat(page.select("#r1-rework h2").text()).isEqualTo("Put back as planned");
    assertThat(page.text()).doesNotContain("nnounced");
  }

  @Test
  void jsonHasThemAll() {
    JsonNode built = built(report());
    assertThat(built.get("deviations").size()).isEqualTo(3);
    assertThat(built.get("deviations").toString())
        .contains("\"until\":\"2027-03-31\"")
        .contains("\"blocks\":true,\"finding\":\"built-thinner");
    assertThat(built.get("readings").size()).isEqualTo(4);
    assertThat(built.get("explanations").get(0).get("sets").get(0).get(0).get("kind").stringValue())
        .isEqualTo("neighbours-exchanged");
    assertThat(built.get("refused").isEmpty()).isTrue();
  }

  @Test
  void thePutBackStepsLeadFromTheLoomAsBuiltToThePlan() {
    String moved =
        "\"1\": {\"kind\": \"re-pinned\", \"at\": \"wires/W1\", \"planned\": \"X1:1\", \"built\":"
            + " \"X1:3\", \"reason\": \"seen at the bench\"}";
    HarnessReport harness = AsBuiltSample.of(moved, List.of()).harnesses().get(0);
    BenchWork work = Objects.requireNonNull(harness.baseline()).work();
    assertThat(work.putsBack()).isTrue();
    assertThat(work.rework().steps())
        .extracting(step -> step.text())
        .anyMatch(text -> text.startsWith("X1:3: release W1"))
        .anyMatch(text -> text.startsWith("X1:1: insert W1"));
  }

  private static String entry(
      String number, String wire, String planned, String built, String more) {
    return "\"%s\": {\"kind\": \"re-pinned\", \"at\": \"wires/%s\", \"planned\": \"%s\", \"built\": \"%s\", \"reason\": \"seen at the bench\"%s}"
        .formatted(number, wire, planned, built, more);
  }

  private static BenchWork work(Report report) {
    return Objects.requireNonNull(report.harnesses().get(0).baseline()).work();
  }

  @Test
  void whatIsAcceptedStaysAsBuiltAndIsNamed() throws IOException {
    String accepted = ", \"accepted\": true, \"until\": \"2027-03-31\"";
    Report report =
        AsBuiltSample.of(
            entry("1", "W1", "X1:1", "X1:3", accepted)
                + ", "
                + entry("2", "W2", "X2:2", "X2:3", ""),
            List.of());
    BenchWork work = work(report);
    String left =
        "wire W1 was built into X1:3 instead of X1:1, accepted until 2027-03-31: entry 1 of"
            + " built/41.record.json";
    assertThat(work.left()).containsExactly(left);
    assertThat(work.rework().steps())
        .extracting(step -> step.text())
        .anyMatch(text -> text.startsWith("X2:2: insert W2"))
        .noneMatch(text -> text.contains("W1"));
    Document page = page(report);
    assertThat(page.select("#r1-rework").text())
        .contains(
            "but for what is accepted as built", "Stays as built, since it is accepted", left);
    assertThat(Written.by(new CompareMarkdown(), report)).contains("- stays as built: wire W1 was");
    MemorySink sink = new MemorySink();
    new ReworkWriter().write(report, sink);
    assertThat(sink.text("rework.html"))
        .contains(left, "to the plan, but for what is accepted as built,")
        .doesNotContain("<h3>X1</h3>");
    assertThat(sink.text("rework.csv")).contains("left,,\"" + left).doesNotContain("X1:1: insert");
  }

  @Test
  void whatIsAcceptedForATimeThatIsOverOrIsNotSafeIsPutBack() {
    for (String over :
        List.of(
            ", \"accepted\": true, \"until\": \"2001-03-31\"",
            ", \"accepted\": true, \"safe\": \"no\"")) {
      BenchWork work = work(AsBuiltSample.of(entry("1", "W1", "X1:1", "X1:3", over), List.of()));
      assertThat(work.left()).isEmpty();
      assertThat(work.rework().steps())
          .extracting(step -> step.text())
          .anyMatch(text -> text.startsWith("X1:1: insert W1"));
    }
  }

  @Test
  void allAcceptedLeavesNothingToPutBack() {
    Report report =
        AsBuiltSample.of(entry("1", "W1", "X1:1", "X1:3", ", \"accepted\": true"), List.of());
    assertThat(work(report).rework().steps()).isEmpty();
    assertThat(page(report).select("#r1-rework").text())
        .contains("There is nothing to put back on the bench.", "W1 was built into X1:3");
  }

  @Test
  void whatIsAcceptedInTheWayOfThePlanIsNamed() {
    Report report =
        AsBuiltSample.of(
            entry("1", "W1", "X1:1", "X1:2", ", \"accepted\": true")
                + ", "
                + entry("2", "W2", "X1:2", "X1:1", ""),
            List.of());
    assertThat(work(report).rework().open()).anyMatch(text -> text.contains("X1:2"));
    assertThat(work(report).rework().steps())
        .extracting(step -> step.text())
        .noneMatch(text -> text.startsWith("X1:2: insert"));
  }

  @Test
  void whatDoesNotFitThePlanLetsNothingPass() {
    String unknown =
        "\"1\": {\"kind\": \"left-out\", \"at\": \"wires/W9\", \"reason\": \"seen at the bench\"}";
    Report report = AsBuiltSample.of(unknown, List.of());
    assertThat(report.outcome()).isEqualTo(Report.Outcome.CANNOT_CHECK);
    assertThat(VerdictSentence.of(report))
        .isEqualTo("cannot check: 1 thing told of the loom as built does not fit the plan");
    assertThat(page(report).select("#r1-built").text())
        .contains("What does not fit the plan", "W9", "No deviation from the plan is told.");
    assertThat(page(report).select(".verdict").text()).contains("Not checked");
    assertThat(Written.by(new CompareMarkdown(), report))
        .startsWith("## Tugtest – cannot check: 1 thing")
        .contains("#### What does not fit the plan\n\n");
    assertThat(built(report).get("refused").size()).isEqualTo(1);
  }

  @Test
  void aLoomBuiltAsPlannedPasses() {
    Report report = AsBuiltSample.of("", List.of("X1:6,X2:6,0.04,yes,"));
    assertThat(report.outcome()).isEqualTo(Report.Outcome.CLEAN);
    assertThat(page(report).select("#r1-built").text())
        .contains("No deviation from the plan is told.")
        .contains("The one reading shows what is expected of the plan.");
    assertThat(Written.by(new CompareMarkdown(), report)).contains("1 reading, all as expected.");
  }

  private static JsonNode built(Report report) {
    return Schemas.tree(Written.by(new CompareReport(), report))
        .get("harnesses")
        .get(0)
        .get("asBuilt");
  }

  private static Document page(Report report) {
    return Jsoup.parse(Written.by(new CompareHtml(), report));
  }
}
