package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.rule.Judged;

class RelayChattersTest {
  private static final String BATTERY =
      """
      "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": %s}}}
      """;

  private static Judged judged(String devices, String wires, String more) {
    return Judged.of(
        new RelayChatters(),
        "{\"format\": 1, \"sketch\": true, \"parts\": {\"wires\": {\"w\": {\"areaMm2\": 16,"
            + " \"maxC\": 125, \"milliohmPerM\": 0.000001}}}, \"defaults\": {\"crimpMilliohm\": 0},"
            + " \"devices\": {"
            + devices
            + "}, \"wires\": {"
            + wires
            + "}"
            + more
            + "}");
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"w\", \"cutMm\": 10}"
        .formatted(id, from, to);
  }

  /** The contact puts a load across the supply: 12 V behind 1 ohm and 1 ohm leave 6 V. */
  private static Judged weak(String dropOut) {
    return judged(
        BATTERY.formatted("1")
            + """
            , "K": {"elements": {
                "coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 1000, "pullInV": 8, "dropOutV": %s},
                "make": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"}}},
              "HEAT": {"elements": {"wire": {"kind": "load", "a": "1", "b": "2", "ohms": 1}}}
            """
                .formatted(dropOut),
        String.join(
            ", ",
            wire("W1", "BAT:+", "K:86"),
            wire("W2", "K:85", "BAT:-"),
            wire("W3", "BAT:+", "K:30"),
            wire("W4", "K:87", "HEAT:1"),
            wire("W5", "HEAT:2", "BAT:-")),
        "");
  }

  @Test
  void aCoilThatIsHeldJustEnoughIsFine() {
    assertThat(weak("5.9").findings()).isEmpty();
    assertThat(weak("5.9").coverage().judged()).isEqualTo(1);
  }

  @Test
  void aCoilThatIsNotHeldChatters() {
    assertThat(weak("6.1").messages())
        .containsExactly(
            "coil K.coil comes to no rest in state as drawn: none pulled, then K.coil pulled, and"
                + " again");
    assertThat(weak("6.1").findings().get(0).basis()).isEqualTo(Basis.GIVEN);
  }

  private static String buzzer(String id) {
    return """
    "%s": {"elements": {
      "coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
      "break": {"kind": "contact", "a": "30", "b": "86", "coil": "coil", "rest": "closed"}}}
    """
        .formatted(id);
  }

  @Test
  void twoBuzzersAreTwoFindingsInEveryStateTheyBuzz() {
    Judged judged =
        judged(
            BATTERY.formatted("0.01") + ", " + buzzer("K1") + ", " + buzzer("K2"),
            String.join(
                ", ",
                wire("W1", "BAT:+", "K1:30"),
                wire("W2", "BAT:+", "K2:30"),
                wire("W3", "BAT:-", "K1:85"),
                wire("W4", "BAT:-", "K2:85")),
            ", \"states\": {\"one\": {}, \"two\": {}, \"held\": {\"set\": {\"K1.break\": \"off\","
                + " \"K2.break\": \"off\"}}}");
    assertThat(judged.subjects()).containsExactly("devices/K1.coil", "devices/K2.coil");
    assertThat(judged.messages().get(0))
        .startsWith("coil K1.coil comes to no rest in states one and two");
    assertThat(judged.findings().get(0).basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void withoutCoilsThereIsNothingToJudge() {
    assertThat(judged(BATTERY.formatted("0.01"), "", "").coverage().subjects()).isZero();
  }
}
