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
    assertThat(lines).hasSize(steps.size() + 1);
    String page = sink.text("rework.html");
    int at = 0;
    for (int i = 0; i < steps.size(); i++) {
      assertThat(lines.get(i + 1)).contains("," + (i + 1) + ",").contains(steps.get(i).at());
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
  void warnsOfALoopThatMayBeAnInterlock() throws IOException {
    String wires = "\"wires\": {";
    String looped =
        ComparedSample.before()
            .replace(
                wires, wires + "\"P9\": {\"from\": \"X1:4\", \"to\": \"X1:6\", \"part\": \"w1\"},");
    String page = written(ComparedSample.of(looped, ComparedSample.before())).text("rework.html");
    assertThat(page).contains("May be an interlock").contains("P9 joins");
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
