package org.tugtest.report.html.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.report.html.SampleCar;
import org.tugtest.rule.Judged;

class ProtectionRoomTest {
  private static final String PUMP =
      """
      {"format": 1,
       "parts": {"wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}, "w4": {"areaMm2": 4, "maxC": 125}},
                 "fuses": {"m10": {"ratingA": 10, "style": "blade-mini"},
                           "odd": {"ratingA": 10, "style": "glass tube"}}},
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.01}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}, "f2": {"kind": "fuse", "a": "in", "b": "2"}}},
         "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5, "inrushA": 20, "inrushS": 0.2}}},
         "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
       "fitted": {"FB.f1": "m10", "FB.f2": "odd"},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "part": "w4", "cutMm": 100},
         "W2": {"from": "FB:1", "to": "PUMP:1", "part": "w1.0", "cutMm": 2000},
         "W3": {"from": "PUMP:2", "to": "BAT:-", "part": "w4", "cutMm": 2000},
         "W4": {"from": "FB:2", "to": "LAMP:1", "part": "w1.0", "cutMm": 2000},
         "W5": {"from": "LAMP:2", "to": "BAT:-", "part": "w1.0", "cutMm": 2000}}}
      """;

  private static ProtectionRoom room() {
    return ProtectionRoom.of(Judged.facts(Map.of(Judged.ROOT, PUMP)));
  }

  @Test
  void chartsEachFuseWhoseTimesAreKnown() {
    assertThat(room().charts().shown()).hasSize(1);
    assertThat(room().unknown().shown()).containsExactly("FB.f2");
  }

  @Test
  void putsTheWeakestWireFirstBothWays() {
    ProtectionChart chart = room().charts().shown().get(0);
    assertThat(chart.rows())
        .extracting(ProtectionChart.Row::name)
        .containsExactly("fuse, latest", "fuse, earliest", "A", "B");
    assertThat(chart.rows().get(2).what()).startsWith("W2: 1 mm² to 175 °C, lasting ");
    assertThat(chart.rows().get(3).what()).startsWith("W3: 4 mm² to 175 °C, lasting ");
    // The table of blade fuses: at 200 % they open within 5 s.
    assertThat(chart.heads().get(1)).isEqualTo("20 A (200 %)");
    assertThat(chart.rows().get(0).times().get(1)).isEqualTo("5 s");
  }

  @Test
  void marksLoadInrushAndShorts() {
    ProtectionChart chart = room().charts().shown().get(0);
    assertThat(chart.marks())
        .extracting(ProtectionChart.Mark::kind)
        .containsExactly("load", "least", "most", "inrush");
    assertThat(chart.marks().get(0).x()).isLessThan(chart.marks().get(1).x());
    assertThat(chart.marks().get(1).x()).isLessThan(chart.marks().get(2).x());
    assertThat(chart.marks().get(3).text()).isEqualTo("inrush of PUMP.motor");
  }

  @Test
  void standsForEverWhatCoolingTakesAway() {
    // What begins at its class temperature and may rise 50 K carries more than its ampacity for
    // ever.
    ProtectionChart chart = room().charts().shown().get(0);
    assertThat(chart.rows().get(3).times().get(0)).isEqualTo("for ever");
  }

  @Test
  void keepsAxesInOrder() {
    Axes axes = Axes.of(3, 600);
    assertThat(axes.leastA()).isEqualTo(1);
    assertThat(axes.greatestA()).isEqualTo(1000);
    assertThat(axes.x(1)).isEqualTo(Axes.LEFT);
    assertThat(axes.x(1000)).isEqualTo(Axes.LEFT + Axes.WIDTH);
    assertThat(axes.x(30)).isBetween(axes.x(10), axes.x(100));
    assertThat(axes.y(1e9)).isEqualTo(Axes.TOP);
    assertThat(axes.y(0)).isEqualTo(Axes.TOP + Axes.HEIGHT);
    assertThat(axes.y(10)).isLessThan(axes.y(1));
  }

  @Test
  void chartsTheSample() {
    ProtectionRoom room = ProtectionRoom.of(SampleCar.facts());
    assertThat(room.charts().shown()).hasSizeGreaterThan(20);
    assertThat(room.charts().shown()).allMatch(chart -> !chart.band().isEmpty());
  }
}
