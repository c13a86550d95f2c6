package org.tugtest.report.console;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.compare.change.Change;
import org.tugtest.finding.Finding;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;

/** What caused a new finding, where it was looked for: the changes, or those of both sides. */
final class CauseLines {
  private static final int MOST = 3;

  private CauseLines() {}

  /** Lines below a finding; none when nothing is known of its cause. */
  static List<String> of(Report report, Finding finding) {
    List<String> lines = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      Baseline baseline = harness.baseline();
      if (baseline != null && lines.isEmpty()) {
        baseline.meetings().stream()
            .filter(meeting -> meeting.finding().equals(finding))
            .findFirst()
            .ifPresent(meeting -> met(lines, meeting));
        baseline
            .causeOf(finding)
            .filter(cause -> lines.isEmpty() && !cause.changes().isEmpty())
            .ifPresent(cause -> lines.add("caused by: " + told(cause.changes())));
      }
    }
    return lines;
  }

  private static void met(List<String> lines, Meeting meeting) {
    if (meeting.ours().isEmpty() && meeting.theirs().isEmpty()) {
      lines.add("in the merge alone");
      return;
    }
    lines.add("in the merge alone; ours: " + told(meeting.ours()));
    lines.add("theirs: " + told(meeting.theirs()));
    if (!meeting.where().isEmpty()) {
      lines.add("they meet at " + meeting.where());
    }
  }

  private static String told(List<Change> changes) {
    String first =
        changes.stream().limit(MOST).map(Change::sentence).collect(Collectors.joining(" "));
    int more = changes.size() - MOST;
    return more > 0 ? first + " and " + more + " more" : first;
  }
}
