package org.tugtest.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Subject;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Merges;
import org.tugtest.report.Report;

/** Where the sheets lie that the goal {@code documents} writes beside the report. */
final class SheetLinks {
  private static final String FOLDER = "documents/";

  private SheetLinks() {}

  /** The sheets of the proposals of {@link Merges}, by the first subject of each finding. */
  static Map<Subject, String> merges(Report report, HarnessReport harness) {
    List<String> roots = report.harnesses().stream().map(HarnessReport::root).toList();
    String stem = PageNames.stems(roots).getOrDefault(harness.root(), "");
    String folder = FOLDER + (roots.size() == 1 ? "" : stem + "/");
    Map<Subject, String> sheets = new LinkedHashMap<>();
    Merges.standing(harness).stream()
        .limit(Merges.MOST_SHEETS)
        .forEach(
            one -> sheets.put(Subject.connector(one.near()), folder + Merges.sheet(one) + ".html"));
    return sheets;
  }
}
