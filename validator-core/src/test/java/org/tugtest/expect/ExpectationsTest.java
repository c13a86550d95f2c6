package org.tugtest.expect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

/** Each kind of expectation: true, false, and what cannot be judged. */
class ExpectationsTest {
  /** A battery, two fuses, a load on fuse 1, a change of ways through a splice, and a bus. */
  private static final String CAR =
      """
      {"format": 1,
       "parts": {"fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}}},
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"},
                             "f2": {"kind": "fuse", "a": "in", "b": "2"},
                             "f3": {"kind": "fuse", "a": "in", "b": "3"}}},
         "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}},
         "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
       "fitted": {"FB.f1": "f10", "FB.f2": "f10"},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 4},
         "W2": {"from": "FB:1", "to": "PUMP:1", "areaMm2": 1},
         "W3": {"from": "PUMP:2", "to": "BAT:-", "areaMm2": 1},
         "W4": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1}%s},
       "expectations": {"e": %s}}
      """;

  private static Verdict judge(String wires, String expectation) {
    List<Verdict> verdicts =
        Expectations.judge(Judged.facts(Map.of(Judged.ROOT, CAR.formatted(wires, expectation))));
    assertThat(verdicts).hasSize(1);
    return verdicts.get(0);
  }

  private static String said(Verdict verdict) {
    return verdict.answer() + ": " + verdict.message();
  }

  @Test
  void joinedFollowsWiresAloneAndNotFuses() {
    assertThat(said(judge("", "{\"that\": \"joined\", \"points\": [\"BAT:+\", \"FB:in\"]}")))
        .isEqualTo("HOLDS: BAT:+ and FB:in are one net");
    assertThat(
            said(judge("", "{\"that\": \"joined\", \"points\": [\"BAT:+\", \"FB:in\", \"FB:1\"]}")))
        .isEqualTo("FAILS: FB:1 is not joined to BAT:+");
  }

  @Test
  void apartNamesTheWayThatJoins() {
    assertThat(said(judge("", "{\"that\": \"apart\", \"points\": [\"BAT:+\", \"BAT:-\"]}")))
        .startsWith("HOLDS");
    assertThat(
            said(
                judge(
                    "", "{\"that\": \"apart\", \"points\": [\"BAT:+\", \"PUMP:2\", \"LAMP:2\"]}")))
        .isEqualTo("FAILS: PUMP:2 and LAMP:2 are joined: PUMP:2 -W3- BAT:- -W4- LAMP:2");
  }

  @Test
  void fusedByWantsThatFuseAndNoOtherWay() {
    String pump = "{\"that\": \"fused-by\", \"at\": \"PUMP.motor\", \"fuse\": \"FB.f1\"}";
    assertThat(said(judge("", pump))).isEqualTo("HOLDS: PUMP.motor is fed through FB.f1 alone");
    String second = ", \"W5\": {\"from\": \"FB:2\", \"to\": \"PUMP:1\", \"areaMm2\": 1}";
    assertThat(said(judge(second, pump)))
        .isEqualTo(
            "FAILS: PUMP.motor is also fed past FB.f1:"
                + " BAT:+ -W1- FB:in -FB.f2- FB:2 -W5- PUMP:1");
    String lamp = "{\"that\": \"fused-by\", \"at\": \"LAMP.led\", \"fuse\": \"FB.f3\"}";
    String way = ", \"W5\": {\"from\": \"FB:3\", \"to\": \"LAMP:1\", \"areaMm2\": 1}";
    assertThat(said(judge(way, lamp)))
        .isEqualTo("FAILS: nothing feeds LAMP.led: no fuse is fitted in FB.f3");
    assertThat(said(judge("", "{\"that\": \"fused-by\", \"at\": \"FB:1\", \"fuse\": \"FB.f1\"}")))
        .isEqualTo("HOLDS: FB:1 is fed through FB.f1 alone");
  }

  @Test
  void whatNamesNothingIsNotJudged() {
    assertThat(
            List.of(
                judge("", "{\"that\": \"joined\", \"points\": [\"BAT:+\", \"FB:9\"]}"),
                judge("", "{\"that\": \"fused-by\", \"at\": \"PUMP.motor\", \"fuse\": \"FB.f9\"}"),
                judge(
                    "",
                    "{\"that\": \"fused-by\", \"at\": \"PUMP.motor\", \"fuse\": \"PUMP.motor\"}"),
                judge("", "{\"that\": \"fused-by\", \"at\": \"PUMP.no\", \"fuse\": \"FB.f1\"}")))
        .extracting(Verdict::answer)
        .containsOnly(Verdict.Answer.NOT_JUDGED);
  }

  @Test
  void theReasonIsSaidWhenItFails() {
    assertThat(
            said(
                judge(
                    "",
                    "{\"that\": \"apart\", \"points\": [\"BAT:-\", \"LAMP:2\"], \"reason\":"
                        + " \"event rules\"}")))
        .isEqualTo("FAILS: BAT:- and LAMP:2 are joined: BAT:- -W4- LAMP:2 (event rules)");
  }
}
