package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class TerminalUnfitForCavityTest {
  private static Judged plugged(String housing, String connector) {
    return Judged.of(
        new TerminalUnfitForCavity(),
        """
        {"format": 1, "sketch": true,
         "parts": {
           "housings": {"h": %s},
           "terminals": {
             "s28": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 2.5},
             "p28": {"family": "t2.8", "side": "pin", "areaMinMm2": 0.5, "areaMaxMm2": 2.5},
             "s63": {"family": "b6.3", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 6}}},
         "connectors": {"R1": %s},
         "wires": {"W1": {"from": "R1:1", "to": "A:1", "areaMm2": 1},
                   "W2": {"from": "R1:2", "to": "A:2", "areaMm2": 1}}}
        """
            .formatted(housing, connector));
  }

  private static final String SOCKETS =
      "{\"side\": \"socket\", \"family\": \"t2.8\", \"rows\": [[\"1\", \"2\"]], \"terminals\": [%s]}";

  @Test
  void familyAndSideOfTheHousingFit() {
    Judged judged = plugged(SOCKETS.formatted("\"s28\""), "{\"housing\": \"h\"}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void theFirstThatFitsIsTaken() {
    assertThat(
            plugged(SOCKETS.formatted("\"p28\", \"s63\", \"s28\""), "{\"housing\": \"h\"}")
                .messages())
        .isEmpty();
  }

  @Test
  void anotherSideDoesNotFitAndIsSaidOnceForAllCavities() {
    assertThat(plugged(SOCKETS.formatted("\"p28\""), "{\"housing\": \"h\"}").messages())
        .containsExactly(
            "terminal p28 (t2.8 pin) does not fit cavities 1 and 2 of R1 (housing h: t2.8"
                + " socket)");
  }

  @Test
  void aCavityMayHaveItsOwnFamilyAndTerminal() {
    String mixed =
        """
        {"side": "socket", "family": "t2.8", "rows": [["1", "2"]], "terminals": ["s28"],
         "cavities": {"2": {"family": "b6.3"}}}""";
    assertThat(plugged(mixed, "{\"housing\": \"h\"}").messages())
        .containsExactly(
            "terminal s28 (t2.8 socket) does not fit cavity 2 of R1 (housing h: b6.3 socket)");
    assertThat(
            plugged(mixed, "{\"housing\": \"h\", \"cavities\": {\"2\": {\"terminal\": \"s63\"}}}")
                .messages())
        .isEmpty();
  }

  @Test
  void withoutHousingOrTerminalNothingIsJudged() {
    assertThat(plugged(SOCKETS.formatted(""), "{\"housing\": \"h\"}").coverage().missing())
        .containsKey("no terminal is named");
    assertThat(plugged(SOCKETS.formatted("\"s28\""), "{}").coverage().missing())
        .containsOnlyKeys("the connector's housing is not known");
  }

  @Test
  void onADevicePinFamilyAndOppositeSideAreWanted() {
    String harness =
        """
        {"format": 1, "sketch": true,
         "parts": {"terminals": {
           "ring8": {"family": "stud-m8", "side": "ring", "areaMinMm2": 1, "areaMaxMm2": 16},
           "s63": {"family": "b6.3", "side": "socket", "areaMinMm2": 1, "areaMaxMm2": 6}}},
         "devices": {"D": {"pins": {"1": {"family": "%s", "side": "%s"}}}},
         "wires": {"W1": {"from": "A:1", "to": "D:1", "areaMm2": 2, "toTerminal": "%s"}}}
        """;
    TerminalUnfitForCavity rule = new TerminalUnfitForCavity();
    assertThat(Judged.of(rule, harness.formatted("b6.3", "pin", "s63")).messages()).isEmpty();
    assertThat(Judged.of(rule, harness.formatted("b6.3", "socket", "s63")).messages())
        .containsExactly("terminal s63 (b6.3 socket) of wire W1 does not fit D:1 (b6.3 socket)");
    assertThat(Judged.of(rule, harness.formatted("stud-m6", "pin", "ring8")).messages())
        .containsExactly("terminal ring8 (stud-m8 ring) of wire W1 does not fit D:1 (stud-m6 pin)");
  }
}
