package org.tugtest.report.markdown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.Group;
import org.tugtest.compare.circuit.ElementChange;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.compare.consequence.Consequences;
import org.tugtest.compare.consequence.Moved;
import org.tugtest.finding.Finding;

/**
 * What a comparison of one root consists of, section by section. Each ends at the latest where it
 * is told to: at so many bytes of the whole page.
 */
record ComparedSections(Comparison comparison, BoundedPage page) {
  private static final int SENTENCE = 500;
  private static final int NAME = 120;
  private static final int MOST_MOVED = 8;

  /** What is demanded otherwise than before. */
  void policy(int most) {
    page.section(
        "\n#### What is demanded changes too\n\n",
        comparison.policy(),
        most,
        change -> "- " + plain(change.sentence()) + "\n",
        ComparedSections::more);
  }

  /**
   * The verdict on circuits, with what changes.
   *
   * @param only whether a change that is not announced fails
   */
  void circuits(Announced announced, boolean only, int most) {
    boolean asked = only || announced.any();
    List<String> lines = new ArrayList<>();
    for (NetChange net : comparison.circuits().nets()) {
      lines.add(line(net.sentence(), asked, announced.undeclaredNets().contains(net)));
    }
    for (ElementChange element : comparison.circuits().elements()) {
      lines.add(line(element.sentence(), asked, announced.undeclaredElements().contains(element)));
    }
    for (Announced.NotMade one : announced.notMade()) {
      lines.add(
          "- announced and not made: "
              + MarkdownText.code(one.id(), NAME)
              + ": "
              + plain(one.why())
              + "\n");
    }
    for (String id : announced.old()) {
      lines.add(
          "- covered by "
              + MarkdownText.code(id, NAME)
              + ", which the base had announced already\n");
    }
    page.section(
        "\n#### " + plain(comparison.circuits().sentence()) + "\n\n",
        lines,
        most,
        line -> line,
        ComparedSections::more);
  }

  private static String line(String sentence, boolean asked, boolean undeclared) {
    String announced = undeclared ? " **Not announced.**" : " Announced.";
    return "- " + plain(sentence) + (asked ? announced : "") + "\n";
  }

  /** Where a change of either side is bad only together with one of the other. */
  void meetings(List<Meeting> meetings, int most) {
    page.section(
        "\n#### Where two changes meet\n\n",
        meetings,
        most,
        meeting ->
            "- **"
                + meeting.finding().level().word()
                + "** "
                + MarkdownText.code(meeting.finding().rule(), NAME)
                + " "
                + plain(meeting.sentence())
                + "\n",
        ComparedSections::more);
  }

  /** Every other change, by what it is reported under. */
  void changes(int most) {
    List<Change> rest =
        comparison.changes().stream().filter(change -> !change.kind().isPolicy()).toList();
    Set<Change> firsts = new HashSet<>();
    Group last = Group.POLICY;
    for (Change change : rest) {
      if (!change.group().equals(last)) {
        firsts.add(change);
        last = change.group();
      }
    }
    page.section(
        "\n#### Changes\n\n",
        rest,
        most,
        change ->
            (firsts.contains(change)
                    ? "- **" + MarkdownText.plain(change.group().title(), NAME) + "**\n"
                    : "")
                + "  - "
                + plain(change.sentence())
                + "\n",
        ComparedSections::more);
  }

  /** The figures that move. */
  void moved(int most) {
    List<String> lines = new ArrayList<>();
    for (Consequences sort : Consequences.of(comparison)) {
      List<String> shown = new ArrayList<>();
      for (Moved one : sort.moved().subList(0, Math.min(MOST_MOVED, sort.moved().size()))) {
        String difference = one.difference();
        shown.add(
            one.what()
                + " "
                + one.shown(one.before())
                + " to "
                + one.shown(one.after())
                + (difference.isEmpty() ? "" : " (" + difference + ")"));
      }
      int left = sort.moved().size() - shown.size();
      lines.add(
          "- "
              + sort.title()
              + ": "
              + plain(String.join(", ", shown))
              + (left > 0 ? " and " + left + " more" : "")
              + "\n");
    }
    page.section(
        "\n#### What moves with it\n\n", lines, most, line -> line, ComparedSections::more);
  }

  /** The findings that are gone. */
  void resolved(int most) {
    List<Finding> resolved =
        comparison.findings().resolved().stream()
            .sorted(Comparator.comparing(Finding::level))
            .toList();
    page.section(
        "\n#### Resolved\n\n",
        resolved,
        most,
        finding ->
            "- "
                + finding.level().word()
                + " "
                + MarkdownText.code(finding.rule(), NAME)
                + " "
                + plain(finding.message())
                + "\n",
        ComparedSections::more);
  }

  private static String more(List<?> rest) {
    return "- and " + rest.size() + " more\n";
  }

  private static String plain(String text) {
    return MarkdownText.plain(text, SENTENCE);
  }
}
