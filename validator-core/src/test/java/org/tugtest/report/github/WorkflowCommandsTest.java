package org.tugtest.report.github;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Golden;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.text.Place;

class WorkflowCommandsTest {
  @Test
  void theSample() {
    Golden.holds(
        "sample.github.txt", String.join("\n", WorkflowCommands.lines(Sample.report())) + "\n");
  }

  @Test
  void aWaivedFindingIsNotTold() {
    Report report = report(waived(finding(Level.ERROR, "W1", 3, null)));

    assertThat(WorkflowCommands.lines(report)).isEmpty();
  }

  @Test
  void theGravestComesFirst() {
    Report report =
        report(
            standing(finding(Level.NOTE, "W1", 1, null)),
            standing(finding(Level.WARNING, "W2", 2, null)),
            standing(finding(Level.ERROR, "W3", 3, null)));

    assertThat(WorkflowCommands.lines(report))
        .containsExactly(
            "::error file=src/main/harness/car.harness.json,line=3,col=5,endColumn=20,"
                + "title=made-up::wire W3 is bad%0Amend W3",
            "::warning file=src/main/harness/car.harness.json,line=2,col=5,endColumn=20,"
                + "title=made-up::wire W2 is bad%0Amend W2",
            "::notice file=src/main/harness/car.harness.json,line=1,col=5,endColumn=20,"
                + "title=made-up::wire W1 is bad%0Amend W1");
  }

  @ParameterizedTest
  @CsvSource({"9, 9, ''", "10, 10, ''", "11, 10, 2", "40, 10, 31"})
  void atMostTenOfALevelAndTheLastTellsOfTheRest(int findings, int lines, String more) {
    CheckedFinding[] all =
        IntStream.rangeClosed(1, findings)
            .mapToObj(line -> standing(finding(Level.ERROR, "W" + line, line, null)))
            .toArray(CheckedFinding[]::new);

    List<String> told = WorkflowCommands.lines(report(all));

    assertThat(told).hasSize(lines);
    assertThat(told.get(lines - 1))
        .matches(
            more.isEmpty()
                ? "::error file=.*wire W" + findings + " is bad.*"
                : "::error::" + more + " more errors; the report has all of them");
  }

  @Test
  void whatAFileSaysCannotBeginACommandOfItsOwn() {
    Finding sly =
        finding(Level.ERROR, "W1", 1, null, "100 % wrong\r\n::error file=x,line=1::forged");
    Finding placed =
        new Finding(
            sly.rule(),
            sly.level(),
            sly.kind(),
            sly.subjects(),
            sly.message(),
            "",
            null,
            sly.basis(),
            null,
            null,
            List.of(),
            List.of(new Place("a,b:100%.json", 1, 5, 4, 2, "")));

    assertThat(WorkflowCommands.lines(report(standing(placed))))
        .containsExactly(
            "::error file=src/main/harness/a%2Cb%3A100%25.json,line=1,endLine=4,title=made-up::"
                + "100 %25 wrong\\u000d\\u000a::error file=x,line=1::forged");
  }

  @Test
  void aFaultInASharedFileIsToldOnce() {
    CheckedFinding shared = standing(finding(Level.ERROR, "W1", 1, null));
    Report report =
        Reports.of(
            Stream.of("a.harness.json", "b.harness.json")
                .map(path -> root(path, shared))
                .toArray(HarnessReport[]::new));

    assertThat(WorkflowCommands.lines(report)).hasSize(1);
  }

  private static Report report(CheckedFinding... findings) {
    return Reports.of(root("car.harness.json", findings));
  }
}
