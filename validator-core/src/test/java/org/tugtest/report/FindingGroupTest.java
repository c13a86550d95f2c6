package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;

class FindingGroupTest {
  private final Finding earth = finding(Level.ERROR, "W9", 9, null);
  private final Finding lamp = finding(Level.ERROR, "W1", 1, earth.identity());
  private final Finding pump = finding(Level.NOTE, "W2", 2, lamp.identity());
  private final Finding other = finding(Level.WARNING, "W3", 3, null);

  @Test
  void whatFollowsOverAnyNumberOfStepsStandsUnderItsCause() {
    assertThat(groups(root("a", standing(pump), standing(lamp), standing(other), standing(earth))))
        .containsExactly(
            new FindingGroup(other, List.of(), List.of("a")),
            new FindingGroup(earth, List.of(lamp, pump), List.of("a")));
  }

  @Test
  void aCauseThatIsNotThereHidesNothing() {
    assertThat(groups(root("a", standing(lamp))))
        .containsExactly(new FindingGroup(lamp, List.of(), List.of("a")));
  }

  @Test
  void aWaivedCauseHidesNothing() {
    assertThat(groups(root("a", standing(lamp), waived(earth))))
        .containsExactly(new FindingGroup(lamp, List.of(), List.of("a")));
  }

  @Test
  void causesThatGoRoundInACircleHideNothing() {
    Finding one = finding(Level.ERROR, "W1", 1, "made-up(wires/W2)");
    Finding two = finding(Level.ERROR, "W2", 2, "made-up(wires/W1)");
    Finding self = finding(Level.ERROR, "W3", 3, "made-up(wires/W3)");
    assertThat(groups(root("a", standing(one), standing(two), standing(self))))
        .extracting(FindingGroup::finding)
        .containsExactly(one, two, self);
  }

  @Test
  void aFaultThatSeveralRootsShareIsOne() {
    assertThat(groups(root("a", standing(other)), root("b", standing(other), standing(earth))))
        .containsExactly(
            new FindingGroup(other, List.of(), List.of("a", "b")),
            new FindingGroup(earth, List.of(), List.of("b")));
  }

  @Test
  void theTallyCountsASharedFaultOnce() {
    Report report =
        Reports.of(
            root("a", standing(earth), standing(other), waived(pump)),
            root("b", waived(earth), standing(other), waived(pump)));
    Tally tally = Tally.of(report);
    assertThat(tally.shown()).isEqualTo("1 error, 1 warning, 0 notes, 2 waived");
    assertThat(tally.total()).isEqualTo(2);
    assertThat(Tally.levels(List.of(pump, earth, lamp))).isEqualTo("2 errors, 1 note");
  }

  private static List<FindingGroup> groups(HarnessReport... roots) {
    return FindingGroup.standing(Reports.of(roots));
  }
}
