package org.tugtest.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;

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
      case CANNOT_CHECK -> "cannot check: " + String.join(", ", failures(report));
      case FINDINGS -> blocked(report);
      case CLEAN -> "passes: " + named(report.harnesses());
    };
  }

  /** The verdict over one root, without a full stop. */
  public static String of(Report report, HarnessReport harness) {
    if (report.failed(harness)) {
      return "cannot check";
    }
    return report.blocked(harness) ? "blocked by " + why(report, List.of(harness)) : "passes";
  }

  private static Set<String> failures(Report report) {
    Set<String> failures = new LinkedHashSet<>();
    for (HarnessReport harness : report.harnesses()) {
      harness.result().crashes().forEach(crash -> failures.add("rule " + crash.rule() + " broke"));
    }
    int refused =
        report.harnesses().stream()
            .map(HarnessReport::built)
            .filter(Objects::nonNull)
            .mapToInt(built -> built.refused().size())
            .sum();
    if (refused > 0) {
      failures.add(
          Tally.counted(refused, "thing")
              + " told of the loom as built "
              + (refused == 1 ? "does" : "do")
              + " not fit the plan");
    }
    report.harnesses().stream()
        .filter(harness -> report.failed(harness) && harness.holdsNothing())
        .forEach(
            harness ->
                failures.add(
                    "there is nothing to check in "
                        + report.path(harness.root())
                        + ", which holds no wire, no device and no connector"));
    return failures;
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
    Gate gate = report.gate();
    List<String> why = new ArrayList<>();
    List<Finding> findings =
        blocked.stream()
            .flatMap(
                harness ->
                    harness.result().findings().stream()
                        .filter(checked -> gate.blocks(harness, checked)))
            .map(CheckedFinding::finding)
            .distinct()
            .toList();
    if (!findings.isEmpty()) {
      boolean aged = blocked.stream().allMatch(harness -> harness.baseline() != null);
      why.add(Tally.levels(findings, gate.onlyNew() && aged ? "new " : ""));
    }
    int circuits = blocked.stream().mapToInt(harness -> unannounced(gate, harness)).sum();
    if (circuits > 0) {
      why.add(Tally.counted(circuits, "change") + " of circuits that changes/ does not announce");
    }
    long thin =
        blocked.stream()
            .flatMap(harness -> harness.result().coverage().stream())
            .filter(gate::blocks)
            .map(coverage -> coverage.rule())
            .distinct()
            .count();
    if (thin > 0) {
      why.add(
          Tally.counted(Math.toIntExact(thin), "rule")
              + " under the least coverage of "
              + gate.coverageMin()
              + " %");
    }
    return String.join(" and ", why);
  }

  private static int unannounced(Gate gate, HarnessReport harness) {
    Baseline baseline = harness.baseline();
    return baseline != null && gate.blocksCircuits(harness) ? baseline.unannounced().size() : 0;
  }

  private static String named(List<HarnessReport> harnesses) {
    String first =
        harnesses.stream().limit(NAMED).map(HarnessReport::root).collect(Collectors.joining(", "));
    int more = harnesses.size() - NAMED;
    return more > 0 ? first + " and " + more + " more" : first;
  }
}
