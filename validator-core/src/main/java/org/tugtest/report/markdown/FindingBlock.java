package org.tugtest.report.markdown;

import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.finding.Finding;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;
import org.tugtest.text.Place;

/** A finding with its places, remedy and what follows from it, as entries of a list. */
final class FindingBlock {
  private static final int SENTENCE = 500;
  private static final int NAME = 120;
  private static final int PATH = 250;
  private static final int MOST_PLACES = 4;
  private static final int MOST_DETAILS = 4;
  private final Report report;

  FindingBlock(Report report) {
    this.report = report;
  }

  /** The lines of one finding, ending in a line end. */
  String of(FindingGroup group) {
    Finding finding = group.finding();
    StringBuilder block = new StringBuilder("- **" + finding.level().word() + "** ");
    block.append(MarkdownText.code(finding.rule(), NAME)).append(' ');
    block.append(MarkdownText.plain(finding.message(), SENTENCE)).append("\n  - ");
    List<Place> at = finding.at();
    block.append(
        at.stream()
            .limit(MOST_PLACES)
            .map(place -> MarkdownText.code(report.shown(place), PATH))
            .collect(Collectors.joining(", ")));
    if (at.size() > MOST_PLACES) {
      block.append(" and ").append(at.size() - MOST_PLACES).append(" more");
    }
    if (report.harnesses().size() > 1) {
      List<String> roots = group.roots();
      block.append(" in ").append(MarkdownText.code(roots.get(0), PATH));
      if (roots.size() > 1) {
        block.append(" and ").append(Tally.counted(roots.size() - 1, "more root"));
      }
    }
    block.append('\n');
    if (!finding.remedy().isBlank()) {
      block.append("  - remedy: ").append(MarkdownText.plain(finding.remedy(), SENTENCE));
      block.append('\n');
    }
    List<String> details = finding.details();
    int shown = details.size() > MOST_DETAILS ? MOST_DETAILS - 1 : details.size();
    for (String detail : details.subList(0, shown)) {
      block.append("  - ").append(MarkdownText.plain(detail, SENTENCE / 2)).append('\n');
    }
    if (shown < details.size()) {
      block.append("  - and ").append(details.size() - shown).append(" more\n");
    }
    if (!group.follow().isEmpty()) {
      block.append("  - ").append(group.followers()).append(" from this (");
      block.append(Tally.levels(group.follow())).append(")\n");
    }
    return block.toString();
  }
}
