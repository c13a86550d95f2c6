package org.tugtest.report.markdown;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.rework.Rework;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Blind;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.report.BenchWork;
import org.tugtest.report.Report;
import org.tugtest.report.RetestText;
import org.tugtest.report.StepText;
import org.tugtest.report.Tally;

/** What a change asks of the bench, in short: how it is made, what is measured and tried again. */
record BenchSections(Report report, BoundedPage page) {
  private static final int SENTENCE = 300;
  private static final int MOST_STEPS = 40;
  private static final int MOST_LINES = 30;

  /**
   * Writes the sections there is something for.
   *
   * @param reworked bytes of the whole page at which the steps end at the latest
   * @param measured the same of what is measured and tried
   */
  void write(BenchWork work, int reworked, int measured) {
    String title = work.putsBack() ? "Put back as planned" : "Rework";
    rework(title, work, reworked);
    retest(work.retest(), measured);
  }

  private void rework(String title, BenchWork work, int most) {
    Rework rework = work.rework();
    List<String> lines = new ArrayList<>();
    work.left().forEach(left -> lines.add("- stays as built: " + plain(left) + "\n"));
    rework.cautions().forEach(caution -> lines.add("- **" + plain(caution) + "**\n"));
    rework.besides().forEach(way -> lines.add("- " + plain(way) + "\n"));
    rework.open().forEach(open -> lines.add("- left open: " + plain(open) + "\n"));
    List<StepText.Line> steps = StepText.lines(rework.steps());
    for (int i = 0; i < steps.size(); i++) {
      lines.add((i + 1) + ". " + step(steps.get(i)) + "\n");
    }
    page.section(
        "\n#### "
            + title
            + ": "
            + Tally.counted(steps.size(), "step")
            + ", one connector at a time\n\n",
        lines,
        MOST_STEPS,
        most,
        line -> line,
        rest -> more(rest));
  }

  private String more(List<?> rest) {
    return "- and " + rest.size() + " more; " + report.json("compare.json") + " has them all\n";
  }

  private static String step(StepText.Line step) {
    String remarks = String.join("; ", step.remarks());
    return plain(step.text()) + (remarks.isEmpty() ? "" : " (" + plain(remarks) + ")");
  }

  private void retest(Retest retest, int most) {
    List<String> lines = new ArrayList<>();
    for (Retest.OfLoom loom : retest.looms()) {
      lines.add(
          "- **" + plain(loom.scope().title()) + "**: " + plain(RetestText.counts(loom)) + "\n");
      for (Probe probe : loom.joined()) {
        lines.add("  - " + plain(RetestText.of(probe)) + "\n");
      }
      for (Apart apart : loom.apart()) {
        lines.add("  - " + plain(RetestText.of(apart)) + "\n");
      }
      for (Blind blind : loom.blind()) {
        lines.add("  - not to be seen: " + plain(blind.what() + ", " + blind.why()) + "\n");
      }
    }
    page.section(
        "\n#### Ring out again\n\n",
        lines,
        MOST_LINES,
        most - (most - page.bytes()) / 3,
        line -> line,
        rest -> more(rest));
    page.section(
        "\n#### Switch on and look\n\n",
        retest.functions(),
        MOST_LINES,
        most,
        function -> "- " + plain(RetestText.of(function)) + "\n",
        rest -> more(rest));
  }

  private static String plain(String text) {
    return MarkdownText.plain(text, SENTENCE);
  }
}
