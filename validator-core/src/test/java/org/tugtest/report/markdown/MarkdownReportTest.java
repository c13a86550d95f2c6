package org.tugtest.report.markdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.report.Golden;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.report.Written;
import org.tugtest.rule.Coverage;
import org.tugtest.text.Place;

class MarkdownReportTest {
  private static final int LIMIT = 60_000;

  @Test
  void theSample() {
    Golden.holds("sample.report.md", written(Sample.report()));
  }

  @Test
  void aCleanReportIsShort() {
    assertThat(written(Reports.of(root("car.harness.json"))))
        .startsWith(
            """
            ## Tugtest – passes: car.harness.json

            0 errors, 0 warnings, 0 notes, 0 waived; 0 rules run on 1 file of 1 root; `0123456`, \
            as of 2026-11-25 (date of the commit)

            <sub>""");
  }

  @Test
  void aRuleThatBrokeComesFirst() {
    assertThat(written(Sample.broken()))
        .contains(
            "\n### Rules that broke\n\nFaults of Tugtest or of a rule added to it, not of the"
                + " harness.\n\n- `sample-broken` on `car.harness.json`: IllegalStateException: lost"
                + " &lt;its&gt; way\\\\u000ain car.harness.json\n");
  }

  @Test
  void theGravestFindingsComeFirst() {
    String page =
        written(
            Reports.of(
                root(
                    "car.harness.json",
                    standing(finding(Level.NOTE, "W1", 1, null)),
                    standing(finding(Level.ERROR, "W2", 2, null)))));
    assertThat(page.indexOf("wire W2 is bad")).isPositive().isLessThan(page.indexOf("wire W1"));
  }

  @Test
  void manyFindingsAreCutAndCounted() {
    List<CheckedFinding> findings = new ArrayList<>();
    for (int i = 1; i <= 3_000; i++) {
      findings.add(standing(finding(i % 3 == 0 ? Level.ERROR : Level.NOTE, "W" + i, i, null)));
    }
    String page =
        written(Reports.of(root("car.harness.json", findings.toArray(CheckedFinding[]::new))));
    int shown = page.split("\n- \\*\\*error\\*\\* ", -1).length - 1;
    int rest = 3_000 - shown;
    assertThat(shown).isGreaterThan(200).isLessThan(1_000);
    assertThat(page)
        .contains(
            "- **" + rest + " more** (" + (1_000 - shown) + " errors, 2000 notes) do not fit");
    assertThat(bytes(page)).isLessThan(LIMIT);
  }

  @Test
  void nothingMakesItTooLong() {
    for (String hostile : List.of("<", "🔋", "@a", "`", "\n", "\ud83d", "日")) {
      String page = written(flooded(hostile.repeat(2_000)));
      assertThat(bytes(page)).as(hostile).isLessThan(LIMIT);
      assertThat(page).contains("do not fit here").contains("### Not judged").endsWith("</sub>\n");
      assertThat(page).contains("### Waived").contains("### Rules not run");
    }
  }

  /** A report that has hundreds of everything, all of it as long as {@code text}. */
  private static Report flooded(String text) {
    List<HarnessReport> roots = new ArrayList<>();
    for (int r = 0; r < 30; r++) {
      String root = r + text + ".harness.json";
      List<CheckedFinding> findings = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        findings.add(standing(finding(Level.ERROR, "W" + r + "-" + i, i + 1, null, text + r + i)));
        findings.add(waived(finding(Level.NOTE, "N" + r + "-" + i, i + 1, null, text + r + i)));
      }
      List<Coverage> coverage =
          IntStream.range(0, 40)
              .mapToObj(
                  i -> new Coverage(text + i, text, 0, Map.of(text, List.of(Subject.wire("W")))))
              .toList();
      CheckResult result =
          new CheckResult(
              root,
              findings,
              coverage,
              IntStream.range(0, 40).mapToObj(i -> new NotRun(text + i, text)).toList(),
              List.of(new Crash(text, text, List.of(text))),
              List.of(
                  new Verdict(
                      text,
                      Verdict.Answer.FAILS,
                      text,
                      List.of(Place.point("car.harness.json", 1, 1, "")))));
      roots.add(new HarnessReport(Reports.facts("car.harness.json", "{\"format\": 1}"), result));
    }
    return Reports.of(roots.toArray(HarnessReport[]::new));
  }

  private static int bytes(String page) {
    return page.getBytes(StandardCharsets.UTF_8).length;
  }

  private static String written(Report report) {
    return Written.by(new MarkdownReport(), report);
  }
}
