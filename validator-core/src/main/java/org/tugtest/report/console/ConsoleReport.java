package org.tugtest.report.console;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.check.Crash;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Baseline;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.report.console.ConsoleLine.Piece;
import org.tugtest.report.console.ConsoleLine.Style;

/**
 * A report as lines: one for each finding, as compilers print it, with what would put it right and
 * where the others are below it, indented; then a closing block of at most eight lines.
 */
public final class ConsoleReport {
  private static final String INDENT = "    ";
  private static final int MOST_DETAILS = 8;

  private final Report report;
  private final List<ConsoleLine> lines = new ArrayList<>();

  private ConsoleReport(Report report) {
    this.report = report;
  }

  /** All lines of a check. */
  public static List<ConsoleLine> lines(Report report, Ending ending) {
    ConsoleReport console = new ConsoleReport(report);
    boolean onlyNew = report.gate().onlyNew();
    List<FindingGroup> shown =
        FindingGroup.standing(
            report.harnesses(),
            (harness, checked) ->
                checked.finding().level().atLeast(ending.from())
                    && (!onlyNew || AgainstBase.isNew(harness, checked)));
    shown.forEach(console::add);
    for (HarnessReport harness : report.harnesses()) {
      harness.result().crashes().forEach(crash -> console.add(harness, crash));
    }
    console.circuits();
    console.lines.addAll(ClosingBlock.lines(report, ending, shown));
    return console.lines;
  }

  private void circuits() {
    if (!report.gate().announcedOnly()) {
      return;
    }
    for (HarnessReport harness : report.harnesses()) {
      Baseline baseline = harness.baseline();
      if (baseline != null && report.gate().blocksCircuits(harness)) {
        baseline.unannounced().forEach(sentence -> unannounced(harness, sentence));
      }
    }
    AgainstBase.notMade(report)
        .forEach(
            sentence -> lines.add(ConsoleLine.plain(Level.WARNING, PrintableText.of(sentence))));
  }

  private void unannounced(HarnessReport harness, String sentence) {
    lines.add(
        new ConsoleLine(
            Level.ERROR,
            List.of(
                new Piece(Style.PLACE, PrintableText.of(report.path(harness.root()))),
                new Piece(
                    Style.PLAIN,
                    ": the circuits change and changes/ does not say so: "
                        + PrintableText.of(sentence)))));
  }

  private void add(FindingGroup group) {
    Finding finding = group.finding();
    Level level = finding.level();
    lines.add(
        new ConsoleLine(
            level,
            List.of(
                new Piece(Style.PLACE, PrintableText.of(report.shown(finding.at().get(0)))),
                new Piece(Style.PLAIN, ": "),
                new Piece(Style.LEVEL, level.word()),
                new Piece(Style.PLAIN, " "),
                new Piece(Style.RULE, PrintableText.of(finding.rule())),
                new Piece(Style.PLAIN, " " + PrintableText.of(finding.message())))));
    if (!finding.remedy().isBlank()) {
      indented(level, finding.remedy());
    }
    listed(
        level,
        finding.at().stream().skip(1).map(other -> "see " + report.shown(other)).toList(),
        "places");
    CauseLines.of(report, finding).forEach(line -> indented(level, line));
    listed(level, finding.details(), "");
    if (!group.follow().isEmpty()) {
      indented(level, group.followers() + " from this (" + Tally.levels(group.follow()) + ")");
    }
    if (report.harnesses().size() > 1) {
      indented(level, "in " + shortened(group.roots()));
    }
  }

  private void listed(Level level, List<String> details, String noun) {
    int shown = details.size() > MOST_DETAILS ? MOST_DETAILS - 1 : details.size();
    details.subList(0, shown).forEach(line -> indented(level, line));
    if (shown < details.size()) {
      indented(
          level, "and " + (details.size() - shown) + " more" + (noun.isEmpty() ? "" : " " + noun));
    }
  }

  private void add(HarnessReport harness, Crash crash) {
    lines.add(
        new ConsoleLine(
            Level.ERROR,
            List.of(
                new Piece(Style.PLACE, PrintableText.of(report.path(harness.root()))),
                new Piece(Style.PLAIN, ": rule "),
                new Piece(Style.RULE, PrintableText.of(crash.rule())),
                new Piece(Style.PLAIN, " broke: " + PrintableText.of(crash.what())))));
    indented(
        Level.ERROR, "this is a fault of Tugtest or of a rule added to it, not of the harness");
    crash.where().forEach(line -> indented(Level.ERROR, "at " + line));
  }

  private void indented(Level level, String text) {
    lines.add(ConsoleLine.plain(level, INDENT + PrintableText.of(text)));
  }

  /** Up to three roots by name, and how many more there are. */
  static String shortened(List<String> roots) {
    int named = 3;
    return roots.size() <= named
        ? String.join(", ", roots)
        : String.join(", ", roots.subList(0, named)) + " and " + (roots.size() - named) + " more";
  }
}
