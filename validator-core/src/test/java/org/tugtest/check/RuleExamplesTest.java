package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tugtest.built.Told;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Example;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;

/** Runs each rule's own examples: the failing ones are reported, the passing ones are judged. */
class RuleExamplesTest {
  static Stream<Rule> rules() {
    return RuleCatalog.standard().rules().stream();
  }

  private static CheckResult check(String example) {
    return check(example, Selection.ALL);
  }

  private static CheckResult check(String example, Selection selection) {
    Map<String, String> files = Example.of(example).files();
    Facts plan = Facts.of(Judged.read(files), Judged.TODAY, RuleCatalog.standard().known());
    Facts facts = Told.of(files).map(told -> plan.with(told.intake(plan).asBuilt())).orElse(plan);
    return new Checker(RuleCatalog.standard(), selection).check(facts);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void failingExamplesAreReported(Rule rule) {
    RuleInfo info = rule.info();
    assertThat(info.failing()).as(info.id() + " has a failing example").isNotEmpty();
    for (String example : info.failing()) {
      CheckResult result = check(example);
      assertThat(result.crashes()).isEmpty();
      assertThat(ids(result)).as(info.id() + " fires on%n%s", example).contains(info.id());
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void passingExamplesAreJudgedAndSilent(Rule rule) {
    RuleInfo info = rule.info();
    assertThat(info.passing()).as(info.id() + " has a passing example").isNotEmpty();
    for (String example : info.passing()) {
      CheckResult result = check(example);
      assertThat(ids(result))
          .as(info.id() + " is silent on%n%s", example)
          .doesNotContain(info.id());
      assertThat(result.coverage())
          .filteredOn(coverage -> coverage.rule().equals(info.id()))
          .as(info.id() + " judges something in%n%s", example)
          .allMatch(coverage -> coverage.judged() > 0)
          .isNotEmpty();
    }
  }

  /** The commit guard asks for errors alone, and must not miss one. */
  @ParameterizedTest
  @MethodSource("rules")
  void noErrorIsMissedWhereErrorsAloneAreLookedFor(Rule rule) {
    for (String example : rule.info().failing()) {
      assertThat(errors(check(example, Selection.ALL.from(Level.ERROR))))
          .isEqualTo(errors(check(example)));
    }
  }

  private static List<Finding> errors(CheckResult result) {
    return result.findings().stream()
        .map(CheckedFinding::finding)
        .filter(finding -> finding.level() == Level.ERROR)
        .toList();
  }

  private static List<String> ids(CheckResult result) {
    return result.findings().stream().map(checked -> checked.finding().rule()).toList();
  }
}
