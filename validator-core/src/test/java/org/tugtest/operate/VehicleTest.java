package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tugtest.solve.Trouble;

/** Circuits that every vehicle has. Wires have no resistance unless a test gives them some. */
class VehicleTest {
  private static final String PARTS =
      "\"parts\": {\"wires\": {\"w\": {\"areaMm2\": 16, \"maxC\": 105, \"milliohmPerM\": 0.001}}}";
  private static final String BATTERY =
      """
      "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6,
                                    "ohms": 0.01, "chargeOhms": 0.1}}}
      """;

  private static String wires(String... ends) {
    StringBuilder json = new StringBuilder("\"wires\": {");
    for (int i = 0; i < ends.length; i += 2) {
      json.append(i == 0 ? "" : ", ")
          .append(
              "\"W%d\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"w\", \"cutMm\": 100}"
                  .formatted(i / 2 + 1, ends[i], ends[i + 1]));
    }
    return json.append('}').toString();
  }

  /** An alternator with its charge lamp: earthed by the regulator while it stands still. */
  private static final String ALTERNATOR =
      """
      "ALT": {"positions": ["still", "turning"], "elements": {
        "gen": {"kind": "source", "plus": "w", "minus": "case", "volts": 15.1, "ohms": 0.005,
                "maxA": 70, "generator": true, "selfLimiting": true},
        "rectifier": {"kind": "diode", "a": "w", "b": "B+"},
        "field": {"kind": "load", "a": "61", "b": "case", "ohms": 4, "use": "free"},
        "trio": {"kind": "diode", "a": "w", "b": "61"}}}
      """;

  private static Operated charging(String states) {
    return Operated.of(
        PARTS,
        "\"devices\": {"
            + BATTERY
            + ", "
            + ALTERNATOR
            + """
            , "LAMP": {"elements": {"lamp": {"kind": "load", "a": "15", "b": "61", "watts": 2,
                                             "atVolts": 12}}},
              "LOADS": {"elements": {"r": {"kind": "load", "a": "30", "b": "31", "ohms": 0.5}}}}
            """,
        wires(
            "BAT:+",
            "ALT:B+",
            "BAT:-",
            "ALT:case",
            "BAT:+",
            "LAMP:15",
            "LAMP:61",
            "ALT:61",
            "BAT:+",
            "LOADS:30",
            "BAT:-",
            "LOADS:31"),
        "\"states\": {" + states + "}");
  }

  @Test
  void aChargeLampGlowsWhileTheAlternatorStandsStill() {
    Operated car =
        charging(
            "\"ignition\": {\"on\": [\"LAMP\"]},"
                + " \"running\": {\"set\": {\"ALT\": \"turning\"}, \"running\": [\"ALT\"]}");
    OperatingPoint still = car.in("ignition");
    assertThat(still.amps(car.edge("LAMP.lamp"))).isCloseTo(0.16, within(0.01));
    assertThat(still.amps(car.edge("ALT.gen"))).isZero();
    assertThat(still.amps(car.edge("ALT.rectifier"))).isZero();
    OperatingPoint turning = car.in("running");
    assertThat(Math.abs(turning.across(car.edge("LAMP.lamp")))).isLessThan(0.5);
    assertThat(turning.amps(car.edge("ALT.trio"))).isPositive();
  }

  @Test
  void aBatteryIsChargedThroughItsOwnResistanceForThat() {
    Operated car = charging("\"running\": {\"running\": [\"ALT\"]}");
    OperatingPoint point = car.in("running");
    double volts = point.across(car.edge("BAT.cell"));
    assertThat(point.amps(car.edge("BAT.cell")))
        .isPositive()
        .isCloseTo((volts - 12.6) / 0.1, within(1e-9));
    assertThat(point.amps(car.edge("BAT.cell"))).isLessThan(20);
    assertThat(point.watts(car.edge("ALT.gen"))).isNegative();
  }

  @Test
  void anAlternatorGivesNoMoreThanItsMost() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {"
                + BATTERY
                + ", "
                + ALTERNATOR
                + ", \"LOADS\": {\"elements\": {\"r\": {\"kind\": \"load\", \"a\": \"30\", \"b\":"
                + " \"31\", \"ohms\": 0.1}}}}",
            wires("BAT:+", "ALT:B+", "BAT:-", "ALT:case", "BAT:+", "LOADS:30", "BAT:-", "LOADS:31"),
            "\"states\": {\"running\": {\"running\": [\"ALT\"]}}");
    OperatingPoint point = car.in("running");
    assertThat(point.amps(car.edge("ALT.gen"))).isEqualTo(-70);
    assertThat(point.amps(car.edge("BAT.cell"))).isNegative();
  }

  private static final String RELAY =
      """
      "K": {"elements": {
        "coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
        "make": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"},
        "break": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}}
      """;

  @Test
  void aChangeOverRelay() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {"
                + BATTERY
                + ", "
                + RELAY
                + """
                , "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
                  "L": {"elements": {"one": {"kind": "load", "a": "1", "b": "3", "ohms": 10},
                                     "two": {"kind": "load", "a": "2", "b": "3", "ohms": 10}}}}
                """,
            wires(
                "BAT:+", "SW:1", "SW:2", "K:86", "K:85", "BAT:-", "BAT:+", "K:30", "K:87", "L:1",
                "K:87a", "L:2", "L:3", "BAT:-"),
            "\"states\": {\"off\": {}, \"on\": {\"set\": {\"SW\": \"on\"}, \"on\":"
                + " [\"K.coil\"]}, \"forced\": {\"set\": {\"K.make\": \"on\"}}}");
    OperatingPoint off = car.in("off");
    OperatingPoint on = car.in("on");
    assertThat(off.pulled(car.element("K.coil"))).isFalse();
    assertThat(off.closed(car.element("K.break"))).isTrue();
    assertThat(off.draws(car.element("L.two"))).isTrue();
    assertThat(off.draws(car.element("L.one"))).isFalse();
    assertThat(on.pulled(car.element("K.coil"))).isTrue();
    assertThat(on.wanted(car.element("K.coil"))).isTrue();
    assertThat(on.draws(car.element("L.one"))).isTrue();
    assertThat(on.draws(car.element("L.two"))).isFalse();
    OperatingPoint forced = car.in("forced");
    assertThat(forced.draws(car.element("L.one"))).isTrue();
    assertThat(forced.draws(car.element("L.two"))).isTrue();
  }

  @Test
  void theStateBeforeDecidesWhetherARelayHoldsItself() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {"
                + BATTERY
                + ", "
                + RELAY
                + ", \"SW\": {\"elements\": {\"c\": {\"kind\": \"contact\", \"a\": \"1\", \"b\":"
                + " \"2\"}}}}",
            wires(
                "BAT:+", "SW:1", "SW:2", "K:86", "K:85", "BAT:-", "BAT:+", "K:30", "K:87", "K:86"),
            "\"states\": {\"a rest\": {}, \"b start\": {\"set\": {\"SW\": \"on\"}}, \"c held\":"
                + " {\"from\": \"b start\"}, \"0 held too\": {\"from\": \"c held\"},"
                + " \"ring\": {\"from\": \"ring two\"}, \"ring two\": {\"from\": \"ring\"}}");
    assertThat(car.in("a rest").pulled(car.element("K.coil"))).isFalse();
    assertThat(car.in("a rest").troubles())
        .hasSize(1)
        .first()
        .isInstanceOf(Trouble.HoldsItself.class);
    assertThat(car.in("b start").pulled(car.element("K.coil"))).isTrue();
    assertThat(car.in("c held").pulled(car.element("K.coil"))).isTrue();
    assertThat(car.in("0 held too").pulled(car.element("K.coil"))).isTrue();
    assertThat(car.in("ring").pulled(car.element("K.coil"))).isFalse();
    assertThat(car.in("a rest").edges(car.in("a rest").troubles().get(0)))
        .containsExactly(car.edge("K.coil"));
    assertThat(car.in("c held").from()).hasValue("b start");
  }

  @Test
  void aBuzzerHasNoAnswer() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {" + BATTERY + ", " + RELAY + "}",
            wires("BAT:+", "K:30", "K:87a", "K:86", "K:85", "BAT:-"));
    assertThat(car.only().troubles()).hasSize(1).first().isInstanceOf(Trouble.Chatter.class);
  }

  @Test
  void loadsDrawByTheirUse() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {"
                + BATTERY
                + """
                , "ECU": {"elements": {
                    "inside": {"kind": "load", "a": "1", "b": "2", "amps": 1, "use": "internal"},
                    "ever": {"kind": "load", "a": "1", "b": "2", "amps": 2, "use": "free"},
                    "lamp": {"kind": "load", "a": "1", "b": "2", "amps": 3},
                    "unsaid": {"kind": "load", "a": "1", "b": "2"}}}}
                """,
            wires("BAT:+", "ECU:1", "ECU:2", "BAT:-"),
            "\"states\": {\"none\": {}, \"all\": {\"on\": [\"ECU\"]}}");
    OperatingPoint none = car.in("none");
    OperatingPoint all = car.in("all");
    assertThat(none.amps(car.edge("ECU.inside"))).isZero();
    assertThat(none.amps(car.edge("ECU.ever"))).isCloseTo(2, within(1e-9));
    assertThat(none.amps(car.edge("ECU.lamp"))).isCloseTo(3, within(1e-9));
    assertThat(none.wanted(car.element("ECU.lamp"))).isFalse();
    assertThat(all.amps(car.edge("ECU.inside"))).isCloseTo(1, within(1e-9));
    assertThat(all.wanted(car.element("ECU.ever"))).isFalse();
    assertThat(all.wanted(car.element("ECU.inside"))).isTrue();
    assertThat(all.resistance(car.edge("ECU.unsaid")).missing()).isEqualTo("what it draws");
  }

  @Test
  void aStateGivesASourceOtherVolts() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {" + BATTERY + "}",
            "\"states\": {\"low\": {\"volts\": {\"BAT\": 11}}, \"full\": {\"volts\":"
                + " {\"BAT.cell\": 12.9}}, \"plain\": {}}");
    assertThat(car.in("low").volts(car.at("BAT:+"))).hasValue(11);
    assertThat(car.in("full").volts(car.at("BAT:+"))).hasValue(12.9);
    assertThat(car.in("plain").volts(car.at("BAT:+"))).hasValue(12.6);
  }

  @Test
  void anEmptyWayIsOpen() {
    Operated car =
        Operated.of(
            PARTS,
            "\"devices\": {"
                + BATTERY
                + ", \"FB\": {\"elements\": {\"f1\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\":"
                + " \"1\"}, \"f2\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"2\","
                + " \"ratingA\": 10}}}}",
            wires("BAT:+", "FB:in"));
    assertThat(car.only().powered(car.at("FB:1"))).isFalse();
    assertThat(car.only().volts(car.at("FB:2"))).hasValue(12.6);
    assertThat(car.only().conducts(car.edge("FB.f1"))).isFalse();
    assertThat(car.only().conducts(car.edge("FB.f2"))).isTrue();
  }
}
