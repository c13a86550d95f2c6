package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.finding.Level;
import org.tugtest.git.Environment;
import org.tugtest.report.Gate;
import org.tugtest.report.Report;
import org.tugtest.report.Revision;

class CiNoticeTest {
  private static final Report REPORT =
      new Report(
          "1.2.3",
          "",
          new Revision(null, false, LocalDate.of(2026, 11, 28), "tugtest.today"),
          new Gate(Level.ERROR, 0),
          List.of(),
          List.of());

  @TempDir Path folder;

  private static SaidLog tell(CiSystem ci, Path summary) {
    SaidLog log = new SaidLog();
    Environment environment = new Environment(Map.of("GITHUB_STEP_SUMMARY", summary.toString()));
    new CiNotice(ci, environment, new ArrayList<String>()::add, log)
        .tell(REPORT, ReportFiles.summary());
    return log;
  }

  @Test
  void theSummaryOfAStepIsAddedTo() throws IOException {
    Path summary = Files.writeString(folder.resolve("summary.md"), "before\n");
    assertThat(tell(CiSystem.GITHUB, summary).lines()).isEmpty();
    assertThat(Files.readString(summary)).startsWith("before\n").contains("there is no harness");
  }

  @Test
  void othersGetNone() throws IOException {
    Path summary = Files.writeString(folder.resolve("summary.md"), "before\n");
    tell(CiSystem.NONE, summary);
    tell(CiSystem.GITLAB, summary);
    assertThat(summary).hasContent("before\n");
  }

  @Test
  void aSummaryThatCannotBeWrittenIsAWarning() {
    assertThat(tell(CiSystem.GITHUB, folder.resolve("none/summary.md")).warnings())
        .singleElement()
        .asString()
        .startsWith("the summary of the step cannot be written: ");
  }
}
