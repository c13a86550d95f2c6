package org.tugtest.report.markdown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Crash;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Subject;
import org.tugtest.report.Cautions;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.MissingData;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.report.VerdictSentence;
import org.tugtest.rule.Coverage;

/** The page of a whole report: verdict, findings the gravest first, what was not judged. */
final class MarkdownPage {
  private static final int SENTENCE = 500;
  private static final int NAME = 120;
  private static final int PATH = 250;
  private static final int MOST_DETAILS = 4;

  /** Bytes of the whole page at which each section ends at the latest. */
  private static final int CRASHES_END = 8_000;

  private static final int FINDINGS_END = 44_000;
  private static final int EXPECTATIONS_END = 47_000;
  private static final int WAIVED_END = 51_000;
  private static final int GAPS_END = 55_000;
  private static final int NOT_RUN_END = 57_500;

  private final Report report;
  private final BoundedPage page = new BoundedPage();

  private MarkdownPage(Report report) {
    this.report = report;
  }

  static String of(Report report) {
    MarkdownPage page = new MarkdownPage(report);
    page.head();
    page.crashes();
    page.findings();
    page.expectations();
    page.waived();
    page.gaps();
    page.notRun();
    page.page.add("\n<sub>" + MarkdownText.plain(Cautions.LINE, SENTENCE) + "</sub>\n");
    return page.page.toString();
  }

  private void head() {
    page.add("## Tugtest – " + MarkdownText.plain(VerdictSentence.of(report), SENTENCE) + "\n\n");
    page.add(Tally.of(report).shown());
    Set<String> rules = new LinkedHashSet<>();
    Set<String> files = new LinkedHashSet<>();
    for (HarnessReport harness : report.harnesses()) {
      files.addAll(harness.facts().harness().files());
      harness.result().coverage().forEach(coverage -> rules.add(coverage.rule()));
    }
    page.add("; " + Tally.counted(rules.size(), "rule") + " run on ");
    page.add(Tally.counted(files.size(), "file") + " of ");
    page.add(Tally.counted(report.harnesses().size(), "root") + "; ");
    page.add(MarkdownText.code(report.revision().shown(), NAME));
    page.add(", as of " + report.revision().today());
    page.add(" (" + MarkdownText.plain(report.revision().todayFrom(), NAME) + ")\n");
    for (HarnessReport harness : report.harnesses()) {
      List<MissingData> missing = MissingData.of(harness, report.rules());
      if (!missing.isEmpty()) {
        String to = severalRoots() ? " to " + MarkdownText.code(harness.root(), PATH) : "";
        page.add("\nTo add next" + to + ": ");
        page.add(MarkdownText.plain(missing.get(0).shown(), SENTENCE) + "\n");
        break;
      }
    }
  }

  private boolean severalRoots() {
    return report.harnesses().size() > 1;
  }

  private record Broken(String root, Crash crash) {}

  private void crashes() {
    List<Broken> broken = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      harness.result().crashes().forEach(crash -> broken.add(new Broken(harness.root(), crash)));
    }
    page.section(
        "\n### Rules that broke\n\nFaults of Tugtest or of a rule added to it, not of the"
            + " harness.\n\n",
        broken,
        CRASHES_END,
        one ->
            "- "
                + MarkdownText.code(one.crash().rule(), NAME)
                + " on "
                + MarkdownText.code(one.root(), PATH)
                + ": "
                + MarkdownText.plain(one.crash().what(), SENTENCE)
                + "\n",
        rest -> "- and " + rest.size() + " more\n");
  }

  private void findings() {
    List<FindingGroup> groups =
        FindingGroup.standing(report).stream()
            .sorted(Comparator.comparing(group -> group.finding().level()))
            .toList();
    page.section(
        "\n### Findings\n\n",
        groups,
        FINDINGS_END,
        new FindingBlock(report)::of,
        rest ->
            "- **"
                + rest.size()
                + " more** ("
                + Tally.levels(rest.stream().map(FindingGroup::finding).toList())
                + ") do not fit here; the other reports have them all\n");
  }

  private record Stated(String root, Verdict verdict) {}

  private void expectations() {
    List<Stated> open = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      harness.result().expectations().stream()
          .filter(verdict -> verdict.answer() != Verdict.Answer.HOLDS)
          .forEach(verdict -> open.add(new Stated(harness.root(), verdict)));
    }
    page.section(
        "\n### Expectations that do not hold or were not judged\n\n",
        open,
        EXPECTATIONS_END,
        one ->
            "- "
                + (one.verdict().answer() == Verdict.Answer.FAILS ? "**fails** " : "not judged ")
                + MarkdownText.code(one.verdict().id(), NAME)
                + (severalRoots() ? " of " + MarkdownText.code(one.root(), PATH) : "")
                + ": "
                + MarkdownText.plain(one.verdict().message(), SENTENCE)
                + "\n",
        rest -> "- and " + rest.size() + " more\n");
  }

  private void waived() {
    Set<CheckedFinding> waived = new LinkedHashSet<>();
    for (HarnessReport harness : report.harnesses()) {
      harness.result().findings().stream().filter(CheckedFinding::waived).forEach(waived::add);
    }
    page.section(
        "\n### Waived\n\n",
        List.copyOf(waived),
        WAIVED_END,
        checked ->
            "- "
                + MarkdownText.code(checked.finding().rule(), NAME)
                + " "
                + MarkdownText.plain(checked.finding().message(), SENTENCE)
                + ": "
                + MarkdownText.plain(reason(checked), SENTENCE)
                + "\n",
        rest -> "- and " + rest.size() + " more\n");
  }

  private static String reason(CheckedFinding checked) {
    var waiver = checked.waiver();
    if (waiver == null || waiver.reason() == null) {
      return "";
    }
    return waiver.until() == null
        ? waiver.reason()
        : waiver.reason() + " (until " + waiver.until() + ")";
  }

  private record Gap(String root, Coverage coverage) {}

  private void gaps() {
    List<Gap> gaps = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      harness.result().coverage().stream()
          .filter(coverage -> coverage.notJudged() > 0)
          .forEach(coverage -> gaps.add(new Gap(harness.root(), coverage)));
    }
    gaps.sort(Comparator.comparingInt((Gap gap) -> gap.coverage().notJudged()).reversed());
    page.section(
        "\n### Not judged\n\n",
        gaps,
        GAPS_END,
        gap ->
            "- "
                + MarkdownText.code(gap.coverage().rule(), NAME)
                + (severalRoots() ? " on " + MarkdownText.code(gap.root(), PATH) : "")
                + ": "
                + gap.coverage().judged()
                + " of "
                + gap.coverage().subjects()
                + " "
                + MarkdownText.plain(gap.coverage().noun(), NAME)
                + " judged; "
                + reasons(gap.coverage())
                + "\n",
        rest -> "- and " + rest.size() + " more\n");
  }

  private static String reasons(Coverage coverage) {
    return coverage.missing().entrySet().stream()
        .sorted(
            Comparator.comparingInt(
                    (Map.Entry<String, List<Subject>> entry) -> entry.getValue().size())
                .reversed())
        .limit(MOST_DETAILS)
        .map(
            entry ->
                entry.getValue().size() + " because " + MarkdownText.plain(entry.getKey(), NAME))
        .collect(Collectors.joining(", "));
  }

  private record Skipped(String rule, String why) {}

  private void notRun() {
    Set<Skipped> skipped = new LinkedHashSet<>();
    for (HarnessReport harness : report.harnesses()) {
      harness.result().notRun().stream()
          .filter(rule -> !rule.expected())
          .forEach(rule -> skipped.add(new Skipped(rule.rule(), rule.why())));
    }
    page.section(
        "\n### Rules not run\n\n",
        List.copyOf(skipped),
        NOT_RUN_END,
        one ->
            "- "
                + MarkdownText.code(one.rule(), NAME)
                + ": "
                + MarkdownText.plain(one.why(), SENTENCE)
                + "\n",
        rest -> "- and " + rest.size() + " more\n");
  }
}
