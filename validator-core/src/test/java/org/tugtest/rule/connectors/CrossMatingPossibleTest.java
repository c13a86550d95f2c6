package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class CrossMatingPossibleTest {
  private static final String HOUSINGS =
      """
      "parts": {"housings": {
        "skt": {"side": "socket", "rows": [["1", "2"]]}, "pin": {"side": "pin", "rows": [["2", "1"]]},
        "sktB": {"side": "socket", "keying": "B", "rows": [["1", "2"]]},
        "pinB": {"side": "pin", "keying": "B", "rows": [["2", "1"]]}}},
      """;

  private static Judged judged(String devices, String connectors, String wires, String more) {
    return Judged.of(
        new CrossMatingPossible(),
        """
        {"format": 1, "sketch": true, %s %s
         "devices": {"BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                     %s},
         "connectors": {%s}, "wires": {%s}}
        """
            .formatted(HOUSINGS, more, devices, connectors, wires));
  }

  private static String lamp(String id, String node, String housing) {
    return """
    "%s": {"at": "%s", "ports": {"p": {"housing": "%s"}},
           "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 5}}}
    """
        .formatted(id, node, housing);
  }

  private static String plug(String id, String housing, String mates) {
    return "\"%s\": {\"housing\": \"%s\", \"mates\": \"%s\"}".formatted(id, housing, mates);
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  /** Two lamps on plugs X1 and X2, each from its own fuse way. */
  private static Judged lamps(String nodeA, String nodeB, String housingB, String more) {
    return judged(
        lamp("A", nodeA, "pin") + "," + lamp("B", nodeB, housingB.replace("skt", "pin")),
        plug("X1", "skt", "A") + "," + plug("X2", housingB, "B"),
        wire("W1", "S1", "X1:1")
            + ","
            + wire("W2", "X1:2", "BAT:-")
            + ","
            + wire("W3", "S2", "X2:1")
            + ","
            + wire("W4", "X2:2", "BAT:-"),
        more);
  }

  @Test
  void anotherKeyingOrAnotherNodeKeepsThemApart() {
    Judged keyed = lamps("nose", "nose", "sktB", "");
    assertThat(keyed.messages()).isEmpty();
    assertThat(keyed.coverage().judged()).isEqualTo(2);
    assertThat(lamps("nose", "tail", "skt", "").messages()).isEmpty();
  }

  @Test
  void twoAlikeAtOneNodeAreAWarningWithWhatMeetsWhat() {
    Judged judged = lamps("nose", "nose", "skt", "");
    assertThat(judged.messages())
        .containsExactly("X1 and X2 can be plugged into each other's places at node nose");
    Finding finding = judged.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.WARNING);
    assertThat(finding.details())
        .containsExactly(
            "X1 plugged into B.p:",
            "  X1:1 W1 meets B:1",
            "  X1:2 W2 (return) meets B:2 (return)",
            "X2 plugged into A.p:",
            "  X2:1 W3 meets A:1",
            "  X2:2 W4 (return) meets A:2 (return)");
    assertThat(finding.subjects())
        .extracting(subject -> subject.place())
        .containsExactly("connectors/X1", "devices/A.p", "connectors/X2", "devices/B.p");
  }

  @Test
  void theReachIsMeasuredAlongTheLayout() {
    String layout =
        """
        "layout": {"nodes": {"nose": {}, "mid": {}, "tail": {}},
                   "segments": {"s1": {"from": "nose", "to": "mid", "lengthMm": %s},
                                "s2": {"from": "tail", "to": "mid", "lengthMm": 100}}},
        """;
    assertThat(lamps("nose", "tail", "skt", layout.formatted(100)).messages())
        .containsExactly(
            "X1 and X2 can be plugged into each other's places at nodes nose and tail");
    assertThat(lamps("nose", "tail", "skt", layout.formatted(101)).messages()).isEmpty();
    String limits = "\"limits\": {\"cross-mating-possible\": {\"reachMm\": 201}},";
    assertThat(lamps("nose", "tail", "skt", layout.formatted(101) + limits).messages()).hasSize(1);
  }

  @Test
  void feedOntoASignalIsAnError() {
    Judged judged =
        judged(
            lamp("A", "nose", "pin")
                + """
                , "ECU": {"at": "nose", "ports": {"p": {"housing": "pin", "pins": {"1": "T"}}},
                          "elements": {"temp": {"kind": "signal", "pin": "T", "type": "analog"}}}
                """,
            plug("X1", "skt", "A") + "," + plug("X2", "skt", "ECU"),
            wire("W1", "BAT:+", "X1:1") + "," + wire("W2", "S1", "X2:1"),
            "");
    assertThat(judged.messages())
        .containsExactly(
            "X1 and X2 can be plugged into each other's places at node nose; X1:1 would put feed"
                + " onto ECU:T (signal)");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(judged.findings().get(0).details())
        .contains("  X1:1 W1 (feed) meets ECU:T (signal)");
  }

  @Test
  void feedOntoReturnIsAnErrorAlsoBetweenLooms() {
    Judged judged =
        judged(
            "\"C\": {}",
            plug("X1", "skt", "Y1")
                + ", \"Y1\": {\"housing\": \"pin\", \"at\": \"bulkhead\"},"
                + plug("X2", "skt", "Y2")
                + ", \"Y2\": {\"housing\": \"pin\", \"at\": \"bulkhead\"}",
            wire("W1", "BAT:+", "X1:1")
                + ","
                + wire("W2", "BAT:-", "X2:1")
                + ","
                + wire("V1", "Y1:1", "S1")
                + ","
                + wire("V2", "Y2:1", "S2"),
            "");
    assertThat(judged.messages())
        .containsExactly(
            "X1 and X2 can be plugged into each other's places at node bulkhead; X1:1 would put"
                + " feed onto Y2:1 (return)");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void plugsThatCarryTheSameMayBeExchanged() {
    assertThat(
            judged(
                    lamp("A", "nose", "pin") + "," + lamp("B", "nose", "pin"),
                    plug("X1", "skt", "A") + "," + plug("X2", "skt", "B"),
                    wire("W1", "S1", "X1:1")
                        + ","
                        + wire("W2", "X1:2", "BAT:-")
                        + ","
                        + wire("W3", "S1", "X2:1")
                        + ","
                        + wire("W4", "X2:2", "BAT:-"),
                    "")
                .messages())
        .isEmpty();
  }

  @Test
  void aParkedPlugGoesIntoThePlaceOfItsNeighbour() {
    Judged judged =
        judged(
            lamp("A", "nose", "pin"),
            plug("X1", "skt", "A")
                + ", \"X2\": {\"housing\": \"skt\", \"at\": \"nose\", \"parked\": \"capped\"}",
            wire("W1", "S1", "X1:1") + "," + wire("W2", "S2", "X2:1"),
            "");
    assertThat(judged.findings().get(0).details())
        .containsExactly("X2 plugged into A.p:", "  X2:1 W2 meets A:1", "  X2:2 meets A:2");
  }

  @Test
  void oneOfManyIsOneFindingAndAnUninvolvedOneIsFine() {
    Judged judged =
        judged(
            lamp("A", "n", "pin") + "," + lamp("B", "n", "pin") + "," + lamp("C", "n", "pinB"),
            plug("X1", "skt", "A") + "," + plug("X2", "skt", "B") + "," + plug("X3", "sktB", "C"),
            wire("W1", "S1", "X1:1") + "," + wire("W2", "S2", "X2:1"),
            "");
    assertThat(judged.subjects()).containsExactly("connectors/X1");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void manyAlikeAtOneNodeAreOneFindingWithABoundedList() {
    int count = 150;
    String devices =
        IntStream.range(0, count)
            .mapToObj(i -> lamp("L" + i, "nose", "pin"))
            .collect(Collectors.joining(","));
    String plugs =
        IntStream.range(0, count)
            .mapToObj(i -> plug("X" + i, "skt", "L" + i))
            .collect(Collectors.joining(","));
    String wires =
        IntStream.range(0, count)
            .mapToObj(i -> wire("W" + i, "S" + i, "X" + i + ":1"))
            .collect(Collectors.joining(","));
    Judged judged = judged(devices, plugs, wires, "");
    assertThat(judged.messages())
        .containsExactly(
            "X0, X1, X2, X3, X4, X5 and 144 more can be plugged into each other's places at node"
                + " nose");
    assertThat(judged.coverage().judged()).isEqualTo(count);
    assertThat(judged.findings().get(0).details()).hasSizeLessThanOrEqualTo(61);
  }

  @Test
  void withoutHousingOrNodeItIsNotJudged() {
    Judged judged =
        judged(
            "\"A\": {\"ports\": {\"p\": {\"housing\": \"pin\"}}}",
            plug("X1", "skt", "A") + ", \"X2\": {\"mates\": \"X3\", \"at\": \"n\"}, \"X3\": {}",
            "",
            "");
    assertThat(judged.coverage().missing())
        .containsOnlyKeys(
            "no node says where it stands", "the housing of one of the halves is not known");
  }
}
