package org.tugtest.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.connectors.SpliceUnderfilled;

class LedgerTest {
  private static final RuleInfo INFO = new SpliceUnderfilled().info();
  private static final Subject A = Subject.connector("A");
  private static final Subject B = Subject.connector("B");

  private static Ledger ledger(String places) {
    Facts facts =
        Judged.facts(
            Map.of(
                Judged.ROOT,
                """
                {"format": 1, "limits": {"splice-underfilled": {"places": %s}}}
                """
                    .formatted(places)));
    Settings settings = new Settings(INFO, facts.harness().limits().get(INFO.id()));
    return new Ledger(INFO, settings, facts.places());
  }

  @Test
  void theMembersOfAListCountAsJudgedEachOnce() {
    Ledger ledger = ledger("{}");
    ledger.finding(Finding.on(Subject.loom("nose")).message("m"), List.of(A, B));
    ledger.finding(Finding.on(Subject.loom("nose")).message("n"), List.of(B));
    assertThat(ledger.coverage().judged()).isEqualTo(2);
    assertThat(ledger.findings()).extracting(Finding::level).containsOnly(Level.ERROR);
  }

  @Test
  void aListSwitchedOffAtItsFirstSubjectLeavesItsMembersNotJudged() {
    Ledger ledger = ledger("{\"looms/nose\": {\"level\": \"off\"}}");
    ledger.finding(Finding.on(Subject.loom("nose")).message("m"), List.of(A, B));
    assertThat(ledger.findings()).isEmpty();
    assertThat(ledger.coverage().missing())
        .isEqualTo(Map.of("switched off for this place under limits", List.of(A, B)));
  }

  @Test
  void aLevelGraverThanTheRuleDeclaresIsRefused() {
    RuleInfo usual = RuleInfo.of("team-one", Heading.WRITTEN, Level.NOTE).build();
    RuleInfo graver =
        RuleInfo.of("team-one", Heading.WRITTEN, Level.NOTE).gravest(Level.WARNING).build();
    Facts facts = Judged.facts(Map.of(Judged.ROOT, "{\"format\": 1}"));
    Ledger strict = new Ledger(usual, new Settings(usual, null), facts.places());
    assertThatThrownBy(() -> strict.finding(Finding.on(A).message("m").level(Level.WARNING)))
        .hasMessage(
            "team-one declares note as the level of its gravest findings, and one is of level"
                + " warning");
    Ledger ledger = new Ledger(graver, new Settings(graver, null), facts.places());
    ledger.finding(Finding.on(A).message("m").level(Level.WARNING));
    assertThat(ledger.findings()).extracting(Finding::level).containsExactly(Level.WARNING);
    assertThatThrownBy(
            () -> RuleInfo.of("x", Heading.WRITTEN, Level.ERROR).gravest(Level.NOTE).build())
        .hasMessage("x: note is less grave than its usual level");
  }

  @Test
  void aMemberMayBeSwitchedOffAlone() {
    Ledger ledger = ledger("{\"connectors/A\": {\"level\": \"off\"}}");
    assertThat(ledger.switchedOff(A)).isTrue();
    assertThat(ledger.switchedOff(B)).isFalse();
    assertThat(ledger.coverage().notJudged()).isEqualTo(1);
  }
}
