package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.change.Change;
import org.tugtest.finding.Finding;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.VerdictSentence;

/**
 * The page of one root compared with its base.
 *
 * @param alone whether the file tells of no other root
 * @param number of the root in the file, from 1
 * @param verdict what blocks; empty when nothing does
 * @param compared what there is to say of the change; null when there is no base
 * @param built what is told of it as built; null when it is the plan that is judged
 */
record ComparePage(
    boolean alone,
    int number,
    String title,
    Ended ended,
    String verdict,
    String against,
    FirstOf<Fresh> fresh,
    int known,
    @Nullable Told compared,
    @Nullable AsBuiltRoom built) {

  /** A new finding with its place and what causes it. */
  record Fresh(Finding finding, String at, List<String> causes) {}

  static ComparePage of(Report report, HarnessReport harness, int number, PageShare share) {
    Baseline baseline = harness.baseline();
    List<CheckedFinding> fresh =
        harness.result().standing().stream()
            .filter(checked -> harness.age(checked) == Age.NEW)
            .sorted(Comparator.comparing(checked -> checked.finding().level()))
            .toList();
    FirstOf<CheckedFinding> first = FirstOf.of(fresh, share.entries());
    List<Fresh> shown = new ArrayList<>();
    first.shown().forEach(one -> shown.add(fresh(report, baseline, one.finding())));
    AsBuiltReport built = harness.built();
    return new ComparePage(
        report.harnesses().size() == 1,
        number,
        harness.title(),
        Ended.of(report, harness),
        report.passes(harness) ? "" : capital(VerdictSentence.of(report, harness)) + ".",
        baseline == null ? "Held against nothing." : "Held against " + baseline.label() + ".",
        new FirstOf<>(shown, first.more()),
        harness.result().standing().size() - fresh.size(),
        baseline != null && baseline.present() ? Told.of(report.gate(), baseline, share) : null,
        built == null ? null : AsBuiltRoom.of(report, harness, built, share));
  }

  private static Fresh fresh(Report report, @Nullable Baseline baseline, Finding finding) {
    List<String> causes =
        baseline == null
            ? List.of()
            : baseline
                .causeOf(finding)
                .map(cause -> cause.changes().stream().map(Change::sentence).toList())
                .orElse(List.of());
    return new Fresh(finding, report.shown(finding.at().get(0)), FirstOf.of(causes, 6).shown());
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  /** A sentence, cut where it would fill the page. */
  static String said(String sentence) {
    return PrintableText.cut(sentence, PageShare.sentence());
  }
}
