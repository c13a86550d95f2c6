package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.report.FindingGroup;
import org.tugtest.text.Place;

class FindingChoiceTest {
  private static Finding finding(String rule, Level level, int line) {
    return new Finding(
        rule,
        level,
        "",
        List.of(Subject.wire("W" + line)),
        "wire W" + line + " is bad",
        "mend it",
        null,
        Basis.GIVEN,
        null,
        null,
        List.of(),
        List.of(new Place("car.harness.json", line, 5, line, 20, "/wires/W" + line)));
  }

  private static List<FindingGroup> groups(String rule, Level level, int count) {
    List<FindingGroup> groups = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      groups.add(new FindingGroup(finding(rule, level, i), List.of(), List.of("car")));
    }
    return groups;
  }

  @Test
  void showsAllAsLongAsAPageTakesThem() {
    FindingChoice choice = FindingChoice.of(groups("one", Level.NOTE, FindingChoice.MOST));
    assertThat(choice.shown()).hasSize(FindingChoice.MOST);
    assertThat(choice.left()).isEmpty();
    assertThat(choice.rest()).isEmpty();
  }

  @Test
  void leavesOutNoMoreThanItMust() {
    FindingChoice choice = FindingChoice.of(groups("one", Level.NOTE, FindingChoice.MOST + 1));
    assertThat(choice.shown()).hasSize(FindingChoice.MOST);
    assertThat(choice.left()).extracting(Finding::message).containsExactly("wire W301 is bad");
  }

  @Test
  void letsNoRuleAndNoLevelDriveOutTheOthers() {
    List<FindingGroup> all = groups("many", Level.ERROR, 5000);
    all.addAll(groups("other", Level.ERROR, 20));
    all.addAll(groups("some", Level.WARNING, 100));
    all.addAll(groups("few", Level.NOTE, 3));
    FindingChoice choice = FindingChoice.of(all);
    assertThat(choice.shown()).hasSize(FindingChoice.MOST);
    assertThat(choice.shown()).extracting(head -> head.finding().level()).isSorted();
    assertThat(shown(choice, "other")).isGreaterThanOrEqualTo(FindingChoice.FIRST_OF_RULE);
    // 60 % of what 60 % of 300 for the errors leaves
    assertThat(shown(choice, "some")).isEqualTo(72);
    assertThat(shown(choice, "few")).isEqualTo(3);
    assertThat(choice.rest())
        .extracting(rest -> rest.level().word() + " " + rest.rule())
        .containsExactly("error many", "warning some");
    assertThat(choice.rest().stream().mapToInt(FindingChoice.Rest::count).sum())
        .isEqualTo(5123 - FindingChoice.MOST);
    assertThat(choice.rest().get(1).first().shown()).startsWith("W73", "W74");
    assertThat(choice.rest().get(1).first().said()).isEqualTo("and 24 more");
  }

  @Test
  void showsEveryErrorBeforeManyNotes() {
    List<FindingGroup> all = new ArrayList<>();
    for (int rule = 0; rule < 400; rule++) {
      all.addAll(groups("note-" + rule, Level.NOTE, 1));
    }
    all.addAll(groups("error", Level.ERROR, 150));
    FindingChoice choice = FindingChoice.of(all);
    assertThat(choice.shown()).hasSize(FindingChoice.MOST);
    assertThat(shown(choice, "error")).isEqualTo(150);
    assertThat(choice.left()).hasSize(550 - FindingChoice.MOST);
  }

  private static long shown(FindingChoice choice, String rule) {
    return choice.shown().stream().filter(head -> head.finding().rule().equals(rule)).count();
  }

  @Test
  void cutsWhatFollowsFromOneFindingToo() {
    List<Finding> follow =
        groups("follower", Level.ERROR, 1000).stream().map(FindingGroup::finding).toList();
    FindingChoice choice =
        FindingChoice.of(
            List.of(
                new FindingGroup(finding("cause", Level.ERROR, 9), follow, List.of("car")),
                new FindingGroup(finding("other", Level.NOTE, 8), List.of(), List.of("car"))));
    assertThat(choice.shown()).hasSize(2);
    assertThat(choice.shown().get(0).follow().shown()).hasSize(12);
    assertThat(choice.shown().get(0).follow().said()).isEqualTo("and 988 more");
    assertThat(choice.left()).hasSize(988);
  }
}
