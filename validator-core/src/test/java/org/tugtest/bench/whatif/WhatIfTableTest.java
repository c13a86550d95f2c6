package org.tugtest.bench.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tugtest.network.Edge;
import org.tugtest.rule.Judged;

class WhatIfTableTest {
  /** Two lamps on one fuse and one earth, a pump on a relay with a fuse of its own. */
  private static final String CAR =
      """
      {"format": 1,
       "parts": {"fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}},
                 "housings": {"s": {"side": "socket", "family": "t1.5", "rows": [["1", "2"]]},
                              "p": {"side": "pin", "family": "t1.5", "rows": [["2", "1"]]}}},
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
         "ISO": {"elements": {"main": {"kind": "contact", "a": "1", "b": "2", "isolator": true}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}, "f2": {"kind": "fuse", "a": "in", "b": "2"}}},
         "E1": {"pins": {"m6": {"family": "stud-m6"}}},
         "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
         "K1": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                             "contact": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"}}},
         "L": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "R": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "PUMP": {"ports": {"plug": {"housing": "p"}}, "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
       "connectors": {"XP": {"housing": "s", "mates": "PUMP"}},
       "fitted": {"FB.f1": "f10", "FB.f2": "f10"},
       "wires": {
         "W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 6, "cutMm": 200},
         "W2": {"from": "ISO:2", "to": "FB:in", "areaMm2": 6, "cutMm": 200},
         "W3": {"from": "FB:1", "to": "SW:1", "areaMm2": 1, "cutMm": 200},
         "W4": {"from": "SW:2", "to": "L:1", "areaMm2": 1, "cutMm": 200},
         "W5": {"from": "L:1", "to": "R:1", "areaMm2": 1, "cutMm": 200},
         "W6": {"from": "L:2", "to": "E1:m6", "areaMm2": 1, "cutMm": 200},
         "W7": {"from": "R:2", "to": "E1:m6", "areaMm2": 1, "cutMm": 200},
         "W8": {"from": "E1:m6", "to": "BAT:-", "areaMm2": 6, "cutMm": 200},
         "W9": {"from": "SW:2", "to": "K1:86", "areaMm2": 1, "cutMm": 200},
         "W10": {"from": "K1:85", "to": "BAT:-", "areaMm2": 1, "cutMm": 200},
         "W11": {"from": "FB:2", "to": "K1:30", "areaMm2": 1, "cutMm": 200},
         "W12": {"from": "K1:87", "to": "XP:1", "areaMm2": 1, "cutMm": 200},
         "W13": {"from": "XP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200}},
       "states": {"on": {"set": {"ISO": "on", "SW": "on"}, "on": ["L", "R", "PUMP", "K1.coil"]},
                  "stopped": {"set": {"SW": "on"}}}}
      """;

  private static Map<String, String> table(String json) {
    return WhatIfTable.of(Judged.facts(Map.of(Judged.ROOT, json))).effects().stream()
        .collect(Collectors.toMap(effect -> effect.fault().text(), WhatIfTableTest::text));
  }

  private static String text(Effect effect) {
    return effect.states().stream()
        .map(
            in ->
                in.state()
                    + " lost "
                    + texts(in.lost())
                    + " dim "
                    + texts(in.dim())
                    + " live "
                    + texts(in.live()))
        .collect(Collectors.joining("; "));
  }

  private static List<String> texts(List<Edge.OfElement> loads) {
    return loads.stream().map(Edge::text).toList();
  }

  @Test
  void aFuseTakesWhatHangsOnItAndWhatItsRelayFeeds() {
    Map<String, String> table = table(CAR);
    assertThat(table.get("fuse FB.f1 blown"))
        .as("the coil of the pump's relay hangs on the lamps' fuse")
        .isEqualTo("on lost [L.led, PUMP.motor, R.led] dim [] live []");
    assertThat(table.get("fuse FB.f2 blown")).isEqualTo("on lost [PUMP.motor] dim [] live []");
  }

  @Test
  void aWireAPlugAndAnEarthTakeWhatReturnsThroughThem() {
    Map<String, String> table = table(CAR);
    assertThat(table.get("wire W5 broken")).isEqualTo("on lost [R.led] dim [] live []");
    assertThat(table.get("wire W10 broken")).isEqualTo("on lost [PUMP.motor] dim [] live []");
    assertThat(table.get("XP off PUMP")).isEqualTo("on lost [PUMP.motor] dim [] live []");
    assertThat(table.get("earth E1:m6 loose")).isEqualTo("on lost [L.led, R.led] dim [] live []");
    assertThat(table.get("wire W8 broken")).isEqualTo("on lost [L.led, R.led] dim [] live []");
  }

  @Test
  void aWeldedIsolatorLeavesLiveWhatShouldBeDead() {
    assertThat(table(CAR).get("isolator contact ISO.main welded"))
        .isEqualTo("stopped lost [] dim [] live [L.led, PUMP.motor, R.led]");
  }

  @Test
  void oneOfTwoParallelWiresTakesNothing() {
    String twice =
        CAR.replace(
            "\"W2\": {\"from\"",
            "\"W2B\": {\"from\": \"ISO:2\", \"to\": \"FB:in\", \"areaMm2\": 6, \"cutMm\": 200},"
                + " \"W2\": {\"from\"");
    assertThat(table(twice).get("wire W2 broken")).isEmpty();
    assertThat(table(CAR).get("wire W2 broken"))
        .isEqualTo("on lost [L.led, PUMP.motor, R.led] dim [] live []");
  }

  @Test
  void withoutASourceThereIsNoTable() {
    WhatIfTable table =
        WhatIfTable.of(
            Judged.facts(
                Map.of(
                    Judged.ROOT,
                    "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"A:1\","
                        + " \"to\": \"B:1\"}}}")));
    assertThat(table.effects()).isEmpty();
    assertThat(table.leftOut()).isEqualTo("the harness gives no source");
  }

  @Test
  void anIsolatorInARowWithAFuseIsWeldedAndNotOpened() {
    Map<String, String> table =
        table(
            """
            {"format": 1, "sketch": true,
             "devices": {
               "BAT": {"elements": {
                 "cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6},
                 "main": {"kind": "contact", "a": "+", "b": "mid", "isolator": true},
                 "f": {"kind": "fuse", "a": "mid", "b": "out", "ratingA": 10}}},
               "L": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}},
                     "boltedTo": {"1": "BAT:out", "2": "BAT:-"}}},
             "states": {"on": {"set": {"BAT": "on"}, "on": ["L"]}}}
            """);
    assertThat(table.get("fuse BAT.f blown")).isEqualTo("on lost [L.led] dim [] live []");
    assertThat(table.get("isolator contact BAT.main welded")).isEmpty();
  }
}
