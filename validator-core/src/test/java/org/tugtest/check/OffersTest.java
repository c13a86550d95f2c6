package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

/** What a finding says of the larger part that it offers. */
class OffersTest {
  /** A fan behind 30 A on 0.5 mm2 inside a sleeve, with larger parts in stock. */
  private static String car(String t2, String sleeve, String more) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"wires": {
       "t05": {"areaMm2": 0.5, "gramsPerM": 6, "outerMm": 1.6, "maxC": 105, "stocked": true},
       "t4": {"areaMm2": 4, "gramsPerM": 40, %s, "stocked": true},
       "t6": {"areaMm2": 6, "gramsPerM": 60, "outerMm": 4, "maxC": 105, "stocked": true}},
       "coverings": {"sleeve": {"kind": "sleeve", "innerMm": %s, "wallMm": 0.5, "maxC": 150}}},
     "devices": {
       "BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
       "FB": {"at": "a", "elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 30, "style": "blade"}}},
       "FAN": {"at": "b", "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
     "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 600, "coverings": ["sleeve"]}}},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 10, "cutMm": 100},
               "W2": {"from": "FB:1", "to": "FAN:1", "part": "t05", "cutMm": 600},
               "W3": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 10}}%s}
    """
        .formatted(t2, sleeve, more);
  }

  private static List<Finding> of(String json, Selection selection) {
    RuleCatalog catalog = RuleCatalog.standard();
    Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, catalog.known());
    CheckResult result = new Checker(catalog, selection).check(facts);
    assertThat(result.crashes()).isEmpty();
    return result.findings().stream().map(CheckedFinding::finding).toList();
  }

  private static List<String> said(String json) {
    return of(json, Selection.ALL).stream()
        .filter(finding -> finding.rule().equals("gauge-under-fuse") && finding.kind().isEmpty())
        .flatMap(finding -> finding.details().stream())
        .filter(line -> line.startsWith("with ") || line.startsWith("a larger part"))
        .toList();
  }

  private static final String FITS = "\"outerMm\": 3.4, \"maxC\": 105";

  @Test
  void thePartThatPassesEveryRuleIsNamedWithItsGrams() {
    // 600 mm of 40 g/m for 6 g/m
    assertThat(said(car(FITS, "30", "")))
        .containsExactly("with t4, 20 g more, W2 passes every rule of this check");
  }

  @Test
  void aPartToWhichARuleObjectsIsNamedWithTheObjectionAndTheNextIsTried() {
    String thick = "\"outerMm\": 9, \"maxC\": 105";
    List<String> said = said(car(thick, "11.5", ""));
    assertThat(said).hasSize(2);
    assertThat(said.get(0)).startsWith("with t4, covering-overfilled: ");
    // 600 mm of 60 g/m for 6 g/m
    assertThat(said.get(1)).isEqualTo("with t6, 32 g more, W2 passes every rule of this check");
  }

  @Test
  void whatIsTooThickForItsSleeveIsSaid() {
    List<String> said = said(car(FITS, "7.4", ""));
    assertThat(said).isNotEmpty();
    assertThat(said.get(0)).startsWith("with t4, covering-");
  }

  @Test
  void aCheckOfSomeRulesSaysNothingOfAll() {
    Selection some = new Selection(Set.of("gauge-under-fuse"), Set.of());
    assertThat(of(car(FITS, "30", ""), some).get(0).details())
        .noneMatch(line -> line.startsWith("with t4"));
  }

  /**
   * A pump 4 m away on 0.75 mm2, with larger parts in stock, one of them too thick for its sleeve.
   */
  private static String far(String t15, String sleeve) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"wires": {
       "t075": {"areaMm2": 0.75, "gramsPerM": 9, "outerMm": 1.9, "maxC": 105, "stocked": true},
       "t15": {"areaMm2": 1.5, "gramsPerM": 17, %s, "maxC": 105, "stocked": true},
       "t25": {"areaMm2": 2.5, "gramsPerM": 26, "outerMm": 3, "maxC": 105, "stocked": true}},
       "coverings": {"sleeve": {"kind": "sleeve", "innerMm": %s, "wallMm": 0.5, "maxC": 150}}},
     "devices": {
       "BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
       "FB": {"at": "a", "elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 7.5, "style": "blade-mini"}}},
       "PUMP": {"at": "b", "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
     "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 4000, "coverings": ["sleeve"]}}},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 10, "cutMm": 100},
               "W2": {"from": "FB:1", "to": "PUMP:1", "part": "t075", "cutMm": 4000},
               "W3": {"from": "PUMP:2", "to": "BAT:-", "areaMm2": 10, "cutMm": 4000}}}
    """
        .formatted(t15, sleeve);
  }

  private static List<String> saidOfDrop(String json) {
    return of(json, Selection.ALL).stream()
        .filter(finding -> finding.rule().equals("voltage-drop-excessive"))
        .flatMap(finding -> finding.details().stream())
        .filter(line -> line.startsWith("with "))
        .toList();
  }

  @Test
  void thePartForADropIsTriedToo() {
    // 4 m of 17 g/m for 9 g/m
    assertThat(saidOfDrop(far("\"outerMm\": 2.4", "20")))
        .containsExactly("with t15, 32 g more, W2 passes every rule of this check");
  }

  @Test
  void aPartForADropToWhichARuleObjectsIsNamedWithTheObjection() {
    List<String> said = saidOfDrop(far("\"outerMm\": 9", "11.5"));
    assertThat(said).hasSize(2);
    assertThat(said.get(0)).startsWith("with t15, covering-overfilled: ");
    // 4 m of 26 g/m for 9 g/m
    assertThat(said.get(1)).isEqualTo("with t25, 68 g more, W2 passes every rule of this check");
  }
}
