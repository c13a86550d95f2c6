package org.tugtest.report.console;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.report.Baseline;
import org.tugtest.report.ChangeSummary;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;

/**
 * What a comparison has to say in a terminal, above its findings: for each root the meaning in one
 * line, then what becomes of the circuits, then the changes, policy first.
 */
public final class ChangeLines {
  private static final String INDENT = "    ";
  private static final int MOST_CIRCUITS = 20;
  private static final int MOST_CHANGES = 40;

  private ChangeLines() {}

  /** All lines; roots that are held against nothing have none. */
  public static List<String> of(Report report) {
    List<String> lines = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      Baseline baseline = harness.baseline();
      if (baseline != null && baseline.present()) {
        Comparison comparison = baseline.comparison();
        lines.add(
            PrintableText.of(
                report.path(harness.root())
                    + " against "
                    + baseline.label()
                    + ": "
                    + ChangeSummary.of(comparison)));
        List<String> circuits = new ArrayList<>();
        comparison.circuits().nets().forEach(net -> circuits.add(net.sentence()));
        comparison.circuits().elements().forEach(element -> circuits.add(element.sentence()));
        add(lines, circuits, MOST_CIRCUITS, "changes of circuits");
        add(
            lines,
            comparison.changes().stream().map(Change::sentence).toList(),
            MOST_CHANGES,
            "changes");
      }
    }
    return lines;
  }

  private static void add(List<String> lines, List<String> sentences, int most, String noun) {
    int shown = sentences.size() > most ? most - 1 : sentences.size();
    sentences.subList(0, shown).forEach(said -> lines.add(INDENT + PrintableText.of(said)));
    if (shown < sentences.size()) {
      lines.add(INDENT + "and " + (sentences.size() - shown) + " more " + noun);
    }
  }
}
