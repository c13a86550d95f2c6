package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SealUnfitForWireTest {
  private static Judged sealed(boolean sealed, double outerMm, String sealFamily) {
    return Judged.of(
        new SealUnfitForWire(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": %s}},
           "housings": {"h": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                              "sealed": %s, "seals": ["blue"]}},
           "seals": {"blue": {"family": "%s", "insulationMinMm": 1.2, "insulationMaxMm": 2.1}}},
         "connectors": {"R1": {"housing": "h"}},
         "wires": {"W1": {"from": "R1:1", "to": "A:1", "part": "w"}}}
        """
            .formatted(outerMm, sealed, sealFamily));
  }

  @ParameterizedTest
  @CsvSource({"1.1, 1", "1.2, 0", "1.3, 0", "2.0, 0", "2.1, 0", "2.2, 1"})
  void theBoundsAreAllowed(double outerMm, int findings) {
    assertThat(sealed(true, outerMm, "t1.5").findings()).hasSize(findings);
  }

  @Test
  void theSentenceGivesFigureAndLimit() {
    assertThat(sealed(true, 2.25, "t1.5").messages())
        .containsExactly(
            "wire W1 does not suit seal blue at R1:1: outside diameter 2.25 mm, over the greatest"
                + " of 2.1 mm");
  }

  @Test
  void anotherFamilyDoesNotFit() {
    assertThat(sealed(true, 1.9, "t2.8").messages())
        .containsExactly("seal blue (family t2.8) does not fit R1:1 (family t1.5)");
  }

  private static Judged shared(int maxWires) {
    return Judged.of(
        new SealUnfitForWire(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 1.9}},
           "housings": {"h": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                              "sealed": true, "terminals": ["t"], "seals": ["blue"]}},
           "terminals": {"t": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.5,
                               "areaMaxMm2": 2.5, "maxWires": %d}},
           "seals": {"blue": {"family": "t1.5", "insulationMinMm": 1.2, "insulationMaxMm": 2.1}}},
         "connectors": {"R1": {"housing": "h"}},
         "wires": {"W1": {"from": "R1:1", "to": "A:1", "part": "w"},
                   "W2": {"from": "R1:1", "to": "A:2", "part": "w"}}}
        """
            .formatted(maxWires));
  }

  @Test
  void twoWiresInOneSealAreAWarning() {
    assertThat(shared(2).findings())
        .extracting(finding -> finding.level())
        .containsExactly(Level.WARNING);
  }

  @Test
  void aDoubledCavityIsLeftToItsOwnRule() {
    assertThat(shared(1).findings()).isEmpty();
    assertThat(shared(1).coverage().missing())
        .containsOnlyKeys("more wires end there than its terminal takes");
  }

  @Test
  void aSealedHousingWithoutSealsCannotBeJudged() {
    Judged judged =
        Judged.of(
            new SealUnfitForWire(),
            """
            {"format": 1, "sketch": true,
             "parts": {"housings": {"h": {"side": "socket", "rows": [["1"]], "sealed": true}}},
             "connectors": {"R1": {"housing": "h"}},
             "wires": {"W1": {"from": "R1:1", "to": "A:1"}}}
            """);
    assertThat(judged.coverage().missing()).containsOnlyKeys("no seal is named");
  }

  @Test
  void wiresThatOneSealDoesNotGripInOneConnectorAreOneFinding() {
    String json =
        """
        {"format": 1, "sketch": true,
         "parts": {
           "wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 2.3},
                     "v": {"areaMm2": 1, "maxC": 125, "outerMm": 2.6},
                     "n": {"areaMm2": 0.35, "maxC": 125, "outerMm": 1.1}},
           "housings": {"h": {"side": "socket", "family": "t1.5", "rows": [["1", "2", "3", "4"]],
                              "sealed": true, "seals": ["blue"]}},
           "seals": {"blue": {"family": "t1.5", "insulationMinMm": 1.2, "insulationMaxMm": 2.1}}},
         "connectors": {"R1": {"housing": "h"}, "R2": {"housing": "h"}},
         "wires": {"W1": {"from": "R1:1", "to": "A:1", "part": "w"},
                   "W2": {"from": "R1:2", "to": "A:2", "part": "v"},
                   "W3": {"from": "R1:3", "to": "A:3", "part": "n"},
                   "W4": {"from": "R2:1", "to": "A:4", "part": "w"}}%s}
        """;
    Judged judged = Judged.of(new SealUnfitForWire(), json.formatted(""));
    assertThat(judged.messages())
        .containsExactlyInAnyOrder(
            "wires W1 and W2 do not suit seal blue in cavities 1 and 2 of R1: outside diameter 2.3"
                + " to 2.6 mm, over the greatest of 2.1 mm",
            "wire W3 does not suit seal blue at R1:3: outside diameter 1.1 mm, under the least of"
                + " 1.2 mm",
            "wire W4 does not suit seal blue at R2:1: outside diameter 2.3 mm, over the greatest of"
                + " 2.1 mm");
    assertThat(judged.coverage().judged()).isEqualTo(4);
    Judged off =
        Judged.of(
            new SealUnfitForWire(),
            json.formatted(
                ", \"limits\": {\"seal-unfit-for-wire\": {\"places\": {\"connectors/R1:1\":"
                    + " {\"level\": \"off\"}}}}"));
    assertThat(off.messages())
        .contains(
            "wire W2 does not suit seal blue at R1:2: outside diameter 2.6 mm, over the greatest of"
                + " 2.1 mm");
  }
}
