package org.tugtest.report.junit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.report.junit.Case.Result;
import org.tugtest.rule.Coverage;
import org.tugtest.text.Place;

/** The test cases of one root: one for each rule and one for each expectation. */
final class Cases {
  private static final int MOST_SUBJECTS = 20;

  private final Report report;
  private final HarnessReport harness;

  private Cases(Report report, HarnessReport harness) {
    this.report = report;
    this.harness = harness;
  }

  /** All cases of a report, in its order. */
  static List<Case> of(Report report) {
    if (report.harnesses().isEmpty()) {
      String none = "there is no harness to check";
      return List.of(new Case("tugtest", "harness files", Result.BROKEN, none, none, ""));
    }
    List<Case> cases = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      Cases its = new Cases(report, harness);
      its.rules(cases);
      its.circuits(cases);
      harness.result().expectations().forEach(verdict -> cases.add(its.expectation(verdict)));
    }
    return cases;
  }

  /** What came of one rule. */
  private static final class Outcome {
    final List<CheckedFinding> findings = new ArrayList<>();
    @Nullable Coverage coverage;
    @Nullable String notRun;
    @Nullable Crash crash;
  }

  private void rules(List<Case> cases) {
    CheckResult result = harness.result();
    Set<String> ids = new LinkedHashSet<>();
    report.rules().forEach(rule -> ids.add(rule.id()));
    result.findings().forEach(checked -> ids.add(checked.finding().rule()));
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    ids.forEach(id -> outcomes.put(id, new Outcome()));
    for (CheckedFinding checked : result.findings()) {
      of(outcomes, checked.finding().rule()).findings.add(checked);
    }
    for (Coverage coverage : result.coverage()) {
      of(outcomes, coverage.rule()).coverage = coverage;
    }
    for (NotRun rule : result.notRun()) {
      if (rule.expected()) {
        outcomes.remove(rule.rule());
      } else {
        of(outcomes, rule.rule()).notRun = rule.why();
      }
    }
    for (Crash crash : result.crashes()) {
      of(outcomes, crash.rule()).crash = crash;
    }
    outcomes.forEach((id, outcome) -> cases.add(rule(id, outcome)));
  }

  private void circuits(List<Case> cases) {
    Baseline baseline = harness.baseline();
    if (baseline == null || !report.gate().announcedOnly()) {
      return;
    }
    String name = "circuits announced";
    List<String> sentences = baseline.present() ? baseline.unannounced() : List.of();
    String listed = sentences.stream().map(Cases::line).collect(Collectors.joining());
    cases.add(
        sentences.isEmpty()
            ? new Case(harness.root(), name, Result.PASSED, "", "", "")
            : new Case(harness.root(), name, Result.FAILED, sentences.get(0), listed, ""));
  }

  private static Outcome of(Map<String, Outcome> outcomes, String rule) {
    return outcomes.computeIfAbsent(rule, none -> new Outcome());
  }

  private Case rule(String id, Outcome outcome) {
    if (outcome.crash != null) {
      return new Case(
          harness.root(), id, Result.BROKEN, outcome.crash.what(), broken(outcome.crash), "");
    }
    if (outcome.notRun != null) {
      return new Case(harness.root(), id, Result.SKIPPED, "not run: " + outcome.notRun, "", "");
    }
    List<CheckedFinding> blocking = outcome.findings.stream().filter(this::blocks).toList();
    List<CheckedFinding> others =
        outcome.findings.stream().filter(checked -> !blocks(checked)).toList();
    String output = listed(others) + covered(outcome.coverage);
    if (!blocking.isEmpty()) {
      String first = blocking.get(0).finding().message();
      String message =
          blocking.size() == 1 ? first : blocking.size() + " findings; the first: " + first;
      return new Case(harness.root(), id, Result.FAILED, message, listed(blocking), output);
    }
    Coverage coverage = outcome.coverage;
    if (coverage != null && report.gate().blocks(coverage)) {
      String message =
          judged(coverage) + "; the least coverage is " + report.gate().coverageMin() + " %";
      return new Case(harness.root(), id, Result.FAILED, message, line(message), output);
    }
    if (coverage == null || coverage.judged() == 0) {
      String message =
          coverage == null || coverage.subjects() == 0 ? "nothing to judge" : judged(coverage);
      return new Case(harness.root(), id, Result.SKIPPED, message, "", output);
    }
    if (!others.isEmpty() && others.stream().allMatch(CheckedFinding::waived)) {
      String message = "waived: " + Tally.counted(others.size(), "finding");
      return new Case(harness.root(), id, Result.SKIPPED, message, "", output);
    }
    return new Case(harness.root(), id, Result.PASSED, "", "", output);
  }

  private boolean blocks(CheckedFinding checked) {
    return report.gate().blocks(harness, checked);
  }

  private Case expectation(Verdict verdict) {
    Place at = verdict.at().get(0);
    String name = "expectation " + verdict.id();
    String text = line(report.shown(at) + ": " + verdict.message());
    return switch (verdict.answer()) {
      case HOLDS -> new Case(harness.root(), name, Result.PASSED, "", "", text);
      case FAILS -> new Case(harness.root(), name, Result.FAILED, verdict.message(), text, "");
      case NOT_JUDGED ->
          new Case(
              harness.root(), name, Result.SKIPPED, "not judged: " + verdict.message(), "", text);
    };
  }

  private static String broken(Crash crash) {
    StringBuilder text = new StringBuilder(line(crash.what()));
    crash.where().forEach(at -> text.append(line("    at " + at)));
    return text.toString();
  }

  private String listed(List<CheckedFinding> findings) {
    StringBuilder text = new StringBuilder();
    for (CheckedFinding checked : findings) {
      Finding finding = checked.finding();
      text.append(
          line(
              report.shown(finding.at().get(0))
                  + ": "
                  + finding.level().word()
                  + " "
                  + finding.rule()
                  + " "
                  + finding.message()));
      if (checked.waiver() != null) {
        text.append(line("    waived: " + checked.waiver().reason()));
      }
      if (!finding.remedy().isBlank()) {
        text.append(line("    " + finding.remedy()));
      }
      for (Place other : finding.at().subList(1, finding.at().size())) {
        text.append(line("    see " + report.shown(other)));
      }
      finding.details().forEach(detail -> text.append(line("    " + detail)));
    }
    return text.toString();
  }

  private static String judged(Coverage coverage) {
    return "judged " + coverage.judged() + " of " + coverage.subjects() + " " + coverage.noun();
  }

  private static String covered(@Nullable Coverage coverage) {
    if (coverage == null) {
      return "";
    }
    StringBuilder text = new StringBuilder(line(judged(coverage)));
    coverage
        .missing()
        .forEach(
            (reason, subjects) -> {
              List<String> first =
                  subjects.stream().limit(MOST_SUBJECTS).map(Subject::place).toList();
              int more = subjects.size() - first.size();
              text.append(
                  line(
                      "    not judged, "
                          + reason
                          + ": "
                          + String.join(", ", first)
                          + (more > 0 ? " and " + more + " more" : "")));
            });
    return text.toString();
  }

  private static String line(String text) {
    return PrintableText.of(text) + "\n";
  }
}
