package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Age;
import org.tugtest.compare.change.Change;
import org.tugtest.finding.Finding;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.Baseline;
import org.tugtest.report.FindingGroup;
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
 * @param fresh the new findings that follow from no other new one
 * @param news how many new findings there are in all
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
    int news,
    int known,
    @Nullable Told compared,
    @Nullable AsBuiltRoom built) {

  /** So many that follow from a new finding are named with it. */
  private static final int MOST_FOLLOWING = 12;

  /** A new finding with its place, what causes it, and the new ones that follow from it. */
  record Fresh(
      Finding finding, String at, List<String> causes, FirstOf<Finding> follow, String followers) {}

  static ComparePage of(Report report, HarnessReport harness, int number, PageShare share) {
    Baseline baseline = harness.baseline();
    long news =
        harness.result().standing().stream()
            .filter(checked -> harness.age(checked) == Age.NEW)
            .count();
    List<FindingGroup> fresh =
        new ArrayList<>(
            FindingGroup.standing(List.of(harness), (its, checked) -> its.age(checked) == Age.NEW));
    fresh.sort(Comparator.comparing(group -> group.finding().level()));
    FirstOf<FindingGroup> first = FirstOf.of(fresh, share.entries());
    List<Fresh> shown = new ArrayList<>();
    first.shown().forEach(one -> shown.add(fresh(report, baseline, one)));
    AsBuiltReport built = harness.built();
    return new ComparePage(
        report.harnesses().size() == 1,
        number,
        harness.title(),
        Ended.of(report, harness),
        report.passes(harness) ? "" : capital(VerdictSentence.of(report, harness)) + ".",
        baseline == null ? "Held against nothing." : "Held against " + baseline.label() + ".",
        new FirstOf<>(shown, first.more()),
        (int) news,
        harness.result().standing().size() - (int) news,
        baseline != null && baseline.present() ? Told.of(report.gate(), baseline, share) : null,
        built == null ? null : AsBuiltRoom.of(report, harness, built, share));
  }

  private static Fresh fresh(Report report, @Nullable Baseline baseline, FindingGroup group) {
    Finding finding = group.finding();
    List<String> causes =
        baseline == null
            ? List.of()
            : baseline
                .causeOf(finding)
                .map(cause -> cause.changes().stream().map(Change::sentence).toList())
                .orElse(List.of());
    return new Fresh(
        finding,
        report.shown(finding.at().get(0)),
        FirstOf.of(causes, 6).shown(),
        FirstOf.of(group.follow(), MOST_FOLLOWING),
        group.followers());
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  /** A sentence, cut where it would fill the page. */
  static String said(String sentence) {
    return PrintableText.cut(sentence, PageShare.sentence());
  }
}
