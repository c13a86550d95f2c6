package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Heading;
import org.tugtest.rule.RuleInfo;

class MissingDataTest {
  private static final String[] RULES = {
    "supply-shorted",
    "gauge-under-fuse",
    "gauge-under-load",
    "voltage-drop-excessive",
    "cavity-unknown",
    "halves-do-not-fit",
    "wire-too-short",
    "load-unfed"
  };

  @Test
  void aFullHarnessLacksNothing() {
    assertThat(
            lacks(
                """
                {"format": 1,
                 "parts": {"housings": {"h1": {"side": "pin", "rows": [["1"]]}}},
                 "devices": {
                   "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                   "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
                   "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 5}}}},
                 "connectors": {"R1": {"housing": "h1"}},
                 "wires": {"W1": {"from": "BAT:+", "to": "R1:1", "areaMm2": 1}},
                 "layout": {"nodes": {"a": {}, "b": {}},
                            "segments": {"s": {"from": "a", "to": "b", "lengthMm": 100}}},
                 "states": {"on": {"on": ["LAMP"]}}}
                """,
                RULES))
        .isEmpty();
  }

  @Test
  void aSketchLacksEverythingTheMostTellingFirst() {
    assertThat(
            lacks(
                """
                {"format": 1, "sketch": true,
                 "wires": {"W10": {"from": "R10:1", "to": "R2:1"},
                           "W2": {"from": "R3:1", "to": "R4:1"}}}
                """,
                RULES))
        .containsExactly(
            "which pins are battery plus and minus; supply-shorted needs it",
            "which pins have a fuse between them; gauge-under-fuse needs it",
            "the area of 2 wires (W2 and W10); gauge-under-fuse and gauge-under-load need it",
            "which devices are loads, with their amps or watts; gauge-under-load needs it",
            "the cut length of 2 wires (W2 and W10); voltage-drop-excessive needs it",
            "the housing of 4 connectors (R2, R3, R4 and 1 more); cavity-unknown and"
                + " halves-do-not-fit need it",
            "a layout of nodes and segments; wire-too-short needs it",
            "the states the vehicle is operated in; load-unfed needs it");
  }

  @Test
  void nothingIsPromisedThatNoRuleWouldJudge() {
    assertThat(lacks("{\"format\": 1, \"sketch\": true}", "splice-underfilled")).isEmpty();
  }

  @Test
  void onlyLoadsWithoutAFigureAreNamed() {
    assertThat(
            lacks(
                """
                {"format": 1, "devices": {
                   "A": {"elements": {"x": {"kind": "load", "a": "1", "b": "2", "amps": 2}}},
                   "B": {"elements": {"x": {"kind": "load", "a": "1", "b": "2"}}}}}
                """,
                "gauge-under-load"))
        .containsExactly("amps, watts or ohms of 1 load (B.x); gauge-under-load needs it");
  }

  @Test
  void aHarnessWithoutWiresLacksThemFirst() {
    assertThat(lacks("{\"format\": 1}", "cavity-doubled", "supply-shorted"))
        .startsWith("the wires, as it has none; cavity-doubled needs it");
  }

  @Test
  void aFileThatCannotBeReadLacksNothingThatCouldBeAdded() {
    assertThat(lacks("{\"format\": 1,", RULES)).isEmpty();
  }

  private static List<String> lacks(String json, String... rules) {
    HarnessReport root = Reports.root("car.harness.json");
    HarnessReport report =
        new HarnessReport(Reports.facts("car.harness.json", json), root.result());
    return MissingData.of(
            report,
            Stream.of(rules)
                .map(id -> RuleInfo.of(id, Heading.WRITTEN, Level.ERROR).build())
                .toList())
        .stream()
        .map(MissingData::shown)
        .toList();
  }
}
