package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.rule.Judged;

class CavityDoubledTest {
  private static Judged plugged(String terminal, String wires) {
    return Judged.of(
        new CavityDoubled(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "housings": {"h2": {"side": "socket", "rows": [["1", "2"]], "terminals": ["one", "t"]}},
           "terminals": {
             "one": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 9},
             "t": %s}},
         "connectors": {"R1": {"housing": "h2"}},
         "wires": %s}
        """
            .formatted(terminal, wires));
  }

  private static String twin(int maxWires, double least, double greatest) {
    return """
    {"family": "t2.8", "side": "socket", "areaMinMm2": %s, "areaMaxMm2": %s, "maxWires": %s}"""
        .formatted(least, greatest, maxWires);
  }

  private static String twoWires(double first, double second) {
    return """
    {"W9": {"from": "R1:1", "to": "A:1", "areaMm2": %s},
     "W10": {"from": "B:1", "to": "R1:1", "areaMm2": %s}}"""
        .formatted(first, second);
  }

  @Test
  void oneWireInEachCavityIsFine() {
    Judged judged =
        plugged(
            twin(1, 0.5, 2),
            """
            {"W1": {"from": "R1:1", "to": "A:1"}, "W2": {"from": "R1:2", "to": "A:2"}}""");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(4);
  }

  @Test
  void aSpliceTakesAnyNumber() {
    Judged judged =
        Judged.of(
            new CavityDoubled(),
            """
            {"format": 1, "sketch": true, "splices": {"S1": {}},
             "wires": {"W1": {"from": "S1", "to": "A:1"}, "W2": {"from": "S1", "to": "A:2"}}}
            """);
    assertThat(judged.messages()).isEmpty();
  }

  @Test
  void bothEndsOfOneWireAreAnotherRulesMatter() {
    assertThat(
            plugged(twin(1, 0.5, 2), "{\"W1\": {\"from\": \"R1:1\", \"to\": \"R1:1\"}}").messages())
        .isEmpty();
  }

  @Test
  void twoWiresNeedATerminalForTwo() {
    Judged judged = plugged(twin(1, 0.5, 2), twoWires(1, 1));
    assertThat(judged.messages())
        .containsExactly("R1:1 holds W9 and W10; the terminal one takes one wire");
    assertThat(judged.findings().get(0).subjects().toString())
        .isEqualTo("[connectors/R1:1, wires/W9, wires/W10]");
    assertThat(judged.findings().get(0).at())
        .extracting(place -> place.pointer())
        .containsExactly("/wires/W9/from", "/wires/W10/to");
  }

  @ParameterizedTest
  @CsvSource({"0.9, 1.0", "1.0, 1.0", "0.3, 0.2"})
  void twoWiresAreFineWhenTogetherInRange(double first, double second) {
    assertThat(plugged(twin(2, 0.5, 2), twoWires(first, second)).messages()).isEmpty();
  }

  @Test
  void twoWiresTogetherAboveTheRangeAreNot() {
    assertThat(plugged(twin(2, 0.5, 2), twoWires(1.0, 1.01)).messages())
        .containsExactly(
            "R1:1 holds W9 and W10; the terminal t takes at most 2 mm2, together they have 2.01"
                + " mm2");
  }

  @Test
  void twoWiresTogetherBelowTheRangeAreNot() {
    assertThat(plugged(twin(2, 0.5, 2), twoWires(0.2, 0.29)).messages())
        .containsExactly(
            "R1:1 holds W9 and W10; the terminal t takes at least 0.5 mm2, together they have"
                + " 0.49 mm2");
  }

  @Test
  void threeWiresAreMoreThanTwo() {
    assertThat(
            plugged(
                    twin(2, 0.5, 9),
                    """
                    {"W1": {"from": "R1:1", "to": "A:1", "areaMm2": 1},
                     "W2": {"from": "R1:1", "to": "A:2", "areaMm2": 1},
                     "W3": {"from": "R1:1", "to": "A:3", "areaMm2": 1}}""")
                .messages())
        .containsExactly("R1:1 holds W1, W2 and W3; the terminal one takes one wire");
  }

  @Test
  void withoutAreasTheSumCannotBeJudged() {
    Judged judged =
        plugged(
            twin(2, 0.5, 2),
            """
            {"W1": {"from": "R1:1", "to": "A:1"}, "W2": {"from": "R1:1", "to": "B:1"}}""");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing()).containsOnlyKeys("a wire in it gives no area");
  }

  @Test
  void inASketchWithoutHousingsTwoWiresStillCollide() {
    assertThat(
            Judged.of(
                    new CavityDoubled(),
                    """
                    {"format": 1, "sketch": true,
                     "wires": {"W1": {"from": "A:1", "to": "R1:3"},
                               "W2": {"from": "R1:3", "to": "B:1"}}}
                    """)
                .messages())
        .containsExactly(
            "R1:3 holds W1 and W2; a cavity takes one wire unless a terminal that takes more is"
                + " named for it");
  }

  @Test
  void aPinThatTakesOneTerminalIsDoubledByTwo() {
    String harness =
        """
        {"format": 1, "sketch": true,
         "parts": {"terminals": {"twin": {"family": "b6.3", "side": "socket", "areaMinMm2": 0.5,
                                          "areaMaxMm2": 4, "maxWires": 2}}},
         "devices": {"PUMP": {"pins": {"+": {"family": "b6.3"}, "-": {"family": "stud-m6"}}}},
         "wires": {"W1": {"from": "A:1", "to": "PUMP:%s"%s}, "W2": {"from": "A:2", "to": "PUMP:%s"%s}}}
        """;
    String twin = ", \"toTerminal\": \"twin\"";
    assertThat(Judged.of(new CavityDoubled(), harness.formatted("+", "", "+", "")).messages())
        .containsExactly("PUMP:+ holds W1 and W2; the pin takes one terminal");
    assertThat(Judged.of(new CavityDoubled(), harness.formatted("+", twin, "+", twin)).messages())
        .isEmpty();
    assertThat(Judged.of(new CavityDoubled(), harness.formatted("-", "", "-", "")).messages())
        .isEmpty();
  }
}
