package org.tugtest.check.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** What follows from what: one slip of the pen is one finding with its consequences. */
class CausesTest {
  private static final String CAR =
      """
      {"format": 1,
       "parts": {"housings": {
         "s2": {"side": "socket", "family": "t1.5", "rows": [["1", "2", "3"]]},
         "p2": {"side": "pin", "family": "t1.5", "rows": [["3", "2", "1"]]}}},
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 5}}},
         "K1": {"elements": {
           "coil": {"kind": "coil", "a": "85", "b": "86", "ohms": 90, "pullInV": 7, "dropOutV": 2},
           "make": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"}}},
         "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "HORN": {"elements": {"disc": {"kind": "load", "a": "1", "b": "2", "amps": 2}}}},
       "connectors": {"R1": {"housing": "s2", "mates": "R2"}, "R2": {"housing": "p2"}},
       "states": {"night": {"on": ["LAMP", "HORN"]}},
       "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 1},
                 "W2": {"from": "FB:1", "to": "R1:1", "areaMm2": 1},
                 "W3": {"from": "R2:1", "to": "LAMP:1", "areaMm2": 1},
                 "W4": {"from": "LAMP:2", "to": "R2:2", "areaMm2": 1},
                 "W5": {"from": "R1:2", "to": "BAT:-", "areaMm2": 1},
                 "W6": {"from": "FB:1", "to": "K1:30", "areaMm2": 1},
                 "W7": {"from": "K1:87", "to": "HORN:1", "areaMm2": 1},
                 "W8": {"from": "HORN:2", "to": "BAT:-", "areaMm2": 1},
                 "W9": {"from": "FB:1", "to": "K1:85", "areaMm2": 1},
                 "W10": {"from": "K1:86", "to": "BAT:-", "areaMm2": 1}}}
      """;

  /** The car with a wire to the horn that is far too thin for its load and its fuse. */
  private static final String HOT =
      CAR.replace("\"amps\": 2", "\"amps\": 12")
          .replace("\"ratingA\": 5", "\"ratingA\": 40")
          .replace("\"HORN:1\", \"areaMm2\": 1", "\"HORN:1\", \"areaMm2\": 0.22, \"cutMm\": 900");

  private static List<Finding> check(String json) {
    return check(RuleCatalog.standard(), json);
  }

  private static List<Finding> check(RuleCatalog catalog, String json) {
    Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, catalog.known());
    CheckResult result = new Checker(catalog, Selection.ALL).check(facts);
    assertThat(result.crashes()).isEmpty();
    return result.findings().stream().map(CheckedFinding::finding).toList();
  }

  /**
   * The errors of a car in which some words are others, as {@code rule} or {@code rule < cause}.
   */
  private static List<String> errors(String json) {
    return errors(check(json));
  }

  private static List<String> errors(List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.level() == Level.ERROR)
        .map(
            finding -> {
              String cause = finding.cause();
              if (cause == null) {
                return finding.rule();
              }
              assertThat(findings).extracting(Finding::identity).contains(cause);
              return finding.rule() + " < " + cause.replaceAll("[#(].*", "");
            })
        .toList();
  }

  private static String with(String now, String then) {
    assertThat(CAR).contains(now);
    return CAR.replace(now, then);
  }

  @Test
  void theCarItselfHasNoError() {
    assertThat(errors(CAR)).isEmpty();
  }

  @Test
  void farTooManyVoltsAreOneFindingWithWhatFollows() {
    List<String> errors = errors(with("\"volts\": 12}", "\"volts\": 72, \"ohms\": 0.01}"));
    assertThat(errors).contains("voltage-out-of-scope");
    assertThat(errors).filteredOn(each -> !each.contains("<")).containsOnly("voltage-out-of-scope");
    String thin = with("\"volts\": 12}", "\"volts\": 72, \"ohms\": 0.01}");
    assertThat(errors(thin.replace("\"amps\": 2}", "\"amps\": 60}")))
        .contains("gauge-under-load < voltage-out-of-scope");
  }

  @Test
  void aShortIsOneFindingWithWhatTheStatesSuffer() {
    String shorted =
        with(
            "\"W10\": {\"from\"",
            "\"W11\": {\"from\": \"FB:1\", \"to\": \"BAT:-\", \"areaMm2\": 1, \"cutMm\": 500},"
                + " \"W10\": {\"from\"");
    List<String> errors = errors(shorted);
    assertThat(errors).contains("supply-shorted");
    assertThat(errors)
        .filteredOn(each -> !each.contains("<"))
        .doesNotContain("load-unfed", "gauge-under-load", "volts-under-least", "wire-overheats");
    List<String> waived =
        errors(
            shorted.replace(
                "\"states\":",
                "\"waivers\": {\"w\": {\"rule\": \"supply-shorted\", \"at\": \"wires/W11\","
                    + " \"reason\": \"a bench supply\"}}, \"states\":"));
    assertThat(waived).noneMatch(each -> each.endsWith("< supply-shorted"));
  }

  @Test
  void aCavityThatIsNotThereIsOneFindingWithWhatFollows() {
    assertThat(errors(with("\"to\": \"R1:1\"", "\"to\": \"R1:9\"")))
        .containsExactlyInAnyOrder(
            "cavity-unknown", "contact-one-sided < cavity-unknown", "load-unfed < cavity-unknown");
  }

  @Test
  void aReturnThatNamesNothingIsToo() {
    assertThat(errors(with("\"R1:2\", \"to\": \"BAT:-\"", "\"R1:2\", \"to\": \"BTA:-\"")))
        .containsExactlyInAnyOrder(
            "reference-unresolved", "load-without-return < reference-unresolved");
    assertThat(errors(with("\"R1:2\", \"to\": \"BAT:-\"", "\"R1:2\", \"to\": \"BAT:minus\"")))
        .containsExactlyInAnyOrder("cavity-unknown", "load-without-return < cavity-unknown");
  }

  @Test
  void aPinOfTheLoadThatIsNotThereIsToo() {
    assertThat(errors(with("\"to\": \"LAMP:1\"", "\"to\": \"LAMP:11\"")))
        .containsExactlyInAnyOrder("cavity-unknown", "load-unfed < cavity-unknown");
    assertThat(errors(with("\"to\": \"LAMP:1\"", "\"to\": \"LAPM:1\"")))
        .containsExactlyInAnyOrder("reference-unresolved", "load-unfed < reference-unresolved");
  }

  @Test
  void aWireInTheWrongCavityIsOneFinding() {
    assertThat(errors(with("\"to\": \"R1:1\"", "\"to\": \"R1:3\"")))
        .containsExactlyInAnyOrder(
            "contact-one-sided",
            "contact-one-sided < contact-one-sided",
            "load-unfed < contact-one-sided");
  }

  @Test
  void aRelayThatCannotPullIsLookedBehind() {
    assertThat(errors(with("\"to\": \"K1:85\"", "\"to\": \"K1:58\"")))
        .containsExactlyInAnyOrder("cavity-unknown", "load-unfed < cavity-unknown");
    assertThat(errors(with("\"from\": \"K1:86\"", "\"from\": \"K1:68\"")))
        .containsExactlyInAnyOrder("cavity-unknown", "load-unfed < cavity-unknown");
  }

  @Test
  void aPlugThatMatesNothingIsTheCauseOfWhatIsDeadBehindIt() {
    assertThat(errors(with("\"mates\": \"R2\"", "\"mates\": \"R22\"")))
        .contains("reference-unresolved", "load-unfed < reference-unresolved")
        .doesNotContain("load-unfed");
  }

  @Test
  void aDeadLoadElsewhereDoesNotFollow() {
    String slip = with("\"to\": \"R1:1\"", "\"to\": \"R1:9\"");
    assertThat(
            errors(
                slip.replace(
                    "\"W7\": {\"from\": \"K1:87\", \"to\": \"HORN:1\", \"areaMm2\": 1},", "")))
        .contains("load-unfed", "load-unfed < cavity-unknown");
  }

  @Test
  void aWireThatIsTooThinIsOneFinding() {
    List<String> all =
        check(HOT).stream()
            .filter(finding -> finding.firstSubject().place().equals("wires/W7"))
            .map(
                finding ->
                    finding.rule()
                        + (finding.cause() == null
                            ? ""
                            : " < " + finding.cause().replaceAll("[#(].*", "")))
            .toList();
    assertThat(all)
        .contains("gauge-under-load", "gauge-under-fuse < gauge-under-load")
        .filteredOn(text -> !text.contains("<"))
        .containsExactly("gauge-under-load");
  }

  @Test
  void whatADeadShortSendsThroughItsWireFollowsFromTheShort() {
    String shorted =
        with(
            "\"W10\": {",
            "\"W11\": {\"from\": \"BAT:+\", \"to\": \"BAT:-\", \"areaMm2\": 1}, \"W10\": {");
    assertThat(errors(shorted))
        .contains("supply-shorted", "gauge-under-load < supply-shorted")
        .doesNotContain("gauge-under-load", "wire-overheats");
  }

  /** A rule of a team's own that finds every wire of the horn too hot to touch. */
  private static Rule ofTeam(Cause... from) {
    RuleInfo info =
        RuleInfo.of("team-hot", Heading.BODY, Level.ERROR)
            .causes(Cause.WIRE_TOO_WARM)
            .follows(from)
            .build();
    return new Rule() {
      @Override
      public RuleInfo info() {
        return info;
      }

      @Override
      public void judge(Facts facts, Settings settings, Ledger ledger) {
        ledger.finding(Finding.on(Subject.wire("W7")).message("W7 is too hot to touch"));
        ledger.finding(Finding.on(Subject.wire("W8")).message("W8 is too hot to touch"));
      }
    };
  }

  @Test
  void aRuleOfATeamSaysWhatItFollowsFrom() {
    assertThat(teamErrors(HOT, Cause.WIRE_UNDER_LOAD))
        .containsExactly("team-hot < gauge-under-load", "team-hot");
    assertThat(teamErrors(HOT, Cause.JOINT_UNMADE)).containsExactly("team-hot", "team-hot");
    assertThat(teamErrors(HOT)).containsExactly("team-hot", "team-hot");
    String wrong = with("\"volts\": 12}", "\"volts\": 72, \"ohms\": 0.01}");
    assertThat(teamErrors(wrong, Cause.VOLTS_WRONG))
        .containsExactly("team-hot < voltage-out-of-scope", "team-hot < voltage-out-of-scope");
  }

  private static List<String> teamErrors(String json, Cause... from) {
    List<Rule> rules = new ArrayList<>(RuleCatalog.standard().rules());
    rules.add(ofTeam(from));
    return errors(check(RuleCatalog.of(rules), json)).stream()
        .filter(each -> each.startsWith("team-hot"))
        .toList();
  }

  @ParameterizedTest
  @EnumSource
  void ofEachCauseThereIsARuleAndOneThatFollows(Cause cause) {
    List<RuleInfo> rules = RuleCatalog.standard().infos();
    assertThat(rules).anyMatch(rule -> rule.causes().contains(cause));
    assertThat(rules).anyMatch(rule -> rule.follows().contains(cause));
  }
}
