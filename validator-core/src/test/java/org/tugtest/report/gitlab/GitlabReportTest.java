package org.tugtest.report.gitlab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Golden;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.report.Schemas;
import org.tugtest.report.Written;
import tools.jackson.databind.JsonNode;

class GitlabReportTest {
  private final Finding first = finding(Level.ERROR, "W1", 1, null);
  private final Finding again = finding(Level.WARNING, "W1", 2, null, "another sentence");

  @Test
  void theSample() {
    Golden.holds("sample.report.gitlab.json", written(Sample.report()));
  }

  @Test
  void aCleanReportIsAnEmptyList() {
    assertThat(written(Reports.of(root("a")))).isEqualTo("[]\n");
    assertThat(written(Reports.of(root("a", waived(first))))).isEqualTo("[]\n");
  }

  @Test
  void noTwoEntriesHaveOneFingerprint() {
    List<String> prints =
        prints(
            Reports.of(
                root("a", standing(first), standing(again)),
                root("b", standing(first), standing(finding(Level.ERROR, "W1", 9, null)))));
    assertThat(prints).hasSize(3).doesNotHaveDuplicates();
  }

  @Test
  void everyEntryHasWhatTheFormatNeeds() {
    for (JsonNode entry : Schemas.tree(written(Sample.report()))) {
      assertThat(entry.get("description").stringValue()).isNotEmpty();
      assertThat(entry.get("check_name").stringValue()).isNotEmpty();
      assertThat(entry.get("severity").stringValue()).isIn("info", "major", "critical");
      assertThat(entry.at("/location/path").stringValue()).startsWith("src/main/harness/");
      assertThat(entry.at("/location/lines/begin").intValue()).isPositive();
    }
    assertThat(prints(Sample.report())).isNotEmpty().doesNotHaveDuplicates();
  }

  private static List<String> prints(Report report) {
    return Schemas.tree(written(report))
        .valueStream()
        .map(entry -> entry.get("fingerprint").stringValue())
        .toList();
  }

  private static String written(Report report) {
    return Written.by(new GitlabReport(), report);
  }
}
