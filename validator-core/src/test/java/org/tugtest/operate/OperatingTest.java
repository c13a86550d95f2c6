package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.network.Edge;

class OperatingTest {
  private static final String BATTERY =
      """
      "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                    "volts": 12.6, "ohms": 0.01}}}
      """;

  /** Ohms of W1, W2 and W3 as warm as they are; W3 is 10 mm long. */
  private static double wires(Operated lamp, OperatingPoint point) {
    double ohms = 0;
    for (String id : List.of("W1", "W2", "W3")) {
      double celsius = point.celsius(((Edge.OfWire) lamp.edge(id)).wire());
      assertThat(celsius).isBetween(20.0, 30.0);
      ohms += 0.185 * (1 + 0.00393 * (celsius - 20)) / (id.equals("W3") ? 1000 : 1);
    }
    return ohms;
  }

  private static double across(Operated lamp, String... wires) {
    double volts = 0;
    for (String wire : wires) {
      volts += lamp.only().across(lamp.edge(wire));
    }
    return volts;
  }

  /** W1 and W2 are 18.5 mohm/m for 10 m: 0.185 ohm each at 20 °C. */
  private static Operated lamp(String load, String... more) {
    String[] sections = new String[2 + more.length];
    sections[0] =
        """
        "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 105, "milliohmPerM": 18.5}}},
        "devices": {%s,
          "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
          "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", %s}}}}
        """
            .formatted(BATTERY, load);
    sections[1] =
        """
        "wires": {
          "W1": {"from": "BAT:+", "to": "SW:1", "part": "w", "cutMm": 10000},
          "W2": {"from": "LAMP:2", "to": "BAT:-", "part": "w", "cutMm": 10000},
          "W3": {"from": "SW:2", "to": "LAMP:1", "part": "w", "cutMm": 10}}
        """;
    System.arraycopy(more, 0, sections, 2, more.length);
    return Operated.of(sections);
  }

  @Test
  void oneLampAsDrawn() {
    Operated lamp = lamp("\"ohms\": 5");
    OperatingPoint point = lamp.only();
    double amps = 12.6 / (0.01 + wires(lamp, point) + 5);
    assertThat(point.state()).isEqualTo("as drawn");
    assertThat(point.amps(lamp.edge("W1"))).isCloseTo(amps, within(1e-12));
    assertThat(point.amps(lamp.edge("SW.contact"))).isCloseTo(amps, within(1e-12));
    assertThat(point.across(lamp.edge("LAMP.bulb"))).isCloseTo(5 * amps, within(1e-12));
    assertThat(point.volts(lamp.at("LAMP:2")).orElseThrow())
        .isCloseTo(12.6 - 0.01 * amps - 5 * amps - across(lamp, "W1", "W3"), within(1e-12));
    assertThat(point.volts(lamp.at("BAT:-"))).hasValue(0);
    assertThat(point.watts(lamp.edge("BAT.cell")))
        .isCloseTo(-amps * (12.6 - 0.01 * amps), within(1e-10));
    assertThat(point.wanted(lamp.element("LAMP.bulb"))).isTrue();
    assertThat(point.draws(lamp.element("LAMP.bulb"))).isTrue();
    assertThat(point.closed(lamp.element("SW.contact"))).isTrue();
    assertThat(point.troubles()).isEmpty();
  }

  @Test
  void aSwitchInItsFirstPositionIsOpen() {
    Operated lamp =
        lamp(
            "\"watts\": 35",
            "\"states\": {\"off\": {}, \"on\": {\"set\": {\"SW\": \"on\"}, \"on\": [\"LAMP\"]}}");
    OperatingPoint off = lamp.in("off");
    assertThat(off.closed(lamp.element("SW.contact"))).isFalse();
    assertThat(off.volts(lamp.at("LAMP:1")).orElseThrow()).isEqualTo(0);
    assertThat(off.volts(lamp.at("SW:1")).orElseThrow()).isEqualTo(12.6);
    assertThat(off.draws(lamp.element("LAMP.bulb"))).isFalse();
    assertThat(off.wanted(lamp.element("LAMP.bulb"))).isFalse();
    OperatingPoint on = lamp.in("on");
    double volts = on.across(lamp.edge("LAMP.bulb"));
    assertThat(volts * on.amps(lamp.edge("LAMP.bulb"))).isCloseTo(35, within(1e-9));
    double ohms = 0.01 + wires(lamp, on);
    assertThat(volts + ohms * 35 / volts).isCloseTo(12.6, within(1e-9));
  }

  @Test
  void aWireWithoutLengthIsSaidToBeAStandIn() {
    Operated known = lamp("\"ohms\": 5");
    assertThat(known.only().rests(known.at("BAT:+")).standIns()).isEmpty();
    Operated bare =
        Operated.of(
            "\"devices\": {%s, \"L\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"ohms\": 5}}}}"
                .formatted(BATTERY),
            "\"wires\": {\"W1\": {\"from\": \"BAT:+\", \"to\": \"L:1\", \"areaMm2\": 1},"
                + " \"W2\": {\"from\": \"L:2\", \"to\": \"BAT:-\"}}");
    OperatingPoint point = bare.only();
    assertThat(point.resistance(bare.edge("W1")).missing()).isEqualTo("its length");
    assertThat(point.resistance(bare.edge("W2")).missing()).isEqualTo("its length and area");
    List<Edge> standIns = point.rests(bare.at("BAT:+")).standIns();
    assertThat(standIns.stream().map(Edge::text)).containsExactly("W1", "W2");
    assertThat(point.across(bare.edge("L.l"))).isCloseTo(12.6 * 5 / 5.01, within(1e-12));
  }

  @Test
  void nothingIsLiveWithoutASource() {
    Operated dead =
        Operated.of("\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"areaMm2\": 1}}");
    assertThat(dead.only().powered(dead.at("A:1"))).isFalse();
    assertThat(dead.only().amps(dead.edge("W1"))).isZero();
  }
}
