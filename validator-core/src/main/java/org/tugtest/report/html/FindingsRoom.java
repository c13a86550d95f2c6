package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Merges;
import org.tugtest.report.Report;
import org.tugtest.report.html.text.Few;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/**
 * The findings of a root, the gravest first; waived ones apart; what follows from another below it.
 * Of very many, some stand whole and the rest is counted.
 *
 * @param standing those on the page
 * @param rest those that are not, by level and rule
 * @param looms looms that have findings on the page, for the filter
 * @param loose whether some finding on the page belongs to no loom
 * @param rules rules that have findings on the page, for the filter, with how many
 * @param counts how many stand of each level, on the page or not
 * @param marks the gravest standing finding on each thing
 * @param unshown things that findings speak of which are not on the page, by level
 */
record FindingsRoom(
    List<FindingView> standing,
    List<FindingChoice.Rest> rest,
    Few<FindingView> waived,
    List<String> looms,
    boolean loose,
    Map<String, Integer> rules,
    Map<Level, Integer> counts,
    Map<Subject, Mark> marks,
    Map<Level, Set<Subject>> unshown) {

  static FindingsRoom of(Report report, HarnessReport harness) {
    return new Builder(report, harness).build();
  }

  /** All findings on the page, follow-ons included, in its order. */
  List<FindingView> all() {
    List<FindingView> all = new ArrayList<>();
    for (List<FindingView> section : List.of(standing, waived.shown())) {
      for (FindingView view : section) {
        all.add(view);
        all.addAll(view.follow().shown());
      }
    }
    return all;
  }

  /** How many stand, follow-ons and those that are not on the page included. */
  int standingCount() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many stand or are waived. */
  int count() {
    return standingCount() + waived.count();
  }

  /** How many stand and are not on the page. */
  int left() {
    return rest.stream().mapToInt(FindingChoice.Rest::count).sum();
  }

  /** {@code and 4,312 more}. */
  String leftSaid() {
    return new Few<>(standing, left()).said();
  }

  /** How many standing findings there are of a level, follow-ons included. */
  int standing(Level level) {
    return counts.getOrDefault(level, 0);
  }

  private static final class Builder {
    private static final int MOST_PLACES = 8;
    private static final int MOST_WAIVED = 100;
    private final Report report;
    private final HarnessReport harness;
    private final Looms looms;
    private final Map<Subject, String> sheets;
    private int number;

    Builder(Report report, HarnessReport harness) {
      this.report = report;
      this.harness = harness;
      this.looms = new Looms(harness.facts().harness());
      this.sheets = SheetLinks.merges(report, harness);
    }

    FindingsRoom build() {
      FindingChoice choice = FindingChoice.of(FindingGroup.standing(List.of(harness)));
      List<FindingView> standing = choice.shown().stream().map(this::head).toList();
      Few<CheckedFinding> waivers =
          Few.of(
              harness.result().findings().stream()
                  .filter(CheckedFinding::waived)
                  .sorted(
                      Comparator.comparing(CheckedFinding::finding, FindingChoice.GRAVEST_FIRST))
                  .toList(),
              MOST_WAIVED);
      List<FindingView> waived =
          waivers.shown().stream()
              .map(one -> view(++number, one.finding(), one.waiver(), "", Few.none()))
              .toList();
      return room(choice, standing, new Few<>(waived, waivers.more()));
    }

    private FindingView head(FindingChoice.Head head) {
      int own = ++number;
      List<FindingView> follow = new ArrayList<>();
      for (Finding finding : head.follow().shown()) {
        follow.add(view(++number, finding, null, "", Few.none()));
      }
      String cause = head.finding().cause();
      return view(
          own,
          head.finding(),
          null,
          cause == null ? "" : cause,
          new Few<>(follow, head.follow().more()));
    }

    private FindingView view(
        int own,
        Finding finding,
        @Nullable Waiver waiver,
        String follows,
        Few<FindingView> follow) {
      Few<Place> places = Few.of(finding.at().stream().distinct().toList(), MOST_PLACES);
      return new FindingView(
          own,
          finding,
          waiver,
          report.gate().blocks(harness, new CheckedFinding(finding, waiver)),
          List.copyOf(looms.of(finding.subjects())),
          follows,
          CodeView.of(places.shown(), this::text, report::shown),
          places.more(),
          follow,
          waiver == null ? steps(finding) : "");
    }

    /** Only what is found by one rule has a sheet of its own. */
    private String steps(Finding finding) {
      String sheet = sheets.get(finding.firstSubject());
      return sheet == null || !finding.rule().equals(Merges.RULE) ? "" : sheet;
    }

    private @Nullable SourceText text(Place place) {
      return harness.facts().texts().get(place.file());
    }

    private FindingsRoom room(
        FindingChoice choice, List<FindingView> standing, Few<FindingView> waived) {
      Map<Level, Integer> counts = new EnumMap<>(Level.class);
      Map<Level, Set<Subject>> unshown = new EnumMap<>(Level.class);
      List<FindingView> shown = new ArrayList<>();
      for (FindingView view : standing) {
        shown.add(view);
        shown.addAll(view.follow().shown());
      }
      shown.forEach(view -> counts.merge(view.level(), 1, Integer::sum));
      for (Finding finding : choice.left()) {
        counts.merge(finding.level(), 1, Integer::sum);
        unshown
            .computeIfAbsent(finding.level(), level -> new LinkedHashSet<>())
            .addAll(finding.subjects());
      }
      List<FindingView> all = new ArrayList<>(shown);
      all.addAll(waived.shown());
      Set<String> used = new TreeSet<>(NaturalOrder.NATURAL);
      all.stream().map(FindingView::looms).forEach(used::addAll);
      return new FindingsRoom(
          standing,
          choice.rest(),
          waived,
          List.copyOf(used),
          all.stream().anyMatch(view -> view.looms().isEmpty()),
          perRule(all),
          counts,
          Mark.of(shown, choice.left()),
          unshown);
    }

    private static Map<String, Integer> perRule(Collection<FindingView> all) {
      Map<String, Integer> counts = new TreeMap<>();
      all.forEach(view -> counts.merge(view.finding().rule(), 1, Integer::sum));
      return counts;
    }
  }
}
