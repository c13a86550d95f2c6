package org.tugtest.report.markdown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.finding.Finding;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.Baseline;
import org.tugtest.report.Cautions;
import org.tugtest.report.ChangeSummary;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.report.VerdictSentence;

/** The page of a comparison: for each root the meaning first, then what it consists of. */
final class ComparePage {
  private static final int SENTENCE = 500;
  private static final int NAME = 120;
  private static final int PATH = 250;
  private static final int MOST_CAUSES = 4;

  /** Bytes of the whole page at which the last root ends at the latest. */
  private static final int END = 57_000;

  /** Bytes that a root needs for the headings of its sections. */
  private static final int LEAST = 4_500;

  private static final int HEAD = 120;

  private final Report report;
  private final BoundedPage page = new BoundedPage();

  private ComparePage(Report report) {
    this.report = report;
  }

  static String of(Report report) {
    ComparePage page = new ComparePage(report);
    page.write();
    return page.page.toString();
  }

  private void write() {
    page.add("## Tugtest – " + plain(VerdictSentence.of(report)) + "\n\n");
    boolean built = report.harnesses().stream().anyMatch(one -> one.built() != null);
    page.add(MarkdownText.code(report.revision().shown(), NAME));
    page.add(
        (built ? " held against its plan, as of " : " held against its base, as of ")
            + report.revision().today()
            + "\n");
    List<HarnessReport> same = new ArrayList<>();
    List<HarnessReport> others = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      (saysNothing(harness) ? same : others).add(harness);
    }
    for (int i = 0; i < others.size(); i++) {
      int left = END - page.bytes();
      int share = Math.max(LEAST, left / (others.size() - i));
      if (left < LEAST) {
        page.add(
            "\n**"
                + Tally.counted(others.size() - i, "more root")
                + "** with changes do not fit here; compare.html has them all, and "
                + report.json("compare.json")
                + " too\n");
        break;
      }
      root(others.get(i), page.bytes() + share);
    }
    page.section(
        "\n### Roots in which nothing changes\n\n",
        same,
        END + 1_000,
        harness -> "- " + MarkdownText.code(harness.root(), PATH) + "\n",
        rest -> "- and " + rest.size() + " more\n");
    page.add("\n<sub>" + MarkdownText.plain(Cautions.LINE, SENTENCE) + "</sub>\n");
  }

  private static boolean saysNothing(HarnessReport harness) {
    Baseline baseline = harness.baseline();
    return harness.built() == null
        && baseline != null
        && baseline.present()
        && baseline.comparison().changes().isEmpty()
        && baseline.comparison().findings().resolved().isEmpty()
        && fresh(harness).isEmpty();
  }

  private void root(HarnessReport harness, int end) {
    Baseline baseline = harness.baseline();
    page.add("\n### " + MarkdownText.plain(harness.title(), NAME) + "\n\n");
    page.add(MarkdownText.code(harness.root(), HEAD));
    if (baseline == null || !baseline.present()) {
      page.add(
          baseline == null
              ? " is held against nothing.\n"
              : " is not there in "
                  + MarkdownText.code(baseline.label(), HEAD)
                  + ": everything is new.\n");
      findings(harness, end - LEAST / 2);
      return;
    }
    Comparison comparison = baseline.comparison();
    page.add(" against " + MarkdownText.code(baseline.label(), HEAD) + ": **");
    page.add(MarkdownText.plain(ChangeSummary.of(comparison), SENTENCE) + "**\n");
    int left = Math.max(0, end - page.bytes());
    int room = left - Math.min(LEAST, left / 2);
    int start = page.bytes();
    AsBuiltReport built = harness.built();
    if (built != null) {
      new AsBuiltSections(report, harness, page).write(built, start + room * 35 / 100);
      room -= page.bytes() - start;
      start = page.bytes();
    }
    ComparedSections sections = new ComparedSections(comparison, page);
    sections.policy(start + room * 8 / 100);
    sections.circuits(baseline.announced(), report.gate().announcedOnly(), start + room * 26 / 100);
    sections.meetings(baseline.meetings(), start + room * 34 / 100);
    findings(harness, start + room * 52 / 100);
    sections.changes(start + room * 68 / 100);
    sections.moved(start + room * 76 / 100);
    sections.resolved(start + room * 83 / 100);
    new BenchSections(report, page).write(baseline.work(), start + room * 92 / 100, start + room);
  }

  private static List<CheckedFinding> fresh(HarnessReport harness) {
    return harness.result().standing().stream()
        .filter(checked -> harness.age(checked) == Age.NEW)
        .toList();
  }

  private void findings(HarnessReport harness, int most) {
    List<CheckedFinding> fresh = fresh(harness);
    CheckResult only =
        new CheckResult(harness.root(), fresh, List.of(), List.of(), List.of(), List.of());
    List<FindingGroup> groups =
        FindingGroup.standing(List.of(new HarnessReport(harness.facts(), only))).stream()
            .sorted(Comparator.comparing(group -> group.finding().level()))
            .toList();
    int known = harness.result().standing().size() - fresh.size();
    if (groups.isEmpty()) {
      page.add("\nNo new findings; " + known + " known.\n");
      return;
    }
    page.section(
        "\n#### New findings" + (known > 0 ? " (" + known + " known left out)" : "") + "\n\n",
        groups,
        most,
        group -> new FindingBlock(report).of(group) + cause(harness, group.finding()),
        rest ->
            "- **"
                + rest.size()
                + " more** ("
                + Tally.levels(rest.stream().map(FindingGroup::finding).toList())
                + ")\n");
  }

  private static String cause(HarnessReport harness, Finding finding) {
    Baseline baseline = harness.baseline();
    List<Change> changes =
        baseline == null
            ? List.of()
            : baseline.causeOf(finding).map(cause -> cause.changes()).orElse(List.of());
    if (changes.isEmpty()) {
      return "";
    }
    List<String> named =
        changes.stream().limit(MOST_CAUSES).map(change -> plain(change.sentence())).toList();
    int more = changes.size() - named.size();
    return "  - caused by: "
        + String.join(" ", named)
        + (more > 0 ? " And " + more + " more." : "")
        + "\n";
  }

  private static String plain(String text) {
    return MarkdownText.plain(text, SENTENCE);
  }
}
