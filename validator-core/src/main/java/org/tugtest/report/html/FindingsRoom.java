package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/**
 * The findings of a root, the gravest first; waived ones apart; what follows from another below it.
 *
 * @param looms looms that have findings, for the filter
 * @param loose whether some finding belongs to no loom
 * @param rules rules that have findings, for the filter, with how many
 */
record FindingsRoom(
    List<FindingView> standing,
    List<FindingView> waived,
    List<String> looms,
    boolean loose,
    Map<String, Integer> rules) {

  private static final Comparator<Finding> GRAVEST_FIRST =
      Comparator.comparing(Finding::level).thenComparing(Finding.ORDER);

  static FindingsRoom of(Report report, HarnessReport harness) {
    return new Builder(report, harness).build();
  }

  /** All findings, follow-ons included, in the order of the page. */
  List<FindingView> all() {
    List<FindingView> all = new ArrayList<>();
    for (List<FindingView> section : List.of(standing, waived)) {
      for (FindingView view : section) {
        all.add(view);
        all.addAll(view.follow());
      }
    }
    return all;
  }

  /** How many stand, follow-ons included. */
  int standingCount() {
    return standing.stream().mapToInt(view -> 1 + view.follow().size()).sum();
  }

  /** How many stand or are waived. */
  int count() {
    return standingCount() + waived.size();
  }

  /** For each thing, the gravest standing finding that speaks of it. */
  Map<Subject, FindingView> marks() {
    Map<Subject, FindingView> marks = new HashMap<>();
    for (FindingView view : all()) {
      if (view.waiver() == null) {
        for (Subject subject : view.finding().subjects()) {
          marks.merge(
              subject, view, (one, other) -> one.level().atLeast(other.level()) ? one : other);
        }
      }
    }
    return marks;
  }

  private static final class Builder {
    private static final int MOST_PLACES = 8;
    private static final int MOST_SNIPPETS = 500;
    private final Report report;
    private final HarnessReport harness;
    private final Looms looms;
    private int number;
    private int snippets;

    Builder(Report report, HarnessReport harness) {
      this.report = report;
      this.harness = harness;
      this.looms = new Looms(harness.facts().harness());
    }

    FindingsRoom build() {
      List<FindingView> standing = new ArrayList<>();
      FindingGroup.standing(List.of(harness)).stream()
          .sorted(Comparator.comparing(FindingGroup::finding, GRAVEST_FIRST))
          .forEach(group -> standing.add(head(group)));
      List<FindingView> waived = new ArrayList<>();
      harness.result().findings().stream()
          .filter(CheckedFinding::waived)
          .sorted(Comparator.comparing(CheckedFinding::finding, GRAVEST_FIRST))
          .forEach(checked -> waived.add(view(checked.finding(), checked.waiver(), "", List.of())));
      return filters(standing, waived);
    }

    private FindingView head(FindingGroup group) {
      int own = ++number;
      List<FindingView> follow = new ArrayList<>();
      for (Finding finding : group.follow()) {
        number++;
        follow.add(view(number, finding, null, "", List.of()));
      }
      return view(own, group.finding(), null, follows(group.finding()), follow);
    }

    private FindingView view(
        Finding finding, @Nullable Waiver waiver, String follows, List<FindingView> follow) {
      return view(++number, finding, waiver, follows, follow);
    }

    private FindingView view(
        int own,
        Finding finding,
        @Nullable Waiver waiver,
        String follows,
        List<FindingView> follow) {
      List<Place> places = finding.at().stream().distinct().toList();
      List<Place> told = places.subList(0, Math.min(MOST_PLACES, places.size()));
      return new FindingView(
          own,
          finding,
          waiver,
          report.gate().blocks(harness, new CheckedFinding(finding, waiver)),
          List.copyOf(looms.of(finding.subjects())),
          follows,
          CodeView.of(told, this::text, report::shown),
          places.size() - told.size(),
          follow);
    }

    /** A cause that does not stand itself is told in words. */
    private static String follows(Finding finding) {
      return finding.cause() == null ? "" : finding.cause();
    }

    /** To keep a page small, only the gravest findings show their lines. */
    private @Nullable SourceText text(Place place) {
      SourceText text = harness.facts().texts().get(place.file());
      return text == null || ++snippets > MOST_SNIPPETS ? null : text;
    }

    private static FindingsRoom filters(List<FindingView> standing, List<FindingView> waived) {
      FindingsRoom room = new FindingsRoom(standing, waived, List.of(), false, Map.of());
      List<FindingView> all = room.all();
      Set<String> looms = new TreeSet<>(NaturalOrder.NATURAL);
      all.stream().map(FindingView::looms).forEach(looms::addAll);
      boolean loose = all.stream().anyMatch(view -> view.looms().isEmpty());
      return new FindingsRoom(standing, waived, List.copyOf(looms), loose, perRule(all));
    }

    private static Map<String, Integer> perRule(Collection<FindingView> all) {
      Map<String, Integer> counts = new LinkedHashMap<>();
      all.stream()
          .map(view -> view.finding().rule())
          .sorted()
          .forEach(rule -> counts.merge(rule, 1, Integer::sum));
      return counts;
    }
  }

  /** How many standing findings there are of a level, follow-ons included. */
  int standing(Level level) {
    return (int)
        all().stream().filter(view -> view.waiver() == null && view.level() == level).count();
  }
}
