package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Stage;

/** Runs each rule's own examples: the failing ones are reported, the passing ones are judged. */
class RuleExamplesTest {
  static Stream<Rule> rules() {
    return RuleCatalog.standard().rules().stream();
  }

  private static CheckResult check(String json) {
    Facts facts =
        Facts.of(
            Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, RuleCatalog.standard().known());
    return new Checker(RuleCatalog.standard(), Selection.ALL).check(facts);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void failingExamplesAreReported(Rule rule) {
    RuleInfo info = rule.info();
    assertThat(info.failing()).as(info.id() + " has a failing example").isNotEmpty();
    for (String json : info.failing()) {
      CheckResult result = check(json);
      assertThat(result.crashes()).isEmpty();
      assertThat(ids(result)).as(info.id() + " fires on%n%s", json).contains(info.id());
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void passingExamplesAreJudgedAndSilent(Rule rule) {
    RuleInfo info = rule.info();
    assertThat(info.passing()).as(info.id() + " has a passing example").isNotEmpty();
    for (String json : info.passing()) {
      CheckResult result = check(json);
      assertThat(ids(result)).as(info.id() + " is silent on%n%s", json).doesNotContain(info.id());
      if (info.stage() == Stage.HARNESS) {
        assertThat(result.coverage())
            .filteredOn(coverage -> coverage.rule().equals(info.id()))
            .as(info.id() + " judges something in%n%s", json)
            .allMatch(coverage -> coverage.judged() > 0)
            .isNotEmpty();
      }
    }
  }

  private static List<String> ids(CheckResult result) {
    return result.findings().stream().map(checked -> checked.finding().rule()).toList();
  }
}
