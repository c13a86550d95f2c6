package org.tugtest.report.html;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tugtest.finding.Level;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.rule.Coverage;

/** The list of several roots; also the page when there is none. */
record IndexPage(Frame frame, List<Row> rows) {

  /**
   * One root.
   *
   * @param page file name of its page
   */
  record Row(
      String root,
      String title,
      String page,
      Ended ended,
      int errors,
      int warnings,
      int notes,
      int waived,
      int judged,
      int subjects) {}

  static IndexPage of(Report report, Map<String, String> pages, Frame frame) {
    return new IndexPage(
        frame, report.harnesses().stream().map(harness -> row(report, harness, pages)).toList());
  }

  private static Row row(Report report, HarnessReport harness, Map<String, String> pages) {
    Map<Level, Integer> counts = harness.result().counts();
    List<Coverage> coverage = harness.result().coverage();
    return new Row(
        report.path(harness.root()),
        Objects.requireNonNullElse(harness.facts().harness().title(), ""),
        pages.getOrDefault(harness.root(), ""),
        Ended.of(report, harness),
        counts.getOrDefault(Level.ERROR, 0),
        counts.getOrDefault(Level.WARNING, 0),
        counts.getOrDefault(Level.NOTE, 0),
        harness.result().findings().size() - harness.result().standing().size(),
        coverage.stream().mapToInt(Coverage::judged).sum(),
        coverage.stream().mapToInt(Coverage::subjects).sum());
  }
}
