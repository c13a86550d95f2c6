package org.tugtest.report.annotations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Level;
import org.tugtest.report.Golden;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;

class GithubAnnotationsTest {
  @Test
  void theSample() {
    Golden.holds("sample.github.txt", String.join("\n", lines(Sample.report())) + "\n");
  }

  @Test
  void everyLineIsOneCommand() {
    assertThat(lines(Sample.report()))
        .isNotEmpty()
        .allSatisfy(
            line ->
                assertThat(line)
                    .startsWith("::")
                    .doesNotContainPattern("\\p{Cc}")
                    .matches("::(error|warning|notice) [^:]*::.*"));
  }

  @Test
  void aCleanReportSaysNothing() {
    assertThat(lines(Reports.of(root("a")))).isEmpty();
  }

  @Test
  void tenAreAllShown() {
    assertThat(lines(Reports.of(root("car.harness.json", notes(10))))).hasSize(10);
  }

  @Test
  void ofElevenTheGravestTenAreShownAndTheRestIsCounted() {
    CheckedFinding[] findings =
        Stream.concat(
                Stream.of(notes(10)), Stream.of(standing(finding(Level.ERROR, "E", 99, null))))
            .toArray(CheckedFinding[]::new);
    List<String> lines = lines(Reports.of(root("car.harness.json", findings)));
    assertThat(lines).hasSize(11);
    assertThat(lines.get(0))
        .isEqualTo(
            "::error file=src/main/harness/car.harness.json,line=99,endLine=99,col=5,endColumn=20"
                + ",title=made-up::wire E is bad%0Amend E");
    assertThat(lines.get(10))
        .isEqualTo(
            "::notice title=tugtest::1 more in the report; only the gravest 10 are shown here");
  }

  private static CheckedFinding[] notes(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> standing(finding(Level.NOTE, "N" + i, i, null)))
        .toArray(CheckedFinding[]::new);
  }

  private static List<String> lines(Report report) {
    return GithubAnnotations.lines(report);
  }
}
