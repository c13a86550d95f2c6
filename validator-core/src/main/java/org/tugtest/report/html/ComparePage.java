package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.bench.rework.Matching;
import org.tugtest.bench.rework.Order;
import org.tugtest.bench.rework.Rework;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.Group;
import org.tugtest.compare.consequence.Consequences;
import org.tugtest.finding.Finding;
import org.tugtest.report.Baseline;
import org.tugtest.report.ChangeSummary;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.VerdictSentence;

/**
 * The page of one root compared with its base.
 *
 * @param compared what there is to say of the change; null when there is no base
 */
record ComparePage(
    Frame frame,
    Ended ended,
    String verdict,
    String against,
    List<Fresh> fresh,
    int known,
    @Nullable Told compared) {

  /** A new finding with its place and what causes it. */
  record Fresh(Finding finding, String at, List<String> causes) {}

  /** What there is to say of a change. */
  record Told(
      String summary,
      Baseline baseline,
      Map<Group, List<Change>> groups,
      List<ChangedFaces> faces,
      List<Consequences> moved,
      List<Finding> resolved,
      Rework rework) {}

  static ComparePage of(Report report, HarnessReport harness, Frame frame) {
    Baseline baseline = harness.baseline();
    List<Fresh> fresh = new ArrayList<>();
    for (CheckedFinding checked : harness.result().standing()) {
      if (harness.age(checked) == Age.NEW) {
        fresh.add(fresh(report, baseline, checked.finding()));
      }
    }
    fresh.sort(Comparator.comparing(one -> one.finding().level()));
    boolean present = baseline != null && baseline.present();
    return new ComparePage(
        frame,
        Ended.of(report, harness),
        VerdictSentence.of(report, harness),
        baseline == null ? "Held against nothing." : "Held against " + baseline.label() + ".",
        List.copyOf(fresh),
        harness.result().standing().size() - fresh.size(),
        present ? told(java.util.Objects.requireNonNull(baseline)) : null);
  }

  private static Fresh fresh(Report report, @Nullable Baseline baseline, Finding finding) {
    List<String> causes =
        baseline == null
            ? List.of()
            : baseline
                .causeOf(finding)
                .map(cause -> cause.changes().stream().map(Change::sentence).toList())
                .orElse(List.of());
    return new Fresh(finding, report.shown(finding.at().get(0)), causes);
  }

  private static Told told(Baseline baseline) {
    Comparison comparison = baseline.comparison();
    return new Told(
        ChangeSummary.of(comparison),
        baseline,
        comparison.changesByGroup(),
        ChangedFaces.of(comparison),
        Consequences.of(comparison),
        comparison.findings().resolved(),
        Rework.of(
            comparison.before().facts(),
            comparison.after().facts(),
            Matching.of(comparison.matches()),
            Order.BY_CONNECTOR));
  }
}
