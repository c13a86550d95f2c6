package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class LivePinsExposedTest {
  /** A battery, a fuse way F:in-F:1 with a fuse, a switch SW:1-SW:2 and a lamp LAMP:1-LAMP:2. */
  private static Judged judged(String connectors, String wires) {
    return Judged.of(
        new LivePinsExposed(),
        """
        {"format": 1, "sketch": true,
         "parts": {"housings": {"pin": {"side": "pin", "rows": [["1", "2", "3"]]},
                                "skt": {"side": "socket", "rows": [["3", "2", "1"]]}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
           "F": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
           "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
           "D": {"elements": {"d": {"kind": "diode", "a": "a", "b": "k"}}},
           "LAMP": {"ports": {"p": {"housing": "pin"}},
                    "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 5}}}},
         "connectors": {%s},
         "wires": {"B1": {"from": "BAT:+", "to": "F:in"}, %s}}
        """
            .formatted(connectors, wires));
  }

  private static String pair(String one, String other) {
    return "\"X1\": {\"housing\": \"%s\", \"mates\": \"X2\"}, \"X2\": {\"housing\": \"%s\"}"
        .formatted(one, other);
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  @Test
  void socketsOnTheLiveHalfAreFineAndSoAreThePinsThatGoDead() {
    Judged judged =
        judged(pair("skt", "pin"), wire("W1", "F:1", "X1:1") + "," + wire("W2", "X2:1", "S1"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void fusedPinsAreAWarningWithTheWay() {
    Judged judged = judged(pair("pin", "skt"), wire("W1", "F:1", "X1:1"));
    assertThat(judged.messages()).containsExactly("X1 has live pins when unplugged from X2: X1:1");
    Finding finding = judged.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.WARNING);
    assertThat(finding.details()).containsExactly("BAT:+ -B1- F:in -F.f1- F:1 -W1- X1:1");
  }

  @Test
  void unfusedPinsAreAnError() {
    Judged judged =
        judged(pair("pin", "skt"), wire("W1", "F:1", "X1:1") + "," + wire("W2", "BAT:+", "X1:3"));
    assertThat(judged.messages())
        .containsExactly(
            "X1 has live pins when unplugged from X2: X1:1 and X1:3 (no fuse before it)");
    assertThat(judged.findings()).extracting(Finding::level).containsExactly(Level.ERROR);
  }

  @Test
  void aSwitchCountsAsClosedAndALoadDoesNotPass() {
    assertThat(
            judged(pair("pin", "skt"), wire("W1", "F:1", "SW:1") + "," + wire("W2", "SW:2", "X1:2"))
                .messages())
        .hasSize(1);
    assertThat(
            judged(
                    pair("pin", "skt") + ", \"Y1\": {\"housing\": \"skt\", \"mates\": \"LAMP\"}",
                    wire("W1", "F:1", "Y1:1") + "," + wire("W2", "Y1:2", "X1:2"))
                .messages())
        .isEmpty();
  }

  @Test
  void aDiodePassesOneWayOnly() {
    assertThat(
            judged(pair("pin", "skt"), wire("W1", "F:1", "D:a") + "," + wire("W2", "D:k", "X1:2"))
                .messages())
        .hasSize(1);
    assertThat(
            judged(pair("pin", "skt"), wire("W1", "F:1", "D:k") + "," + wire("W2", "D:a", "X1:2"))
                .messages())
        .isEmpty();
  }

  @Test
  void aSecondFeedBehindThePinsKeepsThemLive() {
    Judged judged =
        judged(
            pair("skt", "pin"),
            wire("W1", "BAT:+", "X1:1")
                + ","
                + wire("W2", "X2:1", "S1")
                + ","
                + wire("W3", "F:1", "S1"));
    assertThat(judged.messages()).containsExactly("X2 has live pins when unplugged from X1: X2:1");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).details())
        .containsExactly("BAT:+ -B1- F:in -F.f1- F:1 -W3- S1 -W2- X2:1");
  }

  @Test
  void aLoopThroughAnotherContactOfThePairIsNoSecondFeed() {
    assertThat(
            judged(
                    pair("skt", "pin"),
                    wire("W1", "F:1", "X1:1")
                        + ","
                        + wire("W2", "F:1", "X1:2")
                        + ","
                        + wire("W3", "X2:1", "S1")
                        + ","
                        + wire("W4", "X2:2", "S1"))
                .messages())
        .isEmpty();
  }

  @Test
  void parkedOrUnmatedPinsAreAnErrorAndParkedSocketsAreNot() {
    Judged judged =
        judged(
            """
            "P1": {"housing": "pin", "parked": "capped"}, "P2": {"housing": "pin"},
            "P3": {"housing": "skt", "parked": "open"}
            """,
            wire("W1", "F:1", "P1:1")
                + ","
                + wire("W2", "F:1", "P2:1")
                + ","
                + wire("W3", "F:1", "P3:1"));
    assertThat(judged.messages())
        .containsExactly(
            "P1 has live pins where it is parked: P1:1",
            "P2 has live pins and mates with nothing: P2:1");
    assertThat(judged.findings()).extracting(Finding::level).containsOnly(Level.ERROR);
  }

  @Test
  void thePlugOfADeviceIsNoSubject() {
    Judged judged =
        judged("\"X1\": {\"housing\": \"pin\", \"mates\": \"LAMP\"}", wire("W1", "F:1", "X1:1"));
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void oneKnownHousingTellsTheOtherSideAndNoneTellsNothing() {
    assertThat(
            judged(
                    "\"X1\": {\"mates\": \"X2\"}, \"X2\": {\"housing\": \"skt\"}",
                    wire("W1", "F:1", "X1:1"))
                .subjects())
        .containsExactly("connectors/X1");
    Judged judged = judged("\"X1\": {\"mates\": \"X2\"}, \"X2\": {}", wire("W1", "F:1", "X1:1"));
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("no housing says which half has the pins");
  }

  @Test
  void withoutASourceNothingIsKnownToBeLive() {
    Judged judged =
        Judged.of(
            new LivePinsExposed(),
            """
            {"format": 1, "sketch": true,
             "parts": {"housings": {"pin": {"side": "pin", "rows": [["1"]]}}},
             "connectors": {"X1": {"housing": "pin", "parked": "open"}},
             "wires": {"W1": {"from": "X1:1", "to": "BAT:+"}}}
            """);
    assertThat(judged.coverage().missing()).containsOnlyKeys("no source is described");
  }
}
