package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tugtest.check.CheckResult;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Level;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.MissingData;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.report.VerdictSentence;
import org.tugtest.report.html.text.Few;
import org.tugtest.rule.Coverage;

/**
 * How the check of a root ended and why.
 *
 * @param ended sign and word
 * @param why sentences
 * @param counts standing findings by level, the gravest first
 * @param waived findings that a waiver covers
 * @param wants rules that could not judge all, the worst first
 * @param moreWants rules left out of {@code wants}
 * @param expectations expectations that were not judged
 * @param next what to write next, with the rules that wait for it; nothing while a file cannot be
 *     read, as it may be written there
 * @param mend the files that could not be read; empty when there are none
 */
record VerdictRoom(
    Ended ended,
    List<String> why,
    List<Count> counts,
    int waived,
    List<Want> wants,
    int moreWants,
    int expectations,
    List<MissingData> next,
    String mend) {
  private static final int MOST_WANTS = 6;
  private static final int MOST_LISTED = 8;
  private static final int MOST_NEXT = 3;

  /** How many findings of a level stand. */
  record Count(String level, int count) {
    String shown() {
      return Tally.counted(count, level);
    }
  }

  /** A rule that could not judge all. */
  record Want(String rule, int judged, int subjects, String reasons) {}

  static VerdictRoom of(Report report, HarnessReport harness, FindingsRoom findings) {
    CheckResult result = harness.result();
    List<Count> counts = new ArrayList<>();
    for (Level level : Level.values()) {
      counts.add(new Count(level.word(), findings.standing(level)));
    }
    List<Want> wants = wants(result);
    List<String> unread = harness.facts().unread().stream().map(report::path).toList();
    List<MissingData> next = unread.isEmpty() ? MissingData.of(harness, report.rules()) : List.of();
    return new VerdictRoom(
        Ended.of(report, harness),
        why(report, harness),
        List.copyOf(counts),
        findings.waived().count(),
        wants.subList(0, Math.min(MOST_WANTS, wants.size())),
        Math.max(0, wants.size() - MOST_WANTS),
        (int)
            result.expectations().stream()
                .filter(verdict -> verdict.answer() == Verdict.Answer.NOT_JUDGED)
                .count(),
        next.subList(0, Math.min(MOST_NEXT, next.size())),
        listed(unread, ", "));
  }

  private static List<String> why(Report report, HarnessReport harness) {
    CheckResult result = harness.result();
    List<String> why = new ArrayList<>();
    if (!result.crashes().isEmpty()) {
      why.add(
          Tally.counted(result.crashes().size(), "rule")
              + " of Tugtest broke: what it would have found is not known.");
    }
    if (harness.holdsNothing()) {
      why.add("It holds no wire, no device and no connector: there was nothing to check.");
    }
    if (report.blocked(harness)) {
      String sentence = VerdictSentence.of(report, harness);
      why.add(
          (result.crashes().isEmpty() ? capital(sentence) : "There are findings that block")
              + "; findings block from level "
              + report.gate().word()
              + " up.");
    } else if (result.standing().isEmpty()) {
      why.add(
          "The rules that ran found nothing"
              + (result.findings().isEmpty() ? "." : " that is not waived."));
    } else if (report.gate().from() == null) {
      why.add("Findings are shown and never block.");
    } else if (report.gate().onlyNew()) {
      why.add("No new finding reaches level " + report.gate().word() + ", from which they block.");
    } else {
      why.add("No finding reaches level " + report.gate().word() + ", from which they block.");
    }
    if (!harness.facts().unread().isEmpty()) {
      why.add(
          "Nothing could be used of "
              + listed(harness.facts().unread().stream().map(report::path).toList(), ", ")
              + "; what is written there is not known.");
    }
    return List.copyOf(why);
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  private static List<Want> wants(CheckResult result) {
    return result.coverage().stream()
        .filter(coverage -> coverage.notJudged() > 0)
        .sorted(Comparator.comparingInt(Coverage::notJudged).reversed())
        .map(
            coverage ->
                new Want(
                    coverage.rule(), coverage.judged(), coverage.subjects(), reasons(coverage)))
        .toList();
  }

  private static String reasons(Coverage coverage) {
    return listed(
        coverage.missing().entrySet().stream()
            .map(entry -> entry.getValue().size() + ": " + entry.getKey())
            .toList(),
        "; ");
  }

  private static String listed(List<String> things, String between) {
    Few<String> few = Few.of(things, MOST_LISTED);
    return String.join(between, few.shown()) + (few.cut() ? between + few.said() : "");
  }
}
