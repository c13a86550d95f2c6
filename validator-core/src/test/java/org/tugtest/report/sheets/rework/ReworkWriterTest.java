package org.tugtest.report.sheets.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.bench.rework.Rework;
import org.tugtest.bench.rework.Step;
import org.tugtest.report.ComparedSample;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;

class ReworkWriterTest {
  private static MemorySink written(Report report) throws IOException {
    MemorySink sink = new MemorySink();
    new ReworkWriter().write(report, sink);
    return sink;
  }

  private static Rework rework(Report report) {
    return report.harnesses().get(0).baseline().work().rework();
  }

  @Test
  void eachStepIsALineOfThePageAndOfTheTableInItsOrder() throws IOException {
    Report report = ComparedSample.report();
    MemorySink sink = written(report);
    assertThat(sink.paths()).contains("rework.html", "rework.csv");
    List<Step> steps = rework(report).steps();
    assertThat(steps).isNotEmpty();
    List<String> lines = sink.text("rework.csv").lines().toList();
    assertThat(lines.get(0)).isEqualTo("sitting,step,kind,at,do,wires,from,to,part,mark,look_out");
    int besides = rework(report).besides().size();
    assertThat(lines).hasSize(1 + besides + steps.size());
    String page = sink.text("rework.html");
    int at = 0;
    for (int i = 0; i < steps.size(); i++) {
      assertThat(lines.get(1 + besides + i))
          .contains("," + (i + 1) + ",")
          .contains(steps.get(i).at());
      int next = page.indexOf(steps.get(i).text().replace("\"", "&#34;"), at);
      assertThat(next).as(steps.get(i).text()).isGreaterThan(at);
      at = next;
    }
    Files.createDirectories(Path.of("target", "rework-pictures"));
    Files.writeString(Path.of("target", "rework-pictures", "rework.html"), page);
  }

  @Test
  void aSittingBeginsWithAPlugThatIsOpenedAndEndsWhenAllAreClosed() {
    Rework rework = rework(ComparedSample.report());
    List<Step> all = new ArrayList<>();
    for (Sitting sitting : Sitting.of(rework)) {
      assertThat(sitting.first()).isEqualTo(all.size() + 1);
      all.addAll(sitting.steps());
      if (!sitting.connectors().isEmpty()) {
        long opened = count(sitting, Step.Kind.OPEN) + count(sitting, Step.Kind.FIT);
        long closed = count(sitting, Step.Kind.CLOSE) + count(sitting, Step.Kind.TAKE_AWAY);
        assertThat(opened).isEqualTo(closed).isPositive();
      }
    }
    assertThat(all).isEqualTo(rework.steps());
  }

  private static long count(Sitting sitting, Step.Kind kind) {
    return sitting.steps().stream().filter(step -> step.kind() == kind).count();
  }

  @Test
  void marksWhatIsUsedAgainAndWhatIsNew() throws IOException {
    String swapped =
        ComparedSample.before()
            .replace("\"S1\", \"to\": \"X1:1\"", "\"S1\", \"to\": \"X1:9\"")
            .replace("\"S1\", \"to\": \"X1:3\"", "\"S1\", \"to\": \"X1:1\"")
            .replace("X1:9", "X1:3");
    String csv = written(ComparedSample.of(ComparedSample.before(), swapped)).text("rework.csv");
    assertThat(csv)
        .contains("X1:1: insert W5")
        .contains(",used again,")
        .doesNotContain("new terminal");
    String page = written(ComparedSample.of(ComparedSample.before(), swapped)).text("rework.html");
    assertThat(page)
        .contains(
            "Connector faces before and after", "Before, wire side", "After, mating side, mirrored")
        .contains("<b class=\"now\">changed</b>")
        .contains("Sitting 1: X1", "Twice in its life at most (common practice)")
        .contains("Measure again");
  }

  @Test
  void whatIsDoneBesidesTheTerminalsIsTickedOnThePageAndALineOfTheTable() throws IOException {
    String before = fused("f5", "s-1");
    String after = fused("f7.5", "s-2");
    MemorySink sink = written(ComparedSample.of(before, after));
    List<String> besides = rework(ComparedSample.of(before, after)).besides();
    assertThat(besides)
        .containsExactly(
            "FB.f1: take out fuse f5 (5 A), put in fuse f7.5 (7.5 A)",
            "segment t1: take s-1 off, put s-2 on");
    assertThat(sink.text("rework.csv").lines().skip(1))
        .containsExactly(
            "\"\",,beside,,\"FB.f1: take out fuse f5 (5 A), put in fuse f7.5 (7.5 A)\",,,,,,",
            "\"\",,beside,,\"segment t1: take s-1 off, put s-2 on\",,,,,,");
    String page = sink.text("rework.html");
    assertThat(page).contains("Besides the terminals", "what is to be done stands above");
    for (String line : besides) {
      assertThat(page)
          .containsOnlyOnce("<td class=\"tick\"><span></span></td><th scope=\"row\">" + line);
    }
  }

  /** A loom with a fuse and a covering. */
  private static String fused(String fuse, String covering) {
    return """
    {"format": 1, "sketch": true,
     "parts": {
      "fuses": {"f5": {"ratingA": 5}, "f7.5": {"ratingA": 7.5}},
      "coverings": {"s-1": {"kind": "tape"}, "s-2": {"kind": "tape"}}},
     "devices": {"FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "out"}}}},
     "fitted": {"FB.f1": "%s"},
     "layout": {"nodes": {"a": {}, "b": {}},
      "segments": {"t1": {"from": "a", "to": "b", "lengthMm": 500, "coverings": ["%s"]}}}}
    """
        .formatted(fuse, covering);
  }

  @Test
  void warnsOfALoopThatMayBeAnInterlock() throws IOException {
    String wires = "\"wires\": {";
    String looped =
        ComparedSample.before()
            .replace(
                wires, wires + "\"P9\": {\"from\": \"X1:4\", \"to\": \"X1:6\", \"part\": \"w1\"},");
    MemorySink sink = written(ComparedSample.of(looped, ComparedSample.before()));
    assertThat(sink.text("rework.html"))
        .contains("May be an interlock")
        .containsOnlyOnce("P9 joins");
    assertThat(sink.text("rework.csv").lines())
        .anyMatch(
            line ->
                line.startsWith("\"\",,caution,,P9 joins LAMPS:4 and LAMPS:6 and nothing else."));
  }

  @Test
  void saysWhichWireDoesNotReachAnyMore() throws IOException {
    String longer =
        ComparedSample.before()
            .replace(
                "\"X1:3\", \"part\": \"w1\", \"cutMm\": 400",
                "\"X1:4\", \"part\": \"w1\", \"cutMm\": 900");
    String page = written(ComparedSample.of(ComparedSample.before(), longer)).text("rework.html");
    assertThat(page).contains("Does not reach any more").contains("W5 does not reach: 400 mm left");
  }

  @Test
  void withoutAChangeThereIsNothingToDo() throws IOException {
    MemorySink sink = written(ComparedSample.of(ComparedSample.before(), ComparedSample.before()));
    assertThat(sink.text("rework.html")).contains("There is nothing to do on the bench.");
    assertThat(sink.text("rework.csv").lines()).hasSize(1);
  }

  @Test
  void withoutABaseThereIsNoSheet() throws IOException {
    assertThat(written(ComparedSample.first()).paths()).isEmpty();
  }

  @Test
  void leadsNowhereAndLoadsNothing() throws IOException {
    String page = written(ComparedSample.report()).text("rework.html");
    assertThat(page)
        .doesNotContain("<a href")
        .doesNotContain("<script")
        .doesNotContain("http:", "https:");
  }

  @Test
  void escapesWhatFilesSay() throws IOException {
    String odd =
        ComparedSample.after()
            .replace(
                "\"colour\": \"RD/WH\"", "\"colour\": \"RD/WH\", \"label\": \"<img src=x>🏁\"");
    String page = written(ComparedSample.of(ComparedSample.before(), odd)).text("rework.html");
    assertThat(page).doesNotContain("<img").contains("&lt;img src=x&gt;🏁");
  }
}
