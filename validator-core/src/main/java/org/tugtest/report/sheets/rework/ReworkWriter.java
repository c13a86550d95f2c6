package org.tugtest.report.sheets.rework;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;
import org.tugtest.report.html.PageNames;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Stamp;

/**
 * Writes {@code rework.html} and {@code rework.csv} beside the pages of a comparison; of several
 * roots {@code rework-ROOT.html} each. A root that is held against nothing has none.
 */
public final class ReworkWriter implements ReportWriter {
  private static final String NAME = "rework";

  @Override
  public String format() {
    return NAME;
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    List<HarnessReport> roots = report.harnesses();
    Map<String, String> stems = PageNames.stems(roots.stream().map(HarnessReport::root).toList());
    for (HarnessReport root : roots) {
      Baseline baseline = root.baseline();
      if (baseline != null && baseline.present()) {
        String name = roots.size() == 1 ? NAME : NAME + "-" + stems.get(root.root());
        Sheet sheet = ReworkSheet.of(baseline.comparison(), baseline.work(), name);
        sheet.writeAlone(Stamp.of(report, root), sink);
      }
    }
  }
}
