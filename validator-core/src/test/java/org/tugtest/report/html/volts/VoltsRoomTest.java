package org.tugtest.report.html.volts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
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
  void tellsWhatIsLostWhenSomethingOpens() {
    Facts facts = facts();
    WhatIfRoom room = WhatIfRoom.of(facts, CircuitsRoom.of(facts).circuits());
    assertThat(room.plugs().shown()).hasSize(1);
    assertThat(room.plugs().shown().get(0).by().shown()).containsExactly("X1 from X2");
    assertThat(room.plugs().shown().get(0).users().shown())
        .extracting(WhatIfRoom.User::name)
        .containsExactly("FAR.bulb");
    assertThat(room.wires().shown())
        .extracting(loss -> loss.by().shown())
        .containsExactly(List.of("W1", "W2", "W3"), List.of("W4", "W5"));
  }

  @Test
  void countsEveryWireOfTheSampleOnce() {
    Facts facts = SampleCar.facts();
    WhatIfRoom room = WhatIfRoom.of(facts, List.of());
    int told =
        room.wires().shown().stream().mapToInt(loss -> loss.by().count()).sum() + room.idle();
    assertThat(told).isEqualTo(facts.harness().wires().size());
    assertThat(room.wires().shown())
        .allMatch(loss -> loss.users().shown().stream().allMatch(user -> user.circuit() == 0));
  }
}
