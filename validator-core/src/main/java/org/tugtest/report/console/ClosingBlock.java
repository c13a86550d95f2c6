package org.tugtest.report.console;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.NotRun;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.MissingData;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.report.VerdictSentence;
import org.tugtest.report.console.ConsoleLine.Piece;
import org.tugtest.report.console.ConsoleLine.Style;
import org.tugtest.rule.Coverage;

/** The last lines of a check: verdict, counts, what was not judged, and what to do next. */
final class ClosingBlock {
  private static final int WORST = 3;
  private static final int MOST_LINES = 8;

  private final Report report;
  private final Ending ending;
  private final List<FindingGroup> shown;
  private final List<ConsoleLine> lines = new ArrayList<>();

  private ClosingBlock(Report report, Ending ending, List<FindingGroup> shown) {
    this.report = report;
    this.ending = ending;
    this.shown = shown;
  }

  /**
   * At most eight lines.
   *
   * @param shown the findings above it
   */
  static List<ConsoleLine> lines(Report report, Ending ending, List<FindingGroup> shown) {
    ClosingBlock block = new ClosingBlock(report, ending, shown);
    block.verdict();
    block.add(Tally.of(report).shown(ending.from()));
    AgainstBase.line(report, ending.from()).ifPresent(block::add);
    if (!report.harnesses().isEmpty()) {
      block.add(block.run());
      block.notRun().ifPresent(block::add);
      block.notJudged().ifPresent(block::add);
    }
    if (ending.report() != null) {
      block.add("report: " + ending.report());
    }
    if (block.lines.size() + 1 < MOST_LINES) {
      block.addNext().ifPresent(block::add);
    }
    block.command().ifPresent(block::add);
    return block.lines;
  }

  private void add(String text) {
    lines.add(ConsoleLine.plain(null, PrintableText.of(text)));
  }

  private void verdict() {
    Style style = report.outcome() == Report.Outcome.CLEAN ? Style.GOOD : Style.BAD;
    lines.add(
        new ConsoleLine(
            null, List.of(new Piece(style, PrintableText.of(VerdictSentence.of(report))))));
  }

  private String run() {
    Set<String> files = new TreeSet<>();
    Set<String> rules = new LinkedHashSet<>();
    for (HarnessReport harness : report.harnesses()) {
      files.addAll(harness.facts().harness().files());
      harness.result().coverage().forEach(coverage -> rules.add(coverage.rule()));
    }
    return Tally.counted(rules.size(), "rule")
        + " run, "
        + Tally.counted(files.size(), "file")
        + " read, "
        + Tally.counted(report.harnesses().size(), "root")
        + ", as of "
        + report.revision().today()
        + " ("
        + report.revision().todayFrom()
        + ")";
  }

  private Optional<String> notRun() {
    Map<String, String> why = new LinkedHashMap<>();
    for (HarnessReport harness : report.harnesses()) {
      for (NotRun rule : harness.result().notRun()) {
        if (!rule.expected()) {
          why.putIfAbsent(rule.rule(), rule.why());
        }
      }
    }
    if (why.isEmpty()) {
      return Optional.empty();
    }
    String first =
        why.entrySet().stream()
            .limit(WORST)
            .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
            .collect(Collectors.joining(", "));
    int more = why.size() - WORST;
    return Optional.of("not run: " + first + (more > 0 ? " and " + more + " more" : ""));
  }

  private Optional<String> notJudged() {
    List<Coverage> gaps =
        summed().stream()
            .filter(coverage -> coverage.notJudged() > 0)
            .sorted(Comparator.comparingInt(Coverage::notJudged).reversed())
            .toList();
    List<String> said = new ArrayList<>(gaps.stream().limit(WORST).map(ClosingBlock::gap).toList());
    int more = gaps.size() - WORST;
    if (more > 0) {
      said.add(Tally.counted(more, "more rule"));
    }
    long expectations =
        report.harnesses().stream()
            .flatMap(harness -> harness.result().expectations().stream())
            .filter(verdict -> verdict.answer() == Verdict.Answer.NOT_JUDGED)
            .count();
    if (expectations > 0) {
      said.add(Tally.counted(Math.toIntExact(expectations), "expectation"));
    }
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of("not judged: " + String.join("; ", said));
  }

  /** The coverage of each rule over all roots. */
  private List<Coverage> summed() {
    Map<String, Coverage> byRule = new LinkedHashMap<>();
    for (HarnessReport harness : report.harnesses()) {
      for (Coverage coverage : harness.result().coverage()) {
        byRule.merge(coverage.rule(), coverage, ClosingBlock::sum);
      }
    }
    return List.copyOf(byRule.values());
  }

  private static Coverage sum(Coverage one, Coverage other) {
    Map<String, List<Subject>> missing = new LinkedHashMap<>(one.missing());
    other
        .missing()
        .forEach(
            (reason, subjects) ->
                missing.merge(
                    reason,
                    subjects,
                    (before, after) -> {
                      List<Subject> both = new ArrayList<>(before);
                      both.addAll(after);
                      return both;
                    }));
    return new Coverage(one.rule(), one.noun(), one.judged() + other.judged(), missing);
  }

  private static String gap(Coverage coverage) {
    Map.Entry<String, List<Subject>> most =
        coverage.missing().entrySet().stream()
            .max(Comparator.comparingInt(entry -> entry.getValue().size()))
            .orElseThrow();
    int reasons = coverage.missing().size() - 1;
    return coverage.rule()
        + " "
        + coverage.judged()
        + " of "
        + coverage.subjects()
        + " "
        + coverage.noun()
        + " ("
        + most.getValue().size()
        + ": "
        + most.getKey()
        + (reasons > 0 ? ", and " + Tally.counted(reasons, "other reason") : "")
        + ")";
  }

  private Optional<String> addNext() {
    for (HarnessReport harness : report.harnesses()) {
      for (MissingData missing : MissingData.of(harness, report.rules())) {
        String root = report.harnesses().size() > 1 ? " to " + harness.root() : "";
        return Optional.of("add next" + root + ": " + missing.shown());
      }
    }
    return Optional.empty();
  }

  private Optional<String> command() {
    @Nullable Finding worst =
        shown.stream()
            .map(FindingGroup::finding)
            .min(Comparator.comparing(Finding::level))
            .orElse(null);
    if (worst != null) {
      return Optional.of("next: " + ending.explain() + worst.rule());
    }
    for (HarnessReport harness : report.harnesses()) {
      if (harness.facts().harness().sketch() && !harness.facts().wiring().implied().isEmpty()) {
        return Optional.of("next: " + ending.adopt());
      }
    }
    return report.harnesses().stream()
        .flatMap(harness -> harness.facts().wiring().ends().keySet().stream().limit(1))
        .findFirst()
        .map(point -> "next: " + ending.trace() + point.text());
  }
}
