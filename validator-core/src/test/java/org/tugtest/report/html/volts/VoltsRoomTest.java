package org.tugtest.report.html.volts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.benchmark.GeneratedHarness;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.html.circuits.CircuitsRoom;
import org.tugtest.rule.Judged;

class VoltsRoomTest {
  private static final String LAMPS =
      """
      {"format": 1,
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.001}}},
         "FAR": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 5}}},
         "NEAR": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "LOST": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
       "connectors": {"X1": {"housing": "p"}, "X2": {"housing": "s", "mates": "X1"}},
       "parts": {"housings": {"p": {"side": "pin", "rows": [["1", "2"]], "matesWith": ["s"]},
                              "s": {"side": "socket", "rows": [["1", "2"]]}}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "X1:1", "areaMm2": 0.5, "cutMm": 5000},
         "W2": {"from": "X2:1", "to": "FAR:1", "areaMm2": 0.5, "cutMm": 100},
         "W3": {"from": "FAR:2", "to": "BAT:-", "areaMm2": 0.5, "cutMm": 2000},
         "W4": {"from": "BAT:+", "to": "NEAR:1", "areaMm2": 1, "cutMm": 100},
         "W5": {"from": "NEAR:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100},
         "W6": {"from": "BAT:-", "to": "BAT:x", "areaMm2": 1, "cutMm": 100}}}
      """;

  private static Facts facts() {
    return Judged.facts(Map.of(Judged.ROOT, LAMPS));
  }

  @Test
  void putsTheWorstFirstAndToldApart() {
    Facts facts = facts();
    VoltsRoom room = VoltsRoom.of(facts, CircuitsRoom.of(facts).circuits());
    assertThat(room.unfed().shown()).containsExactly("LOST.bulb");
    List<VoltsRoom.Row> rows = room.loads().shown();
    assertThat(rows).extracting(VoltsRoom.Row::load).containsExactly("FAR.bulb", "NEAR.bulb");
    VoltsRoom.Row far = rows.get(0);
    // 5 A through 5.1 m and back through 2 m of 0.5 mm2, some 40 milliohm per metre at 40 °C.
    assertThat(far.over()).isTrue();
    assertThat(far.limit()).isEqualTo("500 mV");
    assertThat(far.tenths()).isEqualTo(10);
    assertThat(volts(far.supply())).isBetween(1.0, 1.2);
    assertThat(volts(far.back())).isBetween(0.35, 0.45);
    assertThat(rows.get(1).over()).isFalse();
    assertThat(room.states().shown()).hasSize(1);
    assertThat(room.states().shown().get(0).sources().shown().get(0))
        .startsWith("BAT.cell gives 6 A at 11.99 V");
    assertThat(room.states().shown().get(0).wanted()).isEqualTo(3);
    assertThat(room.states().shown().get(0).working()).isEqualTo(2);
  }

  private static double volts(String text) {
    double value = Double.parseDouble(text.substring(0, text.indexOf(' ')));
    return text.endsWith("mV") ? value / 1000 : value;
  }

  @Test
  void tellsWhatChangesWhenSomethingFails() {
    Facts facts = facts();
    WhatIfRoom room = WhatIfRoom.of(facts, CircuitsRoom.of(facts).circuits());
    assertThat(room.solved()).isTrue();
    assertThat(room.groups())
        .extracting(WhatIfRoom.Group::title)
        .containsExactly("A connector is unplugged", "A wire opens");
    WhatIfRoom.Loss plug = room.groups().get(0).losses().shown().get(0);
    assertThat(plug.by().shown()).containsExactly("X1 from X2");
    assertThat(plug.dead().shown()).extracting(WhatIfRoom.User::name).containsExactly("FAR.bulb");
    assertThat(plug.dead().shown()).extracting(WhatIfRoom.User::states).containsExactly("");
    assertThat(room.groups().get(1).losses().shown())
        .extracting(loss -> loss.by().shown())
        .containsExactly(List.of("W1", "W2", "W3"), List.of("W4", "W5"));
  }

  /** The lamp FAR is on in two states and gets its volts another way in one of them. */
  @Test
  void namesTheStatesWhereTheseAreNotAll() {
    String more =
        LAMPS
            .replace(
                "\"LOST\": {",
                "\"SW\": {\"elements\": {\"c\": {\"kind\": \"contact\", \"a\": \"1\", \"b\":"
                    + " \"2\"}}}, \"LOST\": {")
            .replace(
                "\"wires\": {",
                "\"states\": {\"day\": {\"on\": [\"FAR\"]}, \"night\": {\"set\": {\"SW\": \"on\"},"
                    + " \"on\": [\"FAR\"]}}, \"wires\": {\"W7\": {\"from\": \"BAT:+\", \"to\":"
                    + " \"SW:1\", \"areaMm2\": 1, \"cutMm\": 100}, \"W8\": {\"from\": \"SW:2\","
                    + " \"to\": \"FAR:1\", \"areaMm2\": 1, \"cutMm\": 100},");
    WhatIfRoom room = WhatIfRoom.of(Judged.facts(Map.of(Judged.ROOT, more)), List.of());
    WhatIfRoom.Loss plug = room.groups().get(0).losses().shown().get(0);
    assertThat(plug.dead().shown()).containsExactly(new WhatIfRoom.User("FAR.bulb", 0, "day"));
  }

  @Test
  void countsEveryWireOfTheSampleOnce() {
    Facts facts = SampleCar.facts();
    WhatIfRoom room = WhatIfRoom.of(facts, List.of());
    WhatIfRoom.Group wires =
        room.groups().stream()
            .filter(group -> group.title().equals("A wire opens"))
            .findFirst()
            .orElseThrow();
    int told = wires.losses().shown().stream().mapToInt(loss -> loss.by().count()).sum();
    assertThat(told + wires.idle()).isEqualTo(facts.harness().wires().size());
    assertThat(wires.losses().shown())
        .allMatch(loss -> loss.dead().shown().stream().allMatch(user -> user.circuit() == 0));
  }

  @Test
  void saysWhenTheHarnessIsTooLargeToSolve() {
    String text = GeneratedHarness.of(WhatIfRoom.MOST_SOLVED / 6 + 1, 7);
    WhatIfRoom room = WhatIfRoom.of(Judged.facts(Map.of(Judged.ROOT, text)), List.of());
    assertThat(room.solved()).isFalse();
    assertThat(room.whyNot()).endsWith(" wires in 6 states are many");
    assertThat(room.groups()).hasSize(2);
    assertThat(room.groups().get(1).losses().shown()).hasSize(WhatIfRoom.MOST_LOSSES);
  }
}
