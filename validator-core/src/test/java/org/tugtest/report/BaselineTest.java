package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.model.Ref;
import org.tugtest.report.Report.Outcome;
import org.tugtest.report.console.ConsoleLine;
import org.tugtest.report.console.ConsoleReport;
import org.tugtest.report.console.Ending;

class BaselineTest {
  private static final String ROOT = "car.harness.json";
  private static final String BARE = "{\"format\": 1}";
  private static final String ONE_NET =
      """
      {"format": 1, "sketch": true, "devices": {"A": {"pins": {"1": {}}}, "B": {"pins": {"1": {}}}},
       "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1.0}}}
      """;
  private static final String NO_NET =
      """
      {"format": 1, "sketch": true, "devices": {"A": {"pins": {"1": {}}}, "B": {"pins": {"1": {}}}}}
      """;
  private static final Gate ERRORS = new Gate(Level.ERROR, 0);
  private static final CheckedFinding OLD = standing(finding(Level.ERROR, "W1", 3, null));
  private static final CheckedFinding FRESH = standing(finding(Level.ERROR, "W2", 4, null));
  private static final CheckedFinding SLIGHT = standing(finding(Level.WARNING, "W3", 5, null));

  @Test
  void whatTheBaseHasIsKnownWhateverItsLine() {
    CheckedFinding moved = standing(finding(Level.ERROR, "W1", 77, null));
    HarnessReport root = held(base(BARE, OLD), null, moved, FRESH);

    assertThat(root.age(moved)).isEqualTo(Age.KNOWN);
    assertThat(root.age(FRESH)).isEqualTo(Age.NEW);
    assertThat(report(ERRORS, root).outcome()).isEqualTo(Outcome.FINDINGS);
    assertThat(report(ERRORS.forNewOnly(), root).outcome()).isEqualTo(Outcome.FINDINGS);
  }

  @Test
  void aGateForNewOnlyLetsKnownOnesPass() {
    HarnessReport root = held(base(BARE, OLD), null, OLD, SLIGHT);

    assertThat(report(ERRORS, root).outcome()).isEqualTo(Outcome.FINDINGS);
    assertThat(report(ERRORS.forNewOnly(), root).outcome()).isEqualTo(Outcome.CLEAN);
    assertThat(report(new Gate(Level.WARNING, 0).forNewOnly(), root).outcome())
        .isEqualTo(Outcome.FINDINGS);
  }

  @Test
  void whatWasAcceptedAndNoLongerIsCountsAsNew() {
    HarnessReport root = held(base(BARE, waived(OLD.finding())), null, OLD);

    assertThat(root.age(OLD)).isEqualTo(Age.NEW);
  }

  @Test
  void withoutABaseAllFindingsCount() {
    HarnessReport root = Reports.root(ROOT, OLD);

    assertThat(root.age(OLD)).isEqualTo(Age.NEW);
    assertThat(report(ERRORS.forNewOnly(), root).outcome()).isEqualTo(Outcome.FINDINGS);
  }

  @Test
  void aBaseWithoutTheHarnessLetsAllPass() {
    Facts facts = Reports.facts(ROOT, ONE_NET);
    HarnessReport root = held(Snapshot.absent("main", facts), null, OLD);

    assertThat(root.age(OLD)).isEqualTo(Age.NEW);
    assertThat(report(ERRORS.forNewOnly().forAnnouncedOnly(), root).outcome())
        .isEqualTo(Outcome.CLEAN);
    assertThat(report(ERRORS, root).outcome()).isEqualTo(Outcome.FINDINGS);
    assertThat(lines(ERRORS.forNewOnly(), root))
        .contains("against main: there is no such harness yet, so everything is new and passes")
        .anyMatch(line -> line.contains("wire W1 is bad"));
  }

  @Test
  void whatOneParentOfAMergeHasIsKnown() {
    HarnessReport root = held(base(BARE, OLD), base(BARE, FRESH), OLD, FRESH);

    assertThat(root.age(OLD)).isEqualTo(Age.KNOWN);
    assertThat(root.age(FRESH)).isEqualTo(Age.KNOWN);
    assertThat(report(ERRORS.forNewOnly(), root).outcome()).isEqualTo(Outcome.CLEAN);
  }

  @Test
  void linesShowNewFindingsAndCountTheOthers() {
    HarnessReport root = held(base(BARE, OLD, SLIGHT), null, OLD, FRESH);

    assertThat(lines(ERRORS.forNewOnly(), root))
        .anyMatch(line -> line.contains("wire W2 is bad"))
        .noneMatch(line -> line.contains("wire W1 is bad"))
        .contains(
            "blocked: car.harness.json by 1 new error",
            "against main: 1 new finding, 1 known, 1 resolved; electrically the same: no circuit"
                + " changes");
    assertThat(lines(ERRORS, root))
        .anyMatch(line -> line.contains("wire W1 is bad"))
        .contains("blocked: car.harness.json by 2 errors");
  }

  @Test
  void linesSayNothingOfABaseWhereThereIsNone() {
    assertThat(lines(ERRORS, Reports.root(ROOT, OLD)))
        .noneMatch(line -> line.startsWith("against"));
  }

  @Test
  void aChangeOfCircuitsBlocksUntilItIsAnnounced() {
    Snapshot before = base(NO_NET);
    Snapshot after = base(ONE_NET);
    AnnouncedChange change = new AnnouncedChange("joined", List.of(Ref.parse("A:1")), "x", "y");
    HarnessReport unannounced = root(after, Comparison.of(before, after), List.of());
    HarnessReport announced = root(after, Comparison.of(before, after), List.of(change));
    Gate gate = ERRORS.forAnnouncedOnly();

    assertThat(report(ERRORS, unannounced).outcome()).isEqualTo(Outcome.CLEAN);
    assertThat(report(gate, unannounced).outcome()).isEqualTo(Outcome.FINDINGS);
    assertThat(report(gate, announced).outcome()).isEqualTo(Outcome.CLEAN);
    assertThat(lines(gate, unannounced))
        .anyMatch(
            line ->
                line.startsWith(
                    "src/main/harness/car.harness.json: the circuits change and changes/ does not"
                        + " say so: "))
        .contains(
            "blocked: car.harness.json by 1 change of circuits that changes/ does not announce");
  }

  @Test
  void whatIsAnnouncedAndNotMadeIsTold() {
    Snapshot same = base(ONE_NET);
    AnnouncedChange change = new AnnouncedChange("joined", List.of(Ref.parse("A:1")), "x", "y");
    HarnessReport root = root(same, Comparison.of(same, same), List.of(change));

    assertThat(lines(ERRORS.forAnnouncedOnly(), root))
        .contains(
            "the announced change joined is not made: nothing changes in the circuits at A:1");
  }

  private static Snapshot base(String json, CheckedFinding... findings) {
    return Snapshot.of("main", Reports.facts(ROOT, json), result(findings));
  }

  private static CheckResult result(CheckedFinding... findings) {
    return new CheckResult(
        ROOT, Arrays.asList(findings), List.of(), List.of(), List.of(), List.of());
  }

  private static HarnessReport held(
      Snapshot base, @Nullable Snapshot parent, CheckedFinding... findings) {
    Snapshot after = base(BARE, findings);
    Comparison comparison = Comparison.of(base, after);
    List<Comparison> further = parent == null ? List.of() : List.of(Comparison.of(parent, after));
    Announced none = Announced.of(comparison, List.of(), List.of());
    return new HarnessReport(
        after.facts(), after.result(), new Baseline(comparison, further, none));
  }

  private static HarnessReport root(
      Snapshot after, Comparison comparison, List<AnnouncedChange> announced) {
    return new HarnessReport(
        after.facts(),
        after.result(),
        new Baseline(comparison, List.of(), Announced.of(comparison, List.of(), announced)));
  }

  private static Report report(Gate gate, HarnessReport root) {
    return Reports.of(gate, root);
  }

  private static List<String> lines(Gate gate, HarnessReport root) {
    return ConsoleReport.lines(report(gate, root), new Ending(null, "e", "t", "a")).stream()
        .map(ConsoleLine::text)
        .toList();
  }
}
