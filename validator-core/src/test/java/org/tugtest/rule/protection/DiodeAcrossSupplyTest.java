package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class DiodeAcrossSupplyTest {
  private static final String RELAY =
      "\"K\": {\"elements\": {\"c\": {\"kind\": \"coil\", \"a\": \"1\", \"b\": \"2\", \"ohms\":"
          + " 85}, \"d\": {\"kind\": \"diode\", \"a\": \"%s\", \"b\": \"%s\"}}}";

  private static Judged judged(String devices, String wires) {
    return Bench.judged(new DiodeAcrossSupply(), devices, wires);
  }

  private static String wires() {
    return all(wire("W1", "BAT:+", "K:1"), wire("W2", "K:2", "BAT:-"));
  }

  @Test
  void suppressorDiodeTheRightWayRoundIsFine() {
    Judged judged = judged(RELAY.formatted("2", "1"), wires());
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void suppressorDiodeTheWrongWayRoundIsFound() {
    Judged judged = judged(RELAY.formatted("1", "2"), wires());
    assertThat(judged.messages())
        .containsExactly("plus of BAT.cell leads to minus through diode K.d, with no load between");
    assertThat(judged.subjects()).containsExactly("devices/K.d");
    assertThat(judged.findings().get(0).remedy()).contains("cathode (\"b\") is at K:1");
  }

  @Test
  void lowSideSwitchOnTheWayIsNamed() {
    Judged judged =
        judged(
            all(
                RELAY.formatted("1", "2"),
                "\"ECU\": {\"elements\": {\"o\": {\"kind\": \"contact\", \"a\": \"1\", \"b\":"
                    + " \"2\"}}}"),
            all(
                wire("W1", "BAT:+", "K:1"),
                wire("W2", "K:2", "ECU:1"),
                wire("W3", "ECU:2", "BAT:-")));
    assertThat(judged.messages().get(0)).contains("when ECU.o is closed");
  }

  @Test
  void eachWrongDiodeIsOneFinding() {
    Judged judged =
        judged(
            all(RELAY.formatted("1", "2"), RELAY.formatted("1", "2").replace("\"K\"", "\"L\"")),
            all(wires(), wire("W3", "BAT:+", "L:1"), wire("W4", "L:2", "BAT:-")));
    assertThat(judged.subjects()).containsExactlyInAnyOrder("devices/K.d", "devices/L.d");
  }

  @Test
  void blockingDiodeInTheFeedIsFineAndAPlainShortIsAnotherRulesMatter() {
    String diode =
        "\"D\": {\"elements\": {\"d\": {\"kind\": \"diode\", \"a\": \"1\", \"b\": \"2\"}}}";
    assertThat(
            judged(
                    all(diode, Bench.LAMP),
                    all(
                        wire("W1", "BAT:+", "D:1"),
                        wire("W2", "D:2", "LAMP:1"),
                        wire("W3", "LAMP:2", "BAT:-")))
                .messages())
        .isEmpty();
    assertThat(
            judged(diode, all(wire("W1", "BAT:+", "BAT:-"), wire("W2", "BAT:+", "D:1"))).messages())
        .isEmpty();
  }

  @Test
  void withoutASourceNoDiodeIsJudged() {
    Judged judged =
        Judged.of(
            new DiodeAcrossSupply(),
            "{\"format\": 1, \"sketch\": true, \"devices\": {" + RELAY.formatted("1", "2") + "}}");
    assertThat(judged.coverage().missing()).containsOnlyKeys("no source is described");
  }
}
