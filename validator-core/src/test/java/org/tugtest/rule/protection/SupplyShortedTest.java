package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class SupplyShortedTest {
  private static final String SWITCH =
      "\"SW\": {\"positions\": [\"off\", \"a\", \"b\"], \"elements\": {"
          + "\"x\": {\"kind\": \"contact\", \"a\": \"c\", \"b\": \"1\", \"closedIn\": [\"a\"]},"
          + "\"y\": {\"kind\": \"contact\", \"a\": \"c\", \"b\": \"2\", \"closedIn\": %s}}}";

  private static Judged judged(String devices, String wires, String... more) {
    return Bench.judged(new SupplyShorted(), devices, wires, more);
  }

  private static String lamps(String... wires) {
    return all(
        wire("W1", "BAT:+", "FB:in"),
        wire("W2", "FB:1", "LAMP:1"),
        wire("W3", "LAMP:2", "BAT:-"),
        all(wires));
  }

  @Test
  void loadsAndCoilsBetweenAreNoShort() {
    Judged judged = judged(all(fuse("FB", 10), LAMP), lamps(wire("W4", "LAMP:2", "E:1")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void theWireThatJoinsFeedAndReturnIsTheFirstSubject() {
    Judged judged = judged(all(fuse("FB", 10), LAMP), lamps(wire("W4", "LAMP:1", "LAMP:2")));
    assertThat(judged.messages())
        .containsExactly("plus and minus of BAT.cell meet through W4, with no load between");
    assertThat(judged.subjects()).containsExactly("wires/W4");
    assertThat(judged.findings().get(0).subjects())
        .hasToString("[wires/W4, wires/W1, devices/FB.f, wires/W2, wires/W3, devices/BAT.cell]");
    assertThat(judged.findings().get(0).details())
        .containsExactly("BAT:+ -W1- FB:in -FB.f- FB:1 -W2- LAMP:1 -W4- LAMP:2 -W3- BAT:-");
    assertThat(judged.findings().get(0).remedy()).contains("it joins LAMP:1 and LAMP:2");
  }

  @Test
  void twoShortsAreTwoFindings() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            lamps(wire("W4", "LAMP:1", "LAMP:2"), wire("W5", "FB:in", "BAT:-")));
    assertThat(judged.subjects()).containsExactlyInAnyOrder("wires/W4", "wires/W5");
  }

  @Test
  void changeOverIsNoShortAndContactsOfOnePositionAre() {
    String wires =
        lamps(wire("W4", "BAT:+", "SW:1"), wire("W5", "SW:2", "BAT:-"), wire("W6", "SW:c", "M:1"));
    assertThat(judged(all(fuse("FB", 10), LAMP, SWITCH.formatted("[\"b\"]")), wires).messages())
        .isEmpty();
    Judged both = judged(all(fuse("FB", 10), LAMP, SWITCH.formatted("[\"b\", \"a\"]")), wires);
    assertThat(both.messages()).singleElement().asString().contains("SW.");
    assertThat(both.findings().get(0).subjects()).extracting("place").contains("wires/W5");
  }

  @Test
  void relayContactsOfOppositeRestAreNeverClosedTogether() {
    String relay =
        """
        "K": {"elements": {
          "c": {"kind": "coil", "a": "85", "b": "86", "ohms": 80},
          "no": {"kind": "contact", "a": "30", "b": "87", "coil": "c", "rest": "open"},
          "nc": {"kind": "contact", "a": "30", "b": "87a", "coil": "c", "rest": "%s"}}}
        """;
    String wires = all(wire("W1", "BAT:+", "K:87"), wire("W2", "K:87a", "BAT:-"));
    assertThat(judged(relay.formatted("closed"), wires).messages()).isEmpty();
    assertThat(judged(relay.formatted("open"), wires).messages()).hasSize(1);
  }

  @Test
  void twoPoleReversingSwitchIsNoShort() {
    String reverse =
        """
        "R": {"positions": ["off", "fwd", "rev"], "elements": {
          "a1": {"kind": "contact", "a": "p", "b": "m1", "closedIn": ["fwd"]},
          "a2": {"kind": "contact", "a": "n", "b": "m2", "closedIn": ["fwd"]},
          "b1": {"kind": "contact", "a": "p", "b": "m2", "closedIn": ["rev"]},
          "b2": {"kind": "contact", "a": "n", "b": "m1", "closedIn": ["rev"]}}},
        "MOT": {"elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 4}}}
        """;
    assertThat(
            judged(
                    reverse,
                    all(
                        wire("W1", "BAT:+", "R:p"),
                        wire("W2", "BAT:-", "R:n"),
                        wire("W3", "R:m1", "MOT:1"),
                        wire("W4", "R:m2", "MOT:2")))
                .messages())
        .isEmpty();
  }

  @Test
  void manyReversingRelaysAreStillJudged() {
    StringBuilder devices = new StringBuilder(LAMP);
    StringBuilder wires = new StringBuilder(wire("W", "BAT:+", "LAMP:1"));
    for (int i = 0; i < 60; i++) {
      devices.append(
          """
          , "K%1$d": {"elements": {
            "c": {"kind": "coil", "a": "85", "b": "86", "ohms": 80},
            "no": {"kind": "contact", "a": "30", "b": "87", "coil": "c", "rest": "open"},
            "nc": {"kind": "contact", "a": "30", "b": "87a", "coil": "c", "rest": "closed"}}}
          """
              .formatted(i));
      wires.append(", ").append(wire("A" + i, "BAT:+", "K" + i + ":87"));
      wires.append(", ").append(wire("B" + i, "BAT:-", "K" + i + ":87a"));
      wires.append(", ").append(wire("C" + i, "K" + i + ":30", "M:" + (i / 2)));
    }
    Judged judged = judged(devices.toString(), wires.toString());
    assertThat(judged.messages())
        .as("each even relay can be pulled while its odd neighbour is released")
        .hasSize(20);
    assertThat(judged.coverage().missing()).isEmpty();
  }

  @Test
  void stateThatClosesSingleContactsCounts() {
    String wires =
        lamps(wire("W4", "BAT:+", "SW:1"), wire("W5", "SW:2", "BAT:-"), wire("W6", "SW:c", "M:1"));
    assertThat(
            judged(
                    all(fuse("FB", 10), LAMP, SWITCH.formatted("[\"b\"]")),
                    wires,
                    "\"states\": {\"odd\": {\"set\": {\"SW\": \"a\", \"SW.y\": \"on\"}}}")
                .messages())
        .hasSize(1);
  }

  @Test
  void batteriesSideBySideAndInARowAreNoShort() {
    String second =
        "\"B2\": {\"elements\": {\"s\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\":"
            + " \"-\"}}}";
    assertThat(
            judged(second, all(wire("W1", "BAT:+", "B2:+"), wire("W2", "BAT:-", "B2:-")))
                .messages())
        .isEmpty();
    assertThat(judged(second, wire("W1", "BAT:+", "B2:-")).messages()).isEmpty();
    Judged ring = judged(second, all(wire("W1", "BAT:+", "B2:-"), wire("W2", "B2:+", "BAT:-")));
    assertThat(ring.messages()).as("both in a ring short each other").hasSize(1);
    assertThat(ring.coverage().judged()).isEqualTo(2);
  }

  @Test
  void alternatorIsShortedThroughItsOwnRectifier() {
    String alternator =
        """
        "ALT": {"elements": {
          "gen": {"kind": "source", "plus": "w", "minus": "case", "generator": true},
          "rectifier": {"kind": "diode", "a": "w", "b": "B+"}}}
        """;
    assertThat(judged(alternator, wire("W1", "ALT:B+", "ALT:case")).messages())
        .containsExactly("plus and minus of ALT.gen meet through W1, with no load between");
    assertThat(judged(alternator, wire("W1", "ALT:B+", "BAT:+")).messages()).isEmpty();
  }

  @Test
  void switchThatShortsIsNamedWithWhatHasToBeClosed() {
    String push =
        "\"P\": {\"elements\": {\"c\": {\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\"}}}";
    Judged judged = judged(push, all(wire("W1", "BAT:+", "P:1"), wire("W2", "P:2", "BAT:-")));
    assertThat(judged.messages())
        .containsExactly(
            "plus and minus of BAT.cell meet through W1, when P.c is closed, with no load between");
  }
}
