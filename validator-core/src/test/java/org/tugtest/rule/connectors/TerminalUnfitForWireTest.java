package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class TerminalUnfitForWireTest {
  private static Judged crimped(String wire, String terminal) {
    return Judged.of(
        new TerminalUnfitForWire(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "wires": {"given": {"areaMm2": 1, "maxC": 125, "outerMm": 2.0},
                     "known": {"areaMm2": 1, "maxC": 125},
                     "remembered": {"areaMm2": 0.5, "maxC": 125}},
           "housings": {"h": {"side": "socket", "rows": [["1"]], "terminals": ["t"]}},
           "terminals": {"t": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35,
                               "areaMaxMm2": 1.0%s}}},
         "connectors": {"R1": {"housing": "h"}},
         "wires": {"W1": {"from": "R1:1", "to": "A:1", %s}}}
        """
            .formatted(terminal, wire));
  }

  @ParameterizedTest
  @CsvSource({"0.34, 1", "0.35, 0", "0.36, 0", "0.99, 0", "1.0, 0", "1.01, 1"})
  void theBoundsOfTheAreaAreAllowed(double area, int findings) {
    assertThat(crimped("\"areaMm2\": " + area, "").findings()).hasSize(findings);
  }

  @Test
  void theSentenceGivesFigureAndLimit() {
    assertThat(crimped("\"areaMm2\": 1.5", "").messages())
        .containsExactly(
            "conductor of wire W1 does not suit terminal t at R1:1: 1.5 mm2, over the greatest of"
                + " 1 mm2");
    assertThat(crimped("\"areaMm2\": 1.004", "").messages())
        .containsExactly(
            "conductor of wire W1 does not suit terminal t at R1:1: 1.004 mm2, over the greatest"
                + " of 1 mm2");
  }

  @Test
  void gaugesCountByTheirArea() {
    assertThat(crimped("\"awg\": \"18\"", "").findings()).isEmpty();
    assertThat(crimped("\"awg\": \"16\"", "").messages())
        .containsExactly(
            "conductor of wire W1 does not suit terminal t at R1:1: 1.31 mm2 (ASTM B258 formula),"
                + " over the greatest of 1 mm2");
  }

  @ParameterizedTest
  @CsvSource({"1.9, 1", "2.0, 0", "2.1, 0"})
  void givenInsulationIsHeldAgainstTheRange(double greatest, int findings) {
    assertThat(
            crimped(
                    "\"part\": \"given\"",
                    ", \"insulationMinMm\": 1.0, \"insulationMaxMm\": " + greatest)
                .findings())
        .hasSize(findings);
  }

  @Test
  void aReadTableRowMayBeAnErrorARememberedOneOnlyWarns() {
    String narrow = ", \"insulationMinMm\": 1.0, \"insulationMaxMm\": 1.5";
    assertThat(crimped("\"part\": \"known\"", narrow).findings())
        .extracting(finding -> finding.level())
        .containsExactly(Level.ERROR);
    assertThat(crimped("\"part\": \"remembered\"", narrow).findings())
        .extracting(finding -> finding.level())
        .containsExactly(Level.WARNING);
  }

  @Test
  void withoutSizeNothingIsJudged() {
    Judged judged = crimped("\"colour\": \"RD\"", "");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("the wire gives neither area nor gauge", "no terminal is named");
  }

  private static Judged shared(int maxWires) {
    return Judged.of(
        new TerminalUnfitForWire(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "housings": {"h": {"side": "socket", "rows": [["1"]], "terminals": ["t"]}},
           "terminals": {"t": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35,
                               "areaMaxMm2": 1.0, "maxWires": %d}}},
         "connectors": {"R1": {"housing": "h"}},
         "wires": {"W1": {"from": "R1:1", "to": "A:1", "areaMm2": 0.5},
                   "W2": {"from": "R1:1", "to": "A:2", "areaMm2": 0.75}}}
        """
            .formatted(maxWires));
  }

  @Test
  void wiresThatShareATerminalCountTogether() {
    assertThat(shared(2).messages())
        .containsExactly(
            "conductors of wires W1 and W2 do not suit terminal t at R1:1: 1.25 mm2, over the"
                + " greatest of 1 mm2");
  }

  @Test
  void aDoubledCavityIsLeftToItsOwnRule() {
    assertThat(shared(1).findings()).isEmpty();
    assertThat(shared(1).coverage().missing())
        .containsKey("more wires end there than its terminal takes");
  }

  private static Judged many(String wires, String more) {
    return Judged.of(
        new TerminalUnfitForWire(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "wires": {"thick": {"areaMm2": 1.5, "maxC": 125}, "thin": {"areaMm2": 0.2, "maxC": 125}},
           "housings": {"h": {"side": "socket", "rows": [["1", "2", "3"]], "terminals": ["t"]}},
           "terminals": {"t": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35,
                               "areaMaxMm2": 1.0}}},
         "connectors": {"R1": {"housing": "h"}, "R2": {"housing": "h"}},
         %s "wires": {%s}}
        """
            .formatted(more, wires));
  }

  private static final String THICK =
      "\"W1\": {\"from\": \"R1:1\", \"to\": \"R2:1\", \"part\": \"thick\"}, "
          + "\"W2\": {\"from\": \"R1:2\", \"to\": \"A:2\", \"part\": \"thick\"}, ";

  @Test
  void theSameTerminalOnTheSameWirePartIsOneFindingWithAllItsEnds() {
    Judged judged =
        many(THICK + "\"W3\": {\"from\": \"R1:3\", \"to\": \"A:3\", \"part\": \"thin\"}", "");
    assertThat(judged.messages())
        .containsExactly(
            "conductor of wires W1 and W2 does not suit terminal t at R1:1, R1:2 and R2:1: 1.5"
                + " mm2, over the greatest of 1 mm2",
            "conductor of wire W3 does not suit terminal t at R1:3: 0.2 mm2, under the least of"
                + " 0.35 mm2");
    assertThat(judged.findings().get(0).subjects())
        .extracting(subject -> subject.place())
        .containsExactly(
            "connectors/R1:1", "wires/W1", "wires/W2", "connectors/R1:2", "connectors/R2:1");
    assertThat(judged.findings().get(0).at()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo(
            "name a terminal there whose range holds wire part thick, take another wire, or correct"
                + " the range of terminal t");
    assertThat(judged.coverage().judged()).isEqualTo(4);
  }

  @Test
  void anEndAtWhichTheTeamSwitchedItOffIsLeftOut() {
    String off =
        "\"limits\": {\"terminal-unfit-for-wire\": {\"places\": {\"connectors/R1:1\": {\"level\":"
            + " \"off\"}}}},";
    assertThat(many(THICK.substring(0, THICK.length() - 2), off).messages())
        .containsExactly(
            "conductor of wires W1 and W2 does not suit terminal t at R1:2 and R2:1: 1.5 mm2, over"
                + " the greatest of 1 mm2");
  }
}
