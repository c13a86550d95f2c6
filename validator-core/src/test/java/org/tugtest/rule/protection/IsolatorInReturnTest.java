package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class IsolatorInReturnTest {
  private static String pole(String id) {
    return "\"%s\": {\"elements\": {\"pole\": {\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\", \"isolator\": true}}}"
        .formatted(id);
  }

  private static Judged judged(String devices, String wires) {
    return Bench.judged(new IsolatorInReturn(), devices, wires);
  }

  @Test
  void poleInThePlusLeadIsFine() {
    Judged judged =
        judged(
            all(LAMP, pole("ISO")),
            all(
                wire("W1", "BAT:+", "ISO:1"),
                wire("W2", "ISO:2", "LAMP:1"),
                wire("W3", "LAMP:2", "BAT:-")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void onlyPoleInTheEarthLeadIsFound() {
    Judged judged =
        judged(
            all(LAMP, pole("ISO")),
            all(
                wire("W1", "BAT:+", "LAMP:1"),
                wire("W2", "LAMP:2", "ISO:1"),
                wire("W3", "ISO:2", "BAT:-")));
    assertThat(judged.messages())
        .containsExactly(
            "isolator contact ISO.pole opens the earth lead alone; with it open every feed wire"
                + " stays live");
    assertThat(judged.subjects()).containsExactly("devices/ISO.pole");
  }

  @Test
  void poleInEachLeadIsFine() {
    Judged judged =
        judged(
            all(LAMP, pole("ISO"), pole("ISO2")),
            all(
                wire("W1", "BAT:+", "ISO2:1"),
                wire("W2", "ISO2:2", "LAMP:1"),
                wire("W3", "LAMP:2", "ISO:1"),
                wire("W4", "ISO:2", "BAT:-")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void poleThatIsJoinedToNothingIsNotJudged() {
    assertThat(judged(pole("ISO"), wire("W1", "A:1", "ISO:1")).coverage().missing())
        .containsOnlyKeys("no source leads to it");
    assertThat(judged(LAMP, wire("W1", "BAT:+", "LAMP:1")).coverage().subjects()).isZero();
  }
}
