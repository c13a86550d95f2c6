package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.benchmark.GeneratedHarness;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.Settings;

/** What rules say does not depend on which others run, on their order, or on the threads. */
class RulesSideBySideTest {
  private static final String CAR = "car.harness.json";

  private static Facts facts() {
    String text = GeneratedHarness.of(120, 7);
    ReadHarness read =
        new HarnessReader(MemoryFiles.of(Map.of(CAR, text)), ReadLimits.STANDARD).read(CAR);
    return Facts.of(read, LocalDate.of(2026, 11, 28), RuleCatalog.standard().known());
  }

  @Test
  void eachRuleAloneSaysWhatItSaysBesideAllOthers() {
    RuleCatalog catalog = RuleCatalog.standard();
    CheckResult together = new Checker(catalog, Selection.ALL).check(facts());
    assertThat(together.crashes()).isEmpty();
    assertThat(together.findings()).isNotEmpty();
    for (Rule rule : catalog.rules()) {
      String id = rule.info().id();
      if (together.coverage().stream().noneMatch(its -> its.rule().equals(id))) {
        continue;
      }
      Settings settings = new Settings(rule.info(), null);
      Facts alone = facts();
      Ledger ledger = new Ledger(rule.info(), settings, alone.places());
      rule.judge(alone, settings, ledger);
      List<String> beside =
          together.findings().stream()
              .map(CheckedFinding::finding)
              .filter(finding -> finding.rule().equals(id))
              .map(RulesSideBySideTest::text)
              .toList();
      assertThat(ledger.findings().stream().map(RulesSideBySideTest::text))
          .as(id)
          .containsExactlyInAnyOrderElementsOf(beside);
      assertThat(together.coverage())
          .as(id)
          .filteredOn(its -> its.rule().equals(id))
          .extracting(Coverage::toString)
          .containsExactly(ledger.coverage().toString());
    }
  }

  @Test
  void theSameIsSaidEachTime() {
    String first = said();
    for (int i = 0; i < 20; i++) {
      assertThat(said()).isEqualTo(first);
    }
  }

  /** What the rule itself says; causes and offers come from looking at all findings. */
  private static String text(Finding finding) {
    return finding.level()
        + " "
        + finding.subjects()
        + " "
        + finding.message()
        + " "
        + finding.measured()
        + " "
        + finding.at();
  }

  private static String said() {
    CheckResult result = new Checker(RuleCatalog.standard(), Selection.ALL).check(facts());
    return result.findings() + "\n" + result.coverage() + "\n" + result.expectations();
  }
}
