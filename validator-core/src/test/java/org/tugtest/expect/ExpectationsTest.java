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

  private static Verdict judgeAlone(String text) {
    return Expectations.judge(Judged.facts(Map.of(Judged.ROOT, text))).get(0);
  }

  @Test
  void aChangeOverRelayIsNoWayFromOneOfItsSidesToTheOther() {
    String text =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10},
                               "f2": {"kind": "fuse", "a": "in", "b": "2", "ratingA": 10}}},
           "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                              "no": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"},
                              "nc": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}},
           "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "watts": 5}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "FB:1", "to": "LAMP:1"},
                   "W3": {"from": "FB:2", "to": "K:87a"}, "W4": {"from": "K:87", "to": "LAMP:%s"},
                   "W5": {"from": "LAMP:2", "to": "BAT:-"}%s},
         "expectations": {"e": {"that": "fused-by", "at": "LAMP.led", "fuse": "FB.f1"}}}
        """;
    assertThat(said(judgeAlone(text.formatted("1", ""))))
        .isEqualTo("HOLDS: LAMP.led is fed through FB.f1 alone");
    assertThat(
            said(
                judgeAlone(
                    text.formatted("1", ", \"W6\": {\"from\": \"FB:2\", \"to\": \"K:30\"}"))))
        .isEqualTo(
            "FAILS: LAMP.led is also fed past FB.f1: BAT:+ -W1- FB:in -FB.f2- FB:2 -W6- K:30 -K.no-"
                + " K:87 -W4- LAMP:1");
  }

  @Test
  void whatShouldBeDeadNamesTheWayThatFeedsIt() {
    String text =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 48}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
           "PRE": {"elements": {"r": {"kind": "load", "a": "1", "b": "2", "ohms": 100, "use": "free"}}},
           "MC": {"elements": {"in": {"kind": "load", "a": "1", "b": "2", "ohms": 4700}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "MC:1"},
                   "W3": {"from": "BAT:+", "to": "PRE:1"}, "W4": {"from": "PRE:2", "to": "MC:1"},
                   "W5": {"from": "MC:2", "to": "BAT:-"}},
         "states": {"stop": {}},
         "expectations": {"e": {"that": "dead", "at": "%s", "in": "stop"}}}
        """;
    assertThat(said(judgeAlone(text.formatted("MC.in"))))
        .isEqualTo(
            "FAILS: MC.in has 47.00 V in state stop, less than 0.5 V wanted; fed by BAT:+ -W3-"
                + " PRE:1 -PRE.r- PRE:2 -W4- MC:1");
    assertThat(said(judgeAlone(text.formatted("MC:1"))))
        .endsWith("less than 0.5 V wanted; fed by BAT:+ -W3- PRE:1 -PRE.r- PRE:2 -W4- MC:1");
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

  /** A switched lamp on a fuse, and a node layout with two ways. */
  private static final String NIGHT =
      """
      {"format": 1,
       "parts": {"fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}},
                 "wires": {"w": {"areaMm2": 50, "maxC": 125, "milliohmPerM": 0.0001}}},
       "devices": {
         "BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.000001}}},
         "FB": {"at": "a", "elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
         "SW": {"at": "a", "elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
         "LAMP": {"at": "b", "elements": {"led": {"kind": "load", "a": "1", "b": "2", "ohms": 1000, "minV": 10}}}},
       "fitted": {"FB.f1": "f10"},
       "layout": {"nodes": {"a": {}, "b": {}, "c": {}},
                  "segments": {"ab": {"from": "a", "to": "b", "lengthMm": 500},
                               "ac": {"from": "a", "to": "c", "lengthMm": 500},
                               "cb": {"from": "c", "to": "b", "lengthMm": 500}}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "part": "w"},
         "W2": {"from": "FB:1", "to": "SW:1", "part": "w"},
         "W3": {"from": "SW:2", "to": "LAMP:1", "part": "w"},
         "W4": {"from": "LAMP:2", "to": "BAT:-", "part": "w"%s}},
       "states": {"off": {}, "night": {"set": {"SW": "on"}, "on": ["LAMP"]}},
       "expectations": {"e": %s}}
      """;

  private static Verdict atNight(String via, String expectation) {
    List<Verdict> verdicts =
        Expectations.judge(Judged.facts(Map.of(Judged.ROOT, NIGHT.formatted(via, expectation))));
    assertThat(verdicts).hasSize(1);
    return verdicts.get(0);
  }

  @Test
  void fedWantsTheVoltsThatTheLoadWorksWith() {
    assertThat(said(atNight("", "{\"that\": \"fed\", \"at\": \"LAMP.led\", \"in\": \"night\"}")))
        .isEqualTo("HOLDS: LAMP.led is fed in state night");
    assertThat(
            said(
                atNight(
                    "",
                    "{\"that\": \"fed\", \"at\": \"LAMP.led\", \"in\": \"night\", \"minV\":"
                        + " 12.5}")))
        .startsWith("FAILS: LAMP.led has ")
        .endsWith(" V in state night, at least 12.5 V wanted");
    assertThat(said(atNight("", "{\"that\": \"fed\", \"at\": \"LAMP.led\", \"in\": \"off\"}")))
        .isEqualTo("FAILS: LAMP.led has 0.00 V in state off, at least 10 V wanted");
    assertThat(said(atNight("", "{\"that\": \"fed\", \"at\": \"LAMP:1\", \"in\": \"night\"}")))
        .isEqualTo("HOLDS: LAMP:1 is fed in state night");
  }

  @Test
  void deadWantsNoVolts() {
    assertThat(said(atNight("", "{\"that\": \"dead\", \"at\": \"LAMP\", \"in\": \"off\"}")))
        .isEqualTo("HOLDS: LAMP is dead in state off");
    assertThat(said(atNight("", "{\"that\": \"dead\", \"at\": \"SW:1\", \"in\": \"off\"}")))
        .isEqualTo("FAILS: SW:1 has 12.00 V in state off, less than 0.5 V wanted");
    assertThat(atNight("", "{\"that\": \"dead\", \"at\": \"LAMP.led\", \"in\": \"no\"}").answer())
        .isEqualTo(Verdict.Answer.NOT_JUDGED);
  }

  @Test
  void joinedInAStateGoesThroughClosedContactsAndFuses() {
    String joined = "{\"that\": \"joined\", \"points\": [\"BAT:+\", \"LAMP:1\"], \"in\": \"%s\"}";
    assertThat(said(atNight("", joined.formatted("night")))).startsWith("HOLDS");
    assertThat(said(atNight("", joined.formatted("off"))))
        .isEqualTo("FAILS: LAMP:1 is not joined to BAT:+");
    String apart = "{\"that\": \"apart\", \"points\": [\"BAT:+\", \"LAMP:1\"], \"in\": \"night\"}";
    assertThat(said(atNight("", apart)))
        .isEqualTo(
            "FAILS: BAT:+ and LAMP:1 are joined: BAT:+ -W1- FB:in -FB.f1- FB:1 -W2- SW:1"
                + " -SW.contact- SW:2 -W3- LAMP:1");
  }

  @Test
  void routesApartShareNoSegmentNoStudAndNoConnector() {
    String apart = "{\"that\": \"routes-apart\", \"wires\": [[\"W3\"], [\"W4\"]]}";
    assertThat(said(atNight("", apart))).isEqualTo("FAILS: W4 and W3 share segment ab");
    assertThat(said(atNight(", \"via\": [\"c\"]", apart)))
        .isEqualTo("HOLDS: they share no segment, connector, splice or stud");
    assertThat(said(atNight("", "{\"that\": \"routes-apart\", \"wires\": [[\"W1\"], [\"W2\"]]}")))
        .isEqualTo("HOLDS: they share no segment, connector, splice or stud");
  }

  @Test
  void aFileThatCannotBeReadLeavesOpenWhatMayStandInIt() {
    String root =
        "{\"format\": 1, \"sketch\": true, \"uses\": [\"w.json\"], \"wires\": {\"W1\": {\"from\":"
            + " \"A:1\", \"to\": \"B:1\"}, \"W2\": {\"from\": \"A:2\", \"to\": \"B:2\"}},"
            + " \"expectations\": {\"e\": {\"that\": \"%s\", \"points\": [\"A:1\", \"%s\"]}}}";
    Map<String, String> joined =
        Map.of(Judged.ROOT, root.formatted("joined", "B:2"), "w.json", "{");
    assertThat(Expectations.judge(Judged.facts(joined)).get(0).answer())
        .isEqualTo(Verdict.Answer.NOT_JUDGED);
    Map<String, String> apart = Map.of(Judged.ROOT, root.formatted("apart", "B:1"), "w.json", "{");
    assertThat(Expectations.judge(Judged.facts(apart)).get(0).answer())
        .isEqualTo(Verdict.Answer.FAILS);
  }
}
