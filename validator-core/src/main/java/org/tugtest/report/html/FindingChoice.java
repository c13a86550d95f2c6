package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.html.text.Few;

/**
 * Which findings stand on a page: all, or of too many the gravest, though not so many of one rule
 * that others have no room.
 *
 * @param shown those on the page, the gravest first
 * @param left those that are not, in the same order
 */
record FindingChoice(List<Head> shown, List<Finding> left) {
  /** How many findings stand on a page, followers included. */
  static final int MOST = 300;

  /** How many of one rule come before others of its level. */
  static final int FIRST_OF_RULE = 12;

  private static final int SHARE_PERCENT = 60;
  private static final int MOST_FOLLOWERS = 12;
  private static final int MOST_SUBJECTS = 4;

  /** The gravest level first, then in the order of reports. */
  static final Comparator<Finding> GRAVEST_FIRST =
      Comparator.comparing(Finding::level).thenComparing(Finding.ORDER);

  FindingChoice {
    shown = List.copyOf(shown);
    left = List.copyOf(left);
  }

  /** A finding with what follows from it, as far as that stands below it. */
  record Head(Finding finding, Few<Finding> follow) {}

  /**
   * Findings of one rule and level that are not on the page.
   *
   * @param first what the first of them are about
   */
  record Rest(String rule, Level level, int count, Few<String> first) {}

  /** Chooses among the findings of a root. */
  static FindingChoice of(List<FindingGroup> groups) {
    List<FindingGroup> sorted = new ArrayList<>(groups);
    sorted.sort(Comparator.comparing(FindingGroup::finding, GRAVEST_FIRST));
    int all = sorted.stream().mapToInt(group -> 1 + group.follow().size()).sum();
    BitSet chosen = chosen(sorted);
    int followers = all <= MOST ? MOST : MOST_FOLLOWERS;
    List<Head> shown = new ArrayList<>();
    List<Finding> left = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      FindingGroup group = sorted.get(i);
      if (chosen.get(i)) {
        Few<Finding> follow = Few.of(group.follow(), followers);
        shown.add(new Head(group.finding(), follow));
        left.addAll(group.follow().subList(follow.shown().size(), group.follow().size()));
      } else {
        left.add(group.finding());
        left.addAll(group.follow());
      }
    }
    left.sort(GRAVEST_FIRST);
    return new FindingChoice(shown, left);
  }

  /**
   * Each level has a share of the room that the graver ones leave, then what is still free goes to
   * the gravest.
   */
  private static BitSet chosen(List<FindingGroup> sorted) {
    BitSet chosen = new BitSet(sorted.size());
    List<Integer> all = new ArrayList<>();
    int room = MOST;
    for (Level level : Level.values()) {
      List<Integer> own = fewOfEachRuleFirst(sorted, level);
      boolean last = level == Level.NOTE;
      int share = last ? room : room * SHARE_PERCENT / 100;
      room += choose(own, share, sorted, chosen) - share;
      all.addAll(own);
    }
    choose(all, room, sorted, chosen);
    return chosen;
  }

  private static List<Integer> fewOfEachRuleFirst(List<FindingGroup> sorted, Level level) {
    Map<String, Integer> ofRule = new HashMap<>();
    List<Integer> first = new ArrayList<>();
    List<Integer> later = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      Finding finding = sorted.get(i).finding();
      if (finding.level() == level) {
        boolean few = ofRule.merge(finding.rule(), 1, Integer::sum) <= FIRST_OF_RULE;
        for (Finding follower : Few.of(sorted.get(i).follow(), MOST_FOLLOWERS).shown()) {
          few |= ofRule.merge(follower.rule(), 1, Integer::sum) <= FIRST_OF_RULE;
        }
        (few ? first : later).add(i);
      }
    }
    first.addAll(later);
    return first;
  }

  /** Chooses as many as there is room for, and gives the room that is left. */
  private static int choose(List<Integer> of, int room, List<FindingGroup> sorted, BitSet chosen) {
    int left = room;
    for (int i : of) {
      int needs = 1 + Math.min(MOST_FOLLOWERS, sorted.get(i).follow().size());
      if (!chosen.get(i) && needs <= left) {
        chosen.set(i);
        left -= needs;
      }
    }
    return left;
  }

  /** The findings that are left out, by level and rule. */
  List<Rest> rest() {
    Map<Level, Map<String, List<Finding>>> grouped = new LinkedHashMap<>();
    for (Finding finding : left) {
      grouped
          .computeIfAbsent(finding.level(), level -> new LinkedHashMap<>())
          .computeIfAbsent(finding.rule(), rule -> new ArrayList<>())
          .add(finding);
    }
    List<Rest> rest = new ArrayList<>();
    grouped.forEach(
        (level, rules) ->
            rules.forEach(
                (rule, findings) ->
                    rest.add(
                        new Rest(
                            rule,
                            level,
                            findings.size(),
                            Few.of(
                                findings.stream().map(FindingChoice::about).distinct().toList(),
                                MOST_SUBJECTS)))));
    rest.sort(Comparator.comparing(Rest::level).thenComparing(Rest::rule));
    return List.copyOf(rest);
  }

  private static String about(Finding finding) {
    Subject subject = finding.subjects().get(0);
    return SubjectKey.of(subject).isEmpty() ? subject.place() : subject.id();
  }
}
