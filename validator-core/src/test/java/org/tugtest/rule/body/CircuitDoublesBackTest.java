package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

/** Nodes a and b 200 mm apart; c lies 1500 mm, or as given, beyond a; d 400 mm beyond c. */
class CircuitDoublesBackTest {
  private static final String PART = "\"part\": \"w\"";

  private static Judged judged(double far, String wires, String more) {
    return Judged.of(
        new CircuitDoublesBack(),
        """
        {"format": 1, "sketch": true,
         "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 200},
           "s2": {"from": "a", "to": "c", "lengthMm": %s},
           "s3": {"from": "c", "to": "d", "lengthMm": 400}}},
         "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 2, "gramsPerM": 12,
             "milliohmPerM": 18.5}},
           "housings": {"p": {"side": "pin", "rows": [["1", "2", "3"]], "grams": 5},
             "s": {"side": "socket", "rows": [["3", "2", "1"]], "grams": 6}}},
         "devices": {
           "FB": {"at": "a", "elements": {"f": {"kind": "fuse", "a": "in", "b": "1"},
             "g": {"kind": "fuse", "a": "in", "b": "2"}}},
           "L": {"at": "b", "elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
           "M": {"at": "d", "elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "wires": {%s}%s}
        """
            .formatted(far, wires, more));
  }

  private static final String PAIR =
      """
      , "connectors": {"X": {"housing": "s", "at": "c", "mates": "Y"}, "Y": {"housing": "p"}}
      """;

  private static String wire(String id, String from, String to, String more) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", %s%s}".formatted(id, from, to, PART, more);
  }

  @Test
  void aPlugThatOnlyLoopsACircuitBackIsAWarning() {
    Judged judged =
        judged(1500, wire("W1", "FB:1", "X:1", "") + ", " + wire("W2", "Y:1", "L:1", ""), PAIR);
    // 1500 out, 1500 + 200 back, where 200 would do: 3000 mm, 36 g of wire and 11 g of housings
    assertThat(judged.messages())
        .containsExactly(
            "X and Y only loop a circuit back: 3 m of wire, 47 g and 2 connectors more than the"
                + " short way takes");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            "W1 - W2: 3200 mm from FB:1 to L:1, where the shortest way is 200 mm",
            "up to 55.5 milliohm more in a circuit");
    assertThat(judged.subjects()).containsExactly("connectors/X");
  }

  @Test
  void severalCircuitsThroughOnePlugAreOneFinding() {
    Judged judged =
        judged(
            1500,
            wire("W1", "FB:1", "X:1", "")
                + ", "
                + wire("W2", "Y:1", "L:1", "")
                + ", "
                + wire("W3", "FB:2", "X:2", "")
                + ", "
                + wire("W4", "Y:2", "L:2", ""),
            PAIR);
    assertThat(judged.messages())
        .containsExactly(
            "X and Y only loop 2 circuits back: 6 m of wire, 83 g and 2 connectors more than the"
                + " short way takes");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aPlugThatOthersNeedIsNotNeedless() {
    Judged judged =
        judged(
            1500,
            wire("W1", "FB:1", "X:1", "")
                + ", "
                + wire("W2", "Y:1", "L:1", "")
                + ", "
                + wire("W3", "FB:2", "X:2", "")
                + ", "
                + wire("W4", "Y:2", "M:1", ""),
            PAIR);
    assertThat(judged.messages())
        .containsExactly(
            "wires W1 and W2 run 3200 mm from FB:1 to L:1, out and back along s2; the shortest way"
                + " is 200 mm");
    assertThat(judged.findings().get(0).details())
        .containsExactly("the detour costs 3 m of wire, 36 g and 55.5 milliohm");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aJumperInAPlugMayBeAnInterlock() {
    Judged judged =
        judged(
            1500,
            wire("W1", "FB:1", "X:1", "")
                + ", "
                + wire("J", "Y:1", "Y:2", "")
                + ", "
                + wire("W2", "X:2", "L:1", ""),
            PAIR);
    assertThat(judged.messages().get(0)).startsWith("X and Y only loop a circuit back: 3 m");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(judged.findings().get(0).remedy()).contains("interlock");
  }

  @Test
  void aViaThatLeadsAwayIsNamed() {
    Judged judged = judged(250, wire("W1", "FB:1", "L:1", ", \"via\": [\"c\"]"), "");
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 runs 700 mm from FB:1 to L:1, out and back along s2; the shortest way is 200"
                + " mm");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo("take c out of \"via\" of W1, unless it has to go there");
    assertThat(judged(249.9, wire("W1", "FB:1", "L:1", ", \"via\": [\"c\"]"), "").messages())
        .isEmpty();
    // 1500 mm too much is a warning
    assertThat(
            judged(750, wire("W1", "FB:1", "L:1", ", \"via\": [\"c\"]"), "")
                .findings()
                .get(0)
                .level())
        .isEqualTo(Level.WARNING);
  }

  @Test
  void aLongWayIsFineWhenTheShortestIsLongToo() {
    // 1900 + 2 * 400 = 2700 over 1900 is 142 %
    String far = ", \"limits\": {\"circuit-doubles-back\": {\"percent\": %s}}".formatted(142);
    String wire = wire("W1", "FB:1", "M:1", ", \"via\": [\"b\"]");
    // by b it is 2 * 200 more: 2300 over 1900
    assertThat(judged(1500, wire, "").messages()).isEmpty();
    assertThat(judged(1500, wire, far.replace("142", "100")).messages()).isEmpty();
    assertThat(
            judged(
                    1500,
                    wire,
                    ", \"limits\": {\"circuit-doubles-back\": {\"percent\": 100, \"mm\": 400}}")
                .messages())
        .hasSize(1);
  }

  @Test
  void aBranchThatRunsBackAlongItsFeedIsSaid() {
    Judged judged =
        judged(
            1500,
            wire("W1", "FB:1", "S", "")
                + ", "
                + wire("W2", "S", "L:1", "")
                + ", "
                + wire("W3", "S", "M:1", ""),
            ", \"splices\": {\"S\": {\"at\": \"c\"}}");
    assertThat(judged.messages())
        .containsExactly(
            "wire W2 to L:1 runs 1500 mm back from splice S along the way that W1 comes (s2)");
    assertThat(judged.subjects()).containsExactly("wires/W2");
    assertThat(judged.coverage().judged()).isEqualTo(3);
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
  }

  @Test
  void twoLoadsOnTheSameSideOfTheirSpliceAreNotDoubledBack() {
    // the splice sits at the fuse box, both loads far out: nothing of it is needless
    Judged judged =
        judged(
            1500,
            wire("W1", "FB:1", "S", "")
                + ", "
                + wire("W2", "S", "M:1", "")
                + ", "
                + wire("W3", "S", "M:2", ""),
            ", \"splices\": {\"S\": {\"at\": \"a\"}}");
    assertThat(judged.messages()).isEmpty();
  }

  @Test
  void withoutRouteItIsNotJudgedAndRingsEnd() {
    Judged judged =
        judged(
            1500,
            wire("W1", "FB:1", "Q:1", "")
                + ", "
                + wire("W2", "S", "T", "")
                + ", "
                + wire("W3", "T", "S", "")
                + ", "
                + wire("W4", "U", "U", ""),
            ", \"splices\": {\"S\": {\"at\": \"c\"}, \"T\": {\"at\": \"a\"}, \"U\": {\"at\":"
                + " \"a\"}}");
    assertThat(judged.coverage().missing().keySet()).containsExactly("a wire of it has no route");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  private static final String LONG =
      """
      {"format": 1, "uses": ["one.json", "two.json"],
       "parts": {"housings": {"p": {"side": "pin", "rows": [["1", "2"]]},
                              "s": {"side": "socket", "rows": [["2", "1"]]}}},
       "layout": {"nodes": {"a": {}, "m": {}, "b": {}, "c": {}}, "segments": {
         "s1": {"from": "a", "to": "m", "lengthMm": 2000},
         "s2": {"from": "m", "to": "b", "lengthMm": 2000},
         "s3": {"from": "m", "to": "c", "lengthMm": %s}}},
       "devices": {"A": {"at": "a", "pins": {"1": {}}}, "B": {"at": "b", "pins": {"1": {}}}}}
      """;

  /** A long circuit that leaves its way by a stub: to a plug that loops it back, or through one. */
  private static Judged stub(double mm, String one, String two) {
    return Judged.of(
        new CircuitDoublesBack(),
        Map.of(
            Judged.ROOT,
            LONG.formatted(mm),
            "one.json",
            "{\"format\": 1, \"loom\": {\"id\": \"one\"}, " + one + "}",
            "two.json",
            "{\"format\": 1, \"loom\": {\"id\": \"two\"}" + two + "}"));
  }

  @Test
  void outAndBackWithinOneLoomIsFoundHoweverLongTheRestIs() {
    String loop =
        """
        "connectors": {"X": {"housing": "s", "at": "c", "mates": "Y"}, "Y": {"housing": "p"}},
        "wires": {"W1": {"from": "A:1", "to": "X:1", "areaMm2": 1},
                  "W2": {"from": "Y:1", "to": "Y:2", "areaMm2": 1},
                  "W3": {"from": "X:2", "to": "B:1", "areaMm2": 1}}
        """;
    assertThat(stub(249, loop, "").messages()).isEmpty();
    assertThat(stub(250, loop, "").messages())
        .singleElement()
        .asString()
        .startsWith("X and Y only loop a circuit back: 0.5 m of wire");
  }

  @Test
  void whereAnotherLoomBeginsThePlugHasToBeGoneTo() {
    String one =
        """
        "connectors": {"X": {"housing": "s", "at": "c", "mates": "Y"}},
        "wires": {"W1": {"from": "A:1", "to": "X:1", "areaMm2": 1}}
        """;
    String two =
        """
        , "connectors": {"Y": {"housing": "p"}},
        "wires": {"W2": {"from": "Y:1", "to": "B:1", "areaMm2": 1}}
        """;
    Judged judged = stub(600, one, two);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void aPlugToAnotherLoomOnTheWayDoesNotHideTheLoop() {
    String one =
        """
        "connectors": {"P": {"housing": "s", "at": "m", "mates": "Q"}},
        "wires": {"W1": {"from": "A:1", "to": "P:1", "areaMm2": 1}}
        """;
    String two =
        """
        , "connectors": {"Q": {"housing": "p"}, "X": {"housing": "s", "at": "c", "mates": "Y"},
                         "Y": {"housing": "p"}},
        "wires": {"W2": {"from": "Q:1", "to": "X:1", "areaMm2": 1},
                  "W3": {"from": "Y:1", "to": "Y:2", "areaMm2": 1},
                  "W4": {"from": "X:2", "to": "B:1", "areaMm2": 1}}
        """;
    assertThat(stub(600, one, two).messages())
        .singleElement()
        .asString()
        .startsWith("X and Y only loop a circuit back: 1.2 m of wire");
  }
}
