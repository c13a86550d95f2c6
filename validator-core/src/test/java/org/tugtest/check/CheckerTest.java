package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** What the checker does around the rules: containment, selection, limits, waivers, services. */
class CheckerTest {
  private static final String TWO_WIRES =
      "\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"},"
          + " \"W2\": {\"from\": \"A:2\", \"to\": \"B:2\"}}";

  private static String root(String sections) {
    return "{\"format\": 1, \"sketch\": true, "
        + TWO_WIRES
        + (sections.isEmpty() ? "" : ", " + sections)
        + "}";
  }

  /** A rule of a team: finds every wire whose figure, 5, is over its limit. */
  static final class TeamRule implements Rule {
    private final String id;
    private final Consumer<Subject> before;
    private final Basis basis;

    TeamRule(String id, Consumer<Subject> before, Basis basis) {
      this.id = id;
      this.before = before;
      this.basis = basis;
    }

    TeamRule(String id) {
      this(id, subject -> {}, Basis.GIVEN);
    }

    @Override
    public RuleInfo info() {
      return RuleInfo.of(id, Heading.WRITTEN, Level.ERROR)
          .summary("a wire is counted")
          .subjects("wires")
          .setting(new Setting("most", 4, 0, 10, "", "the most there may be"))
          .build();
    }

    @Override
    public void judge(Facts facts, Settings settings, Ledger ledger) {
      for (String wire : facts.harness().wires().keySet()) {
        Subject subject = Subject.wire(wire);
        before.accept(subject);
        if (settings.number("most", subject) < 5) {
          ledger.finding(
              Finding.on(subject).message(wire + " is counted").remedy("-").basis(basis));
        } else {
          ledger.fine();
        }
      }
    }
  }

  /** Found as a service in {@link #aTeamsRulesAreFoundAsServices}. */
  public static final class ServiceRule implements Rule {
    @Override
    public RuleInfo info() {
      return new TeamRule("team-service").info();
    }

    @Override
    public void judge(Facts facts, Settings settings, Ledger ledger) {
      ledger.fine(facts.harness().wires().size());
    }
  }

  private static CheckResult check(String sections, Rule... rules) {
    return check(sections, Selection.ALL, rules);
  }

  private static CheckResult check(String sections, Selection selection, Rule... rules) {
    RuleCatalog catalog = RuleCatalog.of(List.of(rules));
    Facts facts =
        Facts.of(Judged.read(Map.of(Judged.ROOT, root(sections))), Judged.TODAY, catalog.known());
    return new Checker(catalog, selection).check(facts);
  }

  private static List<String> found(CheckResult result) {
    return result.findings().stream()
        .map(CheckedFinding::finding)
        .map(finding -> finding.level().word() + " " + finding.identity())
        .toList();
  }

  private static Coverage coverage(CheckResult result, String rule) {
    return result.coverage().stream()
        .filter(one -> one.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aRuleThatBreaksIsNamedAndStopsNoOther() {
    List<Throwable> breaks =
        List.of(
            new IllegalStateException("no plus"),
            new StackOverflowError(),
            new NoSuchMethodError("gone"),
            new AssertionError("never"));
    for (Throwable broken : breaks) {
      TeamRule breaking = new TeamRule("team-breaks", subject -> sneak(broken), Basis.GIVEN);
      CheckResult result = check("", breaking, new TeamRule("team-counts"));
      assertThat(result.crashes()).extracting(Crash::rule).containsExactly("team-breaks");
      assertThat(result.crashes().get(0).what()).startsWith(broken.getClass().getSimpleName());
      assertThat(result.coverage()).extracting(Coverage::rule).containsExactly("team-counts");
      assertThat(found(result)).hasSize(2);
    }
  }

  @SuppressWarnings("unchecked")
  private static <T extends Throwable> void sneak(Throwable broken) throws T {
    throw (T) broken;
  }

  @Test
  void whatABrokenRuleFoundBeforeIsNotKept() {
    TeamRule second =
        new TeamRule(
            "team-breaks",
            subject -> {
              if (subject.equals(Subject.wire("W2"))) {
                throw new IllegalStateException("broken at W2");
              }
            },
            Basis.GIVEN);
    CheckResult result = check("", second);
    assertThat(result.findings()).isEmpty();
    assertThat(result.coverage()).isEmpty();
    assertThat(result.crashes()).hasSize(1);
  }

  @Test
  void onlyAndSkipSayWhyARuleDidNotRun() {
    TeamRule one = new TeamRule("team-one");
    TeamRule two = new TeamRule("team-two");
    CheckResult only = check("", new Selection(Set.of("team-one"), Set.of()), one, two);
    assertThat(only.notRun()).containsExactly(new NotRun("team-two", "not among tugtest.rules"));
    assertThat(found(only)).allMatch(text -> text.contains("team-one"));
    CheckResult skip = check("", new Selection(Set.of(), Set.of("team-one")), one, two);
    assertThat(skip.notRun())
        .containsExactly(new NotRun("team-one", "skipped by tugtest.skipRules"));
  }

  @Test
  void rulesThatCannotFindAnythingSoGraveDoNotRunWhateverTheTeamSets() {
    TeamRule rule = new TeamRule("team-counts");
    Selection warnings = Selection.ALL.from(Level.WARNING);
    assertThat(check("", Selection.ALL.from(Level.ERROR), rule).findings()).hasSize(2);
    String note = "\"limits\": {\"team-counts\": {\"level\": \"note\"%s}}";
    CheckResult lowered = check(note.formatted(""), warnings, rule);
    assertThat(lowered.notRun())
        .containsExactly(new NotRun("team-counts", NotRun.NOT_SO_GRAVE))
        .allMatch(NotRun::expected);
    String raised = ", \"places\": {\"wires/W2\": {\"level\": \"%s\"}}";
    assertThat(found(check(note.formatted(raised.formatted("warning")), warnings, rule)))
        .containsExactly("note team-counts(wires/W1)", "warning team-counts(wires/W2)");
    assertThat(check(note.formatted(raised.formatted("off")), warnings, rule).notRun()).hasSize(1);
    assertThat(check(note.formatted(raised.formatted("note")), warnings, rule).notRun()).hasSize(1);
  }

  @Test
  void limitsSetLevelAndFigureForAllAndForOnePlace() {
    TeamRule rule = new TeamRule("team-counts");
    assertThat(found(check("", rule)))
        .containsExactly("error team-counts(wires/W1)", "error team-counts(wires/W2)");
    assertThat(found(check("\"limits\": {\"team-counts\": {\"level\": \"note\"}}", rule)))
        .containsExactly("note team-counts(wires/W1)", "note team-counts(wires/W2)");
    assertThat(found(check("\"limits\": {\"team-counts\": {\"most\": 5}}", rule))).isEmpty();
    assertThat(
            found(
                check(
                    "\"limits\": {\"team-counts\": {\"places\": {\"wires/W1\":"
                        + " {\"most\": 6, \"level\": \"warning\"}, \"wires/W2\": {\"level\":"
                        + " \"warning\"}}}}",
                    rule)))
        .containsExactly("warning team-counts(wires/W2)");
  }

  @Test
  void offForAllIsNotRunAndOffForAPlaceIsNotJudged() {
    TeamRule rule = new TeamRule("team-counts");
    CheckResult all = check("\"limits\": {\"team-counts\": {\"level\": \"off\"}}", rule);
    assertThat(all.notRun())
        .containsExactly(new NotRun("team-counts", "switched off under limits"));
    CheckResult one =
        check(
            "\"limits\": {\"team-counts\": {\"places\": {\"wires/W1\": {\"level\": \"off\"}}}}",
            rule);
    assertThat(found(one)).containsExactly("error team-counts(wires/W2)");
    assertThat(coverage(one, "team-counts").judged()).isEqualTo(1);
    assertThat(coverage(one, "team-counts").lacks(Subject.wire("W1"))).isTrue();
  }

  @Test
  void aFigureOutsideItsRangeCountsAsNotWritten() {
    TeamRule rule = new TeamRule("team-counts");
    assertThat(found(check("\"limits\": {\"team-counts\": {\"most\": 11}}", rule))).hasSize(2);
    assertThat(found(check("\"limits\": {\"team-counts\": {\"most\": 10}}", rule))).isEmpty();
  }

  @Test
  void aFigureFromMemoryNeverMakesAnErrorWhateverTheTeamSays() {
    TeamRule rule = new TeamRule("team-counts", subject -> {}, Basis.MEMORY);
    assertThat(found(check("\"limits\": {\"team-counts\": {\"level\": \"error\"}}", rule)))
        .containsExactly("warning team-counts(wires/W1)", "warning team-counts(wires/W2)");
  }

  @Test
  void aWaiverCoversItsRuleAtItsPlaceUntilItsDayAndNothingElse() {
    String waiver =
        "\"waivers\": {\"w\": {\"rule\": \"team-counts\", \"at\": \"wires/W1\","
            + " \"reason\": \"known since the donor\", \"until\": \"%s\"}}";
    TeamRule rule = new TeamRule("team-counts");
    TeamRule other = new TeamRule("team-other");
    CheckResult today = check(waiver.formatted(Judged.TODAY), rule, other);
    assertThat(today.standing())
        .extracting(checked -> checked.finding().identity())
        .containsExactlyInAnyOrder(
            "team-counts(wires/W2)", "team-other(wires/W1)", "team-other(wires/W2)");
    CheckResult late = check(waiver.formatted(Judged.TODAY.minusDays(1)), rule);
    assertThat(late.standing()).hasSize(2);
    assertThat(today.counts()).containsEntry(Level.ERROR, 3).containsEntry(Level.NOTE, 0);
  }

  @Test
  void findingsStandInTheOrderOfTheFilesWhateverTheOrderOfTheRules() {
    TeamRule one = new TeamRule("team-one");
    TeamRule two = new TeamRule("team-two");
    assertThat(found(check("", one, two))).isEqualTo(found(check("", two, one)));
  }

  @Test
  void twoRulesOfOneNameAreRefused() {
    assertThatThrownBy(() -> RuleCatalog.of(List.of(new TeamRule("x"), new TeamRule("x"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two rules are called x");
  }

  @Test
  void aTeamsRulesAreFoundAsServices(@TempDir Path folder) throws Exception {
    Path services = Files.createDirectories(folder.resolve("META-INF/services"));
    Files.writeString(services.resolve(Rule.class.getName()), ServiceRule.class.getName());
    URL[] path = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(path, getClass().getClassLoader())) {
      RuleCatalog catalog = RuleCatalog.standard().withServices(loader);
      List<RuleInfo> infos = new ArrayList<>(catalog.infos());
      Collections.reverse(infos);
      assertThat(infos.get(0).id()).isEqualTo("team-service");
      assertThat(catalog.known().settings()).containsKey("team-service");
    }
  }
}
