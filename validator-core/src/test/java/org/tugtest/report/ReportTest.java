package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Crash;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.report.Report.Outcome;
import org.tugtest.rule.Coverage;

class ReportTest {
  private static final Gate WARNINGS = new Gate(Level.WARNING, 0);

  @Test
  void aFindingAtOrAboveTheGateBlocks() {
    assertThat(outcome(WARNINGS, Level.NOTE)).isEqualTo(Outcome.CLEAN);
    assertThat(outcome(WARNINGS, Level.WARNING)).isEqualTo(Outcome.FINDINGS);
    assertThat(outcome(WARNINGS, Level.ERROR)).isEqualTo(Outcome.FINDINGS);
    assertThat(outcome(new Gate(null, 0), Level.ERROR)).isEqualTo(Outcome.CLEAN);
  }

  @Test
  void aWaivedFindingBlocksNothing() {
    assertThat(Reports.of(root("a", waived(finding(Level.ERROR, "W1", 1, null)))).outcome())
        .isEqualTo(Outcome.CLEAN);
  }

  @Test
  void nothingToCheckIsNoPass() {
    assertThat(Reports.of().outcome()).isEqualTo(Outcome.CANNOT_CHECK);
  }

  @Test
  void aRuleThatBrokeOutweighsFindings() {
    HarnessReport bad = root("a", standing(finding(Level.ERROR, "W1", 1, null)));
    HarnessReport broken =
        new HarnessReport(
            bad.facts(),
            new CheckResult(
                "b",
                List.of(),
                List.of(),
                List.of(),
                List.of(new Crash("made-up", "no", List.of())),
                List.of()));
    Report report = Reports.of(bad, broken);
    assertThat(report.outcome()).isEqualTo(Outcome.CANNOT_CHECK);
    assertThat(report.blocked(broken)).isFalse();
    assertThat(report.passes(broken)).isFalse();
    assertThat(report.passes(bad)).isFalse();
  }

  @Test
  void aLeastCoverageBlocksBelowItAndNotAtIt() {
    Coverage half =
        new Coverage(
            "made-up",
            "wires",
            2,
            Map.of("no area", List.of(Subject.wire("A"), Subject.wire("B"))));
    assertThat(covered(49, half)).isEqualTo(Outcome.CLEAN);
    assertThat(covered(50, half)).isEqualTo(Outcome.CLEAN);
    assertThat(covered(51, half)).isEqualTo(Outcome.FINDINGS);
    assertThat(covered(0, half)).isEqualTo(Outcome.CLEAN);
    assertThat(covered(100, new Coverage("made-up", "wires", 0, Map.of())))
        .isEqualTo(Outcome.CLEAN);
  }

  @Test
  void subjectsThatTheTeamSwitchedOffAreNoGapInTheCoverage() {
    Coverage off =
        new Coverage(
            "made-up",
            "wires",
            1,
            Map.of("switched off for this place under limits", List.of(Subject.wire("A"))));
    assertThat(covered(100, off)).isEqualTo(Outcome.CLEAN);
  }

  @Test
  void theWordsOfTheGate() {
    assertThat(Gate.of("never")).contains(new Gate(null, 0));
    assertThat(Gate.of("note")).contains(new Gate(Level.NOTE, 0));
    assertThat(Gate.of("Error")).isEmpty();
    assertThat(new Gate(null, 0).word()).isEqualTo("never");
    assertThat(WARNINGS.word()).isEqualTo("warning");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WARNINGS.withCoverageMin(101))
        .withMessage("a least coverage of 101 is not between 0 and 100 per cent");
    assertThatIllegalArgumentException().isThrownBy(() -> WARNINGS.withCoverageMin(-1));
  }

  @Test
  void pathsAreShownFromTheFolderOfTheProject() {
    Report report = Reports.of();
    assertThat(report.path("front.json")).isEqualTo("src/main/harness/front.json");
    assertThat(report.path("../parts/wires.json")).isEqualTo("src/main/parts/wires.json");
    assertThat(report.path("../../../../x.json")).isEqualTo("../x.json");
  }

  private static Outcome outcome(Gate gate, Level level) {
    return Reports.of(gate, root("a", standing(finding(level, "W1", 1, null)))).outcome();
  }

  private static Outcome covered(int least, Coverage coverage) {
    return Reports.of(WARNINGS.withCoverageMin(least), root("a", List.of(coverage))).outcome();
  }
}
