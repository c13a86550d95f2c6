package org.tugtest.check.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

/** What expectations that do not hold follow from. */
class UnmetTest {
  private static final String CAR =
      """
      {"format": 1,
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 5}}},
         "SW": {"elements": {"make": {"kind": "contact", "a": "1", "b": "2"}}},
         "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "HORN": {"elements": {"disc": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
       "states": {"night": {"set": {"SW": "on"}, "on": ["LAMP", "HORN"]},
                  "day": {"set": {"SW": "on"}, "on": ["HORN"]},
                  "off": {}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 1, "cutMm": 200},
         "W2": {"from": "FB:1", "to": "SW:1", "areaMm2": 1, "cutMm": 200},
         "W3": {"from": "SW:2", "to": "LAMP:1", "areaMm2": 1, "cutMm": 200},
         "W4": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200},
         "W5": {"from": "FB:1", "to": "HORN:1", "areaMm2": 1, "cutMm": 200},
         "W6": {"from": "HORN:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200}},
       "expectations": {
         "night": {"that": "fed", "at": "LAMP.bulb", "in": "night"},
         "day": {"that": "fed", "at": "LAMP.bulb", "in": "day"},
         "pin": {"that": "fed", "at": "LAMP:1", "in": "day"},
         "net": {"that": "joined", "points": ["SW:2", "LAMP:1"]},
         "fused": {"that": "fused-by", "at": "LAMP:1", "fuse": "FB.f1"}}}
      """;

  /** The causes of the expectations that do not hold, by their ids. */
  private static Map<String, String> unmet(String json) {
    RuleCatalog catalog = RuleCatalog.standard();
    Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, catalog.known());
    List<CheckedFinding> all = new Checker(catalog, Selection.ALL).check(facts).findings();
    Map<String, String> causes = new TreeMap<>();
    for (CheckedFinding each : all) {
      Finding finding = each.finding();
      if (finding.rule().equals("expectation-unmet")) {
        String cause = finding.cause();
        causes.put(
            finding.firstSubject().id(), cause == null ? "" : cause.replaceAll("[#(].*", ""));
      }
    }
    return causes;
  }

  private static String with(String now, String then) {
    assertThat(CAR).contains(now);
    return CAR.replace(now, then);
  }

  @Test
  void allHoldInTheCarItself() {
    assertThat(unmet(CAR)).isEmpty();
  }

  @Test
  void aMisnamedEndIsWhatAllFollowFrom() {
    String slip = "reference-unresolved";
    assertThat(unmet(with("\"to\": \"LAMP:1\"", "\"to\": \"LMAP:1\"")))
        .isEqualTo(Map.of("night", slip, "day", slip, "pin", slip, "net", slip, "fused", slip));
    assertThat(unmet(with("\"to\": \"SW:1\"", "\"to\": \"SW:11\"")))
        .isEqualTo(
            Map.of(
                "night", "cavity-unknown",
                "day", "cavity-unknown",
                "pin", "cavity-unknown",
                "fused", "cavity-unknown"));
  }

  @Test
  void aMisnamedEndElsewhereIsNot() {
    String slip = with("\"from\": \"HORN:2\"", "\"from\": \"HRON:2\"");
    assertThat(
            unmet(
                slip.replace(
                    "\"W3\": {\"from\": \"SW:2\", \"to\": \"LAMP:1\", \"areaMm2\": 1, \"cutMm\":"
                        + " 200},",
                    "")))
        .isEqualTo(Map.of("night", "load-unfed", "day", "", "pin", "", "net", "", "fused", ""));
  }

  @Test
  void aLoadThatLacksVoltsIsWhatItsExpectationFollowsFrom() {
    assertThat(
            unmet(
                with(
                    "\"night\": {\"set\": {\"SW\": \"on\"}",
                    "\"night\": {\"set\": {\"SW\": \"off\"}")))
        .isEqualTo(Map.of("night", "load-unfed"));
    assertThat(unmet(with("\"amps\": 1}}},\n   \"HORN\"", "\"watts\": 5000}}},\n   \"HORN\"")))
        .containsEntry("night", "supply-collapses");
  }

  @Test
  void aShortIsWhatAllOfVoltsFollowsFromAndNothingOfTheLoom() {
    String shorted =
        with("\"from\": \"LAMP:2\", \"to\": \"BAT:-\"", "\"from\": \"LAMP:1\", \"to\": \"BAT:-\"")
            .replace(
                "\"pin\": {", "\"light\": {\"that\": \"lighter-than\", \"grams\": 1}, \"pin\": {");
    assertThat(unmet(shorted))
        .containsEntry("night", "supply-shorted")
        .containsEntry("day", "supply-shorted")
        .containsEntry("light", "");
  }
}
