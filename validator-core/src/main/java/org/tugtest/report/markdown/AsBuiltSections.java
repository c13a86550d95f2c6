package org.tugtest.report.markdown;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.built.explain.Explanation;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.TakenReading;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.AsBuiltText;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;

/** What is told of a loom as built: what deviates, what was measured, what explains it. */
record AsBuiltSections(Report report, HarnessReport harness, BoundedPage page) {
  private static final int SENTENCE = 400;

  /** Writes the sections there is something for, up to so many bytes of the whole page. */
  void write(AsBuiltReport built, int most) {
    int room = Math.max(0, most - page.bytes());
    int start = page.bytes();
    page.section(
        "\n#### What does not fit the plan\n\n",
        built.refused(),
        start + room / 5,
        refusal ->
            "- **"
                + plain(report.shown(refusal.at()))
                + "** "
                + plain(refusal.message())
                + "; "
                + plain(refusal.remedy())
                + "\n",
        this::more);
    page.section(
        "\n#### Deviations\n\n", built.deviations(), start + room / 2, this::deviation, this::more);
    List<String> lines = new ArrayList<>();
    for (Explanation explanation : built.explanations()) {
      lines.add(explanation(explanation));
    }
    page.section(
        "\n#### What explains the readings\n\n",
        lines,
        start + room * 3 / 4,
        line -> line,
        this::more);
    List<AsBuiltReport.Judged<TakenReading>> wrong =
        built.readings().stream().filter(judged -> judged.found() != null).toList();
    int right = built.readings().size() - wrong.size();
    if (wrong.isEmpty() && right > 0) {
      page.add("\n" + Tally.counted(right, "reading") + ", all as expected.\n");
    }
    page.section(
        "\n#### Readings (" + right + " as expected left out)\n\n",
        wrong,
        most,
        this::reading,
        this::more);
  }

  private String deviation(AsBuiltReport.Judged<Deviation> judged) {
    Deviation deviation = judged.told();
    return "- **"
        + plain(AsBuiltText.standing(report, harness, judged))
        + "** – "
        + plain(deviation.what())
        + (deviation.reason().isEmpty() ? "" : " (" + plain(deviation.reason()) + ")")
        + ", "
        + plain(deviation.told())
        + "\n";
  }

  private String reading(AsBuiltReport.Judged<TakenReading> judged) {
    TakenReading reading = judged.told();
    return "- **"
        + plain(AsBuiltText.standing(judged, report, harness))
        + "** – "
        + plain(reading.from() + " to " + reading.to())
        + " reads "
        + plain(AsBuiltText.reads(reading.reading()))
        + "\n";
  }

  private String explanation(Explanation explanation) {
    AsBuiltText.Explained words = AsBuiltText.of(report, explanation);
    StringBuilder block = new StringBuilder("- " + plain(words.head()) + "\n");
    for (String set : words.sets()) {
      block.append("  1. ").append(plain(set)).append('\n');
    }
    if (!words.telling().isEmpty()) {
      block.append("  - ").append(plain(words.telling())).append('\n');
    }
    return block.toString();
  }

  private String more(List<?> rest) {
    return "- and " + rest.size() + " more; " + report.json("compare.json") + " has them all\n";
  }

  private static String plain(String text) {
    return MarkdownText.plain(text, SENTENCE);
  }
}
