package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class IsolatorBypassedTest {
  private static final String ISOLATOR =
      "\"ISO\": {\"elements\": {\"pole\": {\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\","
          + " \"isolator\": true}}}";

  private static Judged judged(String devices, String wires, String... more) {
    return Bench.judged(new IsolatorBypassed(), devices, wires, more);
  }

  private static String behind(String... more) {
    return all(
        wire("W1", "BAT:+", "ISO:1"),
        wire("W2", "ISO:2", "FB:in"),
        wire("W3", "FB:1", "LAMP:1"),
        wire("W4", "LAMP:2", "BAT:-"),
        more.length == 0 ? wire("W9", "X:1", "Y:1") : all(more));
  }

  private static String devices(String... more) {
    return all(ISOLATOR, fuse("FB", 10), LAMP, more.length == 0 ? fuse("SPARE", 1) : all(more));
  }

  @Test
  void whatIsFedBehindTheIsolatorIsFine() {
    Judged judged = judged(devices(), behind());
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void wireRoundTheIsolatorIsOneFindingWithTheLoads() {
    Judged judged = judged(devices(), behind(wire("W5", "BAT:+", "FB:in")));
    assertThat(judged.messages())
        .containsExactly(
            "with the isolator open both sides of ISO.pole are live, and so is LAMP.bulb");
    assertThat(judged.subjects()).containsExactly("wires/W5");
    assertThat(judged.findings().get(0).details())
        .containsExactly("one side: BAT:+ -W1- ISO:1", "the other: BAT:+ -W5- FB:in -W2- ISO:2");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void loadBeforeTheIsolatorIsFoundUnlessItIsFree() {
    String clock =
        "\"CLOCK\": {\"elements\": {\"c\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\","
            + " \"amps\": 0.01%s}}}";
    String wires = behind(wire("W5", "BAT:+", "CLOCK:1"), wire("W6", "CLOCK:2", "BAT:-"));
    assertThat(judged(devices(clock.formatted("")), wires).messages())
        .containsExactly("load CLOCK.c is still live from BAT.cell with the isolator open");
    assertThat(judged(devices(clock.formatted(", \"use\": \"free\"")), wires).messages()).isEmpty();
    assertThat(
            judged(
                    devices(clock.formatted("")),
                    behind(wire("W5", "BAT:+", "CLOCK:1"), wire("W6", "Z:2", "CLOCK:2")))
                .messages())
        .as("without a return it is dead")
        .isEmpty();
  }

  @Test
  void alternatorBehindASinglePoleKeepsEverythingLive() {
    String alternator =
        "\"ALT\": {\"elements\": {\"gen\": {\"kind\": \"source\", \"plus\": \"B+\", \"minus\":"
            + " \"31\", \"generator\": true}}}";
    Judged judged =
        judged(
            devices(alternator),
            behind(wire("W5", "ALT:B+", "ISO:2"), wire("W6", "ALT:31", "BAT:-")));
    assertThat(judged.messages())
        .containsExactly(
            "with the isolator open both sides of ISO.pole are live, and so is LAMP.bulb");
  }

  @Test
  void relayBeforeTheIsolatorLetsGoWhenItsCoilIsBehindIt() {
    String relay =
        """
        "K": {"elements": {
          "c": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
          "no": {"kind": "contact", "a": "30", "b": "87", "coil": "c", "rest": "%s"}}},
        "FAN": {"elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}
        """;
    String wires =
        all(
            wire("W5", "BAT:+", "K:30"),
            wire("W6", "K:87", "FAN:1"),
            wire("W7", "FAN:2", "BAT:-"),
            wire("W8", "K:85", "BAT:-"));
    String coilBehind = wire("WA", "ISO:2", "K:86");
    String coilBefore = wire("WA", "BAT:+", "K:86");
    String holdsItself = wire("WA", "K:87", "K:86");
    assertThat(judged(devices(relay.formatted("open")), behind(wires, coilBehind)).messages())
        .isEmpty();
    assertThat(judged(devices(relay.formatted("open")), behind(wires, coilBefore)).subjects())
        .containsExactly("devices/FAN.m");
    assertThat(judged(devices(relay.formatted("open")), behind(wires, holdsItself)).subjects())
        .containsExactly("devices/FAN.m");
    assertThat(judged(devices(relay.formatted("closed")), behind(wires, coilBehind)).subjects())
        .containsExactly("devices/FAN.m");
  }

  @Test
  void contactThatOnlyClosesWithTheIsolatorIsOpenToo() {
    String isolator =
        """
        "ISO": {"elements": {
          "pole": {"kind": "contact", "a": "1", "b": "2", "isolator": true},
          "aux": {"kind": "contact", "a": "3", "b": "4", "closedIn": ["%s"]}}}
        """;
    String wires = behind(wire("W5", "BAT:+", "ISO:3"), wire("W6", "ISO:4", "LAMP:1"));
    assertThat(judged(all(isolator.formatted("on"), fuse("FB", 10), LAMP), wires).messages())
        .isEmpty();
    assertThat(judged(all(isolator.formatted("off"), fuse("FB", 10), LAMP), wires).messages())
        .isNotEmpty();
  }

  @Test
  void withoutAnIsolatorThereIsNothingToJudge() {
    assertThat(judged(LAMP, wire("W1", "BAT:+", "LAMP:1")).coverage().subjects()).isZero();
  }

  /**
   * The classic run-on: isolator in the battery lead, alternator on its own pole, but the ignition
   * is fed back through the charge lamp from the alternator.
   */
  @Test
  void ignitionThatIsFedBackThroughALampRunsOn() {
    String devices =
        """
        "ISO": {"elements": {
          "bat": {"kind": "contact", "a": "1", "b": "2", "isolator": true},
          "alt": {"kind": "contact", "a": "3", "b": "2", "isolator": true}}},
        "ALT": {"elements": {"gen": {"kind": "source", "plus": "B+", "minus": "31", "volts": 14,
                                     "ohms": 0.05, "generator": true}}},
        "CHG": {"elements": {"lamp": {"kind": "load", "a": "15", "b": "61", "ohms": %s}}},
        "COIL": {"elements": {"ign": {"kind": "load", "a": "15", "b": "31", "ohms": 100, "minV": 6}}}
        """;
    String wires =
        all(
            wire("W1", "BAT:+", "ISO:1"),
            wire("W2", "ISO:3", "ALT:B+"),
            wire("W3", "ALT:31", "BAT:-"),
            wire("W4", "ISO:2", "COIL:15"),
            wire("W5", "COIL:31", "BAT:-"),
            wire("W6", "ISO:2", "CHG:15"),
            wire("W7", "CHG:61", "ALT:B+"));
    String states =
        "\"states\": {\"run\": {\"set\": {\"ISO\": \"on\"}, \"on\": [\"COIL\", \"CHG\"],"
            + " \"running\": [\"ALT\"]}}";
    Judged lamp = judged(devices.formatted("70"), wires, states);
    assertThat(lamp.messages())
        .contains("load COIL.ign keeps 8.2 V when the isolator opens from state run");
    assertThat(lamp.findings().get(0).state()).isEqualTo("run");
    assertThat(lamp.findings().get(0).details())
        .containsExactly("ALT:B+ -W7- CHG:61 -CHG.lamp- CHG:15 -W6- ISO:2 -W4- COIL:15");
    assertThat(judged(devices.formatted("200"), wires, states).subjects())
        .as("4.7 V are under what it needs")
        .doesNotContain("devices/COIL.ign");
  }

  /** A lamp on a converter, whose input is fed from behind the isolator or before it. */
  private static Judged converter(String fedBy, String input) {
    return Judged.of(
        new IsolatorBypassed(),
        """
        {"format": 1, "sketch": true, "defaults": {"nominalV": 48},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 52}}},
           %s,
           "DC": {"elements": {
             "in": {"kind": "load", "a": "in", "b": "0", "watts": 20, "use": "internal"},
             "out": {"kind": "source", "plus": "12", "minus": "0", "volts": 13, "maxA": 10,
                     "generator": true, "selfLimiting": true%s}}},
           "LED": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "watts": 10, "minV": 9}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 16},
                   "W2": {"from": "%s", "to": "DC:in", "areaMm2": 1},
                   "W3": {"from": "DC:0", "to": "BAT:-", "areaMm2": 1},
                   "W4": {"from": "DC:12", "to": "LED:1", "areaMm2": 1},
                   "W5": {"from": "LED:2", "to": "DC:0", "areaMm2": 1}},
         "states": {"on": {"set": {"ISO": "on"}, "on": ["DC.in", "LED"], "running": ["DC"]}}}
        """
            .formatted(ISOLATOR, fedBy, input));
  }

  @Test
  void aConverterWithoutItsInputGivesNothing() {
    String fedBy = ", \"fedBy\": \"in\"";
    assertThat(converter(fedBy, "ISO:2").messages()).isEmpty();
    assertThat(converter("", "ISO:2").messages())
        .as("without a word of what feeds it, a generator turns")
        .containsExactly("load LED.it is still live from DC.out with the isolator open");
    assertThat(converter(fedBy, "BAT:+").messages())
        .containsExactly(
            "load DC.in is still live from BAT.cell with the isolator open",
            "load LED.it is still live from DC.out with the isolator open");
  }

  /** Loads that return to E, and an isolator between E and the minus of the battery. */
  private static Judged earthLead(String devices, String... more) {
    return judged(
        all(ISOLATOR, fuse("FB", 10), LAMP, LAMP.replace("LAMP", "HORN"), devices),
        all(
            wire("W1", "BAT:+", "FB:in"),
            wire("W2", "FB:1", "LAMP:1"),
            wire("W3", "FB:1", "HORN:1"),
            wire("W4", "LAMP:2", "E:1"),
            wire("W5", "E:1", "ISO:1"),
            wire("W6", "ISO:2", "BAT:-"),
            all(more)));
  }

  private static final String ALTERNATOR =
      "\"ALT\": {\"elements\": {\"gen\": {\"kind\": \"source\", \"plus\": \"B\","
          + " \"minus\": \"E\", \"generator\": true}}}";

  @Test
  void aPoleInTheEarthLeadThatPartsTheBatteryKeepsNothingLive() {
    assertThat(earthLead(fuse("S", 1), wire("W7", "HORN:2", "E:1")).messages()).isEmpty();
  }

  @Test
  void aPoleInTheEarthLeadThatLeavesAnotherSourceIsOneFinding() {
    Judged judged =
        earthLead(
            ALTERNATOR,
            wire("W7", "HORN:2", "E:1"),
            wire("W8", "ALT:B", "FB:in"),
            wire("W9", "ALT:E", "E:1"));
    assertThat(judged.messages())
        .containsExactly(
            "isolator contact ISO.pole opens an earth lead alone; with it open HORN.bulb and"
                + " LAMP.bulb stay live and return to ALT.gen past it");
    assertThat(judged.subjects()).containsExactly("devices/ISO.pole");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void anotherEarthPastThePoleIsOneFinding() {
    Judged judged =
        earthLead(fuse("S", 1), wire("W7", "HORN:2", "E:1"), wire("W8", "E:1", "BAT:-"));
    assertThat(judged.messages())
        .containsExactly(
            "isolator contact ISO.pole opens an earth lead alone; with it open HORN.bulb and"
                + " LAMP.bulb stay live and return to BAT.cell past it");
    assertThat(judged.findings().get(0).details().get(0)).contains("W8");
  }

  @Test
  void aLoadWithAnEarthOfItsOwnPastThePoleIsItsOwnFinding() {
    assertThat(earthLead(fuse("S", 1), wire("W7", "HORN:2", "BAT:-")).messages())
        .containsExactly("load HORN.bulb is still live from BAT.cell with the isolator open");
  }
}
