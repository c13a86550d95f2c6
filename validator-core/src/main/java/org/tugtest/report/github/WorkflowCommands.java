package org.tugtest.report.github;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.text.Place;

/**
 * The standing findings as workflow commands. A runner reads one only when it begins a line of the
 * standard output, and shows at most ten of each level for a step, so the last of them tells how
 * many more there are.
 */
public final class WorkflowCommands {
  /** What a runner shows of one level (actions/toolkit, docs/problem-matchers.md, Limitations). */
  private static final int MOST = 10;

  private WorkflowCommands() {}

  /** The lines, gravest level first, each level in the order of the report. */
  public static List<String> lines(Report report) {
    List<String> lines = new ArrayList<>();
    List<Finding> standing =
        FindingGroup.standing(report).stream().map(FindingGroup::finding).toList();
    for (Level level : Level.values()) {
      List<Finding> of = standing.stream().filter(found -> found.level() == level).toList();
      int shown = of.size() > MOST ? MOST - 1 : of.size();
      of.subList(0, shown).forEach(finding -> lines.add(line(report, finding)));
      if (shown < of.size()) {
        String more = Tally.counted(of.size() - shown, "more " + level.word());
        lines.add("::" + word(level) + "::" + text(more + "; the report has all of them"));
      }
    }
    return lines;
  }

  private static String line(Report report, Finding finding) {
    Place at = finding.at().get(0);
    boolean oneLine = at.line() == at.endLine();
    return "::"
        + word(finding.level())
        + " file="
        + property(report.path(at.file()))
        + ",line="
        + at.line()
        + (oneLine ? ",col=" + at.column() + ",endColumn=" + at.endColumn() : "")
        + (oneLine ? "" : ",endLine=" + at.endLine())
        + ",title="
        + property(finding.rule())
        + "::"
        + text(finding.message())
        + (finding.remedy().isBlank() ? "" : "%0A" + text(finding.remedy()));
  }

  private static String word(Level level) {
    return level == Level.NOTE ? "notice" : level.word();
  }

  private static String text(String text) {
    return PrintableText.of(text).replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
  }

  private static String property(String text) {
    return text(text).replace(":", "%3A").replace(",", "%2C");
  }
}
