package org.tugtest.report.html;

import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import org.tugtest.report.Cautions;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;

/**
 * What all pages have around their rooms.
 *
 * @param title of the page
 * @param harness whose page it is, in words; empty on the index
 * @param looms looms with their revisions, in words
 * @param revision what was checked, in the words of git
 * @param today the day that waivers were held against, and where it comes from
 * @param index file name of the index; empty when there is none
 * @param assets style and script, the words of the print margins included
 * @param version of the tool
 */
record Frame(
    String title,
    String harness,
    String looms,
    String revision,
    String today,
    String index,
    Assets assets,
    String version) {
  /** The frame of a root's page. */
  static Frame of(Report report, HarnessReport harness, String index, Assets assets) {
    String looms = looms(harness.facts().harness());
    String shown = titled(harness.facts().harness());
    return framed(report, shown + " · Tugtest report", shown, looms, index, assets);
  }

  /** The frame of the index of several roots. */
  static Frame ofIndex(Report report, Assets assets) {
    String title = "Tugtest report, " + report.harnesses().size() + " harnesses";
    return framed(report, title, "", "", "", assets);
  }

  private static Frame framed(
      Report report, String title, String harness, String looms, String index, Assets assets) {
    String revision = report.revision().shown();
    String today = report.revision().today() + " (" + report.revision().todayFrom() + ")";
    String left = harness.isEmpty() ? title : harness + (looms.isEmpty() ? "" : " · " + looms);
    Assets own =
        assets.withStyle(PageMargins.style(left, revision + " · " + report.revision().today()));
    return new Frame(title, harness, looms, revision, today, index, own, report.version());
  }

  private static String titled(Harness harness) {
    String title = harness.title() == null ? harness.root() : harness.title();
    return harness.revision() == null ? title : title + ", revision " + harness.revision();
  }

  private static String looms(Harness harness) {
    return harness.looms().values().stream().map(Frame::loom).collect(Collectors.joining(", "));
  }

  private static String loom(Loom loom) {
    return loom.revision() == null ? loom.id() : loom.id() + " rev " + loom.revision();
  }

  /** The sentences at the foot of the page. */
  List<String> cautions() {
    return Cautions.SENTENCES;
  }
}
