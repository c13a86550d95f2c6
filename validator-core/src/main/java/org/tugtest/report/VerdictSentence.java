package org.tugtest.report;

import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.check.CheckedFinding;

/** The verdict of a check in one sentence, for the first line of reports for people. */
public final class VerdictSentence {
  private static final int NAMED = 3;

  private VerdictSentence() {}

  /** The verdict over all roots, without a full stop. */
  public static String of(Report report) {
    if (report.harnesses().isEmpty()) {
      return "cannot check: there is no harness";
    }
    return switch (report.outcome()) {
      case CANNOT_CHECK ->
          "cannot check: "
              + report.harnesses().stream()
                  .flatMap(harness -> harness.result().crashes().stream())
                  .map(crash -> "rule " + crash.rule() + " broke")
                  .distinct()
                  .collect(Collectors.joining(", "));
      case FINDINGS -> blocked(report);
      case CLEAN -> "passes: " + named(report.harnesses());
    };
  }

  /** The verdict over one root, without a full stop. */
  public static String of(Report report, HarnessReport harness) {
    if (!harness.result().crashes().isEmpty()) {
      return "cannot check";
    }
    return report.blocked(harness) ? "blocked by " + why(report, List.of(harness)) : "passes";
  }

  private static String blocked(Report report) {
    List<HarnessReport> blocked = report.harnesses().stream().filter(report::blocked).toList();
    String which =
        report.harnesses().size() == 1
            ? named(blocked)
            : blocked.size()
                + " of "
                + report.harnesses().size()
                + " roots ("
                + named(blocked)
                + ")";
    return "blocked: " + which + " by " + why(report, blocked);
  }

  private static String why(Report report, List<HarnessReport> blocked) {
    List<CheckedFinding> findings =
        blocked.stream()
            .flatMap(harness -> harness.result().findings().stream())
            .filter(report.gate()::blocks)
            .toList();
    long thin =
        blocked.stream()
            .flatMap(harness -> harness.result().coverage().stream())
            .filter(report.gate()::blocks)
            .map(coverage -> coverage.rule())
            .distinct()
            .count();
    String levels =
        Tally.levels(findings.stream().map(CheckedFinding::finding).distinct().toList());
    String least =
        Tally.counted(Math.toIntExact(thin), "rule")
            + " under the least coverage of "
            + report.gate().coverageMin()
            + " %";
    if (findings.isEmpty()) {
      return least;
    }
    return thin == 0 ? levels : levels + " and " + least;
  }

  private static String named(List<HarnessReport> harnesses) {
    String first =
        harnesses.stream().limit(NAMED).map(HarnessReport::root).collect(Collectors.joining(", "));
    int more = harnesses.size() - NAMED;
    return more > 0 ? first + " and " + more + " more" : first;
  }
}
