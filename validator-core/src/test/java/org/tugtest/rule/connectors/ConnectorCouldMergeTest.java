package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class ConnectorCouldMergeTest {
  private static final String PARTS =
      """
      "parts": {
        "housings": {
          "s2": {"side": "socket", "family": "a", "rows": [["1", "2"]], "grams": 3},
          "p2": {"side": "pin", "family": "a", "rows": [["2", "1"]], "grams": 2.5},
          "s4": {"side": "socket", "family": "a", "rows": [["1", "2", "3", "4"]]},
          "p4": {"side": "pin", "family": "a", "rows": [["4", "3", "2", "1"]]},
          "s4b": {"side": "socket", "family": "b", "rows": [["1", "2", "3", "4"]]},
          "p4b": {"side": "pin", "family": "b", "rows": [["4", "3", "2", "1"]]},
          "s2b": {"side": "socket", "family": "b", "rows": [["1", "2"]]},
          "p2b": {"side": "pin", "family": "b", "rows": [["2", "1"]]},
          "s4mix": {"side": "socket", "family": "a", "cavities": {"4": {"family": "b"}},
                    "rows": [["1", "2", "3", "4"]], "terminals": ["as", "bs"]},
          "p4mix": {"side": "pin", "family": "a", "cavities": {"4": {"family": "b"}},
                    "rows": [["4", "3", "2", "1"]], "terminals": ["ap", "bp"]},
          "s2s": {"side": "socket", "family": "a", "sealed": true, "rows": [["1", "2"]]},
          "p2s": {"side": "pin", "family": "a", "sealed": true, "rows": [["2", "1"]]}},
        "terminals": {
          "as": {"family": "a", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 1, "maxA": 8},
          "ap": {"family": "a", "side": "pin", "areaMinMm2": 0.5, "areaMaxMm2": 1, "maxA": 8},
          "bs": {"family": "b", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 2.5, "maxA": 20},
          "bp": {"family": "b", "side": "pin", "areaMinMm2": 0.5, "areaMaxMm2": 2.5, "maxA": 20}}},
      """;

  private static Judged judged(String connectors, String... wires) {
    return Judged.of(new ConnectorCouldMerge(), harness(connectors, wires));
  }

  private static String harness(String connectors, String... wires) {
    return """
    {"format": 1, "sketch": true, %s
     "devices": {"BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}}},
     "connectors": {%s}, "wires": {%s}}
    """
        .formatted(PARTS, connectors, String.join(", ", wires));
  }

  /** A pair X.. and Y.. of housings s.. and p.. at a node. */
  private static String pair(String number, String housing, String node) {
    return """
    "X%1$s": {"housing": "s%2$s", "mates": "Y%1$s", "at": "%3$s"}, "Y%1$s": {"housing": "p%2$s"}
    """
        .formatted(number, housing, node);
  }

  /** A wire W.. into a cavity of X.. and one V.. out of the same cavity of Y... */
  private static String through(String number, String cavity, String from, String more) {
    return """
    "W%1$s%2$s": {"from": "%3$s", "to": "X%1$s:%2$s"%4$s},
    "V%1$s%2$s": {"from": "Y%1$s:%2$s", "to": "E%1$s%2$s"%4$s}
    """
        .formatted(number, cavity, from, more);
  }

  private static String through(String number, String cavity) {
    return through(number, cavity, "S" + number + cavity, "");
  }

  private static String area(double mm2) {
    return ", \"areaMm2\": " + mm2;
  }

  @Test
  void tooFewFreeCavitiesOrAnotherNodeIsFine() {
    Judged full =
        judged(
            pair("1", "2", "n") + "," + pair("2", "2", "n"),
            through("1", "1"),
            through("1", "2"),
            through("2", "1"));
    assertThat(full.messages()).isEmpty();
    assertThat(full.coverage().judged()).isEqualTo(2);
    assertThat(
            judged(
                    pair("1", "4", "n") + "," + pair("2", "2", "m"),
                    through("1", "1"),
                    through("2", "1"))
                .messages())
        .isEmpty();
  }

  @Test
  void theSmallerMovesWithAllItsContactsAndSavesItsHousings() {
    Judged judged =
        judged(
            pair("1", "4", "n") + "," + pair("2", "2", "n"),
            through("1", "1"),
            through("1", "3"),
            through("1", "4"),
            through("2", "2"));
    assertThat(judged.messages())
        .containsExactly(
            "the contact of X2 and Y2 fits into free cavities of X1 and Y1; that saves 2 connectors"
                + " with 4 cavities and 5.5 g");
    Finding finding = judged.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.NOTE);
    assertThat(finding.details())
        .containsExactly(
            "X2:2 -> X1:2, Y2:2 -> Y1:2 (W22, V22)", "X1 and Y1 would keep 0 of 4 contacts free");
    assertThat(finding.subjects())
        .extracting(subject -> subject.place())
        .containsExactly("connectors/X2", "connectors/Y2", "connectors/X1", "connectors/Y1");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void theOrderIsKeptAndAPairWrittenFromItsOtherHalfIsTurned() {
    Judged judged =
        judged(
            pair("1", "4", "n")
                + """
                , "X2": {"housing": "s2", "at": "n"}, "Y2": {"housing": "p2", "mates": "X2"}
                """,
            through("1", "1"),
            through("2", "1"),
            through("2", "2"),
            "\"Z\": {\"from\": \"S9\", \"to\": \"X1:1\"}");
    assertThat(judged.findings().get(0).details())
        .startsWith(
            "Y2:1 -> Y1:2, X2:1 -> X1:2 (V21, W21)", "Y2:2 -> Y1:3, X2:2 -> X1:3 (V22, W22)");
  }

  @Test
  void theHalvesMustBelongToTheSameLooms() {
    Map<String, String> files =
        Map.of(
            Judged.ROOT,
            harness(
                    "\"Y1\": {\"housing\": \"p4\", \"at\": \"n\"},"
                        + "\"Y2\": {\"housing\": \"p2\", \"at\": \"n\"}",
                    through("1", "1"),
                    through("2", "1"))
                .replaceFirst("\\{", "{\"uses\": [\"a.json\", \"b.json\"],"),
            "a.json",
            """
            {"format": 1, "loom": {"id": "a"},
             "connectors": {"X1": {"housing": "s4", "mates": "Y1"}}}
            """,
            "b.json",
            """
            {"format": 1, "loom": {"id": "%s"},
             "connectors": {"X2": {"housing": "s2", "mates": "Y2"}}}
            """);
    Map<String, String> apart = new HashMap<>(files);
    apart.put("b.json", files.get("b.json").formatted("b"));
    assertThat(Judged.of(new ConnectorCouldMerge(), apart).messages()).isEmpty();
    Map<String, String> together = new HashMap<>(files);
    together.put("b.json", files.get("b.json").formatted("a"));
    assertThat(Judged.of(new ConnectorCouldMerge(), together).messages()).hasSize(1);
  }

  @Test
  void anotherFamilyNeedsATerminalThatTakesTheWire() {
    String both = pair("1", "4b", "n") + "," + pair("2", "2", "n");
    assertThat(judged(both, through("1", "1"), through("2", "1")).messages()).isEmpty();
    String listed =
        both.replace("\"s4b\"", "\"s4b\", \"terminals\": [\"bs\"]")
            .replace("\"p4b\"", "\"p4b\", \"terminals\": [\"bp\"]");
    String thick = area(2.5);
    String thicker = area(2.51);
    assertThat(judged(listed, through("1", "1"), through("2", "1", "S", thick)).messages())
        .hasSize(1);
    assertThat(judged(listed, through("1", "1"), through("2", "1", "S", thicker)).messages())
        .isEmpty();
  }

  @Test
  void aTerminalOfAWeakerRatingIsNoReplacement() {
    String large =
        pair("1", "4", "n")
            .replace("\"s4\"", "\"s4\", \"terminals\": [\"as\"]")
            .replace("\"p4\"", "\"p4\", \"terminals\": [\"ap\"]");
    String small = pair("2", "2b", "n");
    String[] wires = {
      through("1", "1", "S", area(1)),
      through("1", "2", "S", area(1)),
      through("2", "1", "T", area(1))
    };
    assertThat(judged(large + "," + small, wires).messages()).hasSize(1);
    String strong =
        small
            .replace("\"s2b\"", "\"s2b\", \"terminals\": [\"bs\"]")
            .replace("\"p2b\"", "\"p2b\", \"terminals\": [\"bp\"]");
    assertThat(judged(large + "," + strong, wires).messages()).isEmpty();
  }

  @Test
  void whatWasSealedStaysSealed() {
    assertThat(
            judged(
                    pair("1", "4", "n") + "," + pair("2", "2s", "n"),
                    through("1", "1"),
                    through("1", "2"),
                    through("2", "1"))
                .messages())
        .isEmpty();
    assertThat(
            judged(
                    pair("1", "2s", "n") + "," + pair("2", "2", "n"),
                    through("1", "1"),
                    through("2", "1"))
                .messages())
        .hasSize(1);
  }

  @Test
  void aThinWireLeavesTheOnlyBigCavityToAThickOne() {
    Judged judged =
        judged(
            pair("1", "4mix", "n")
                + ","
                + pair("2", "2", "n")
                    .replace("\"s2\"", "\"s2\", \"terminals\": [\"bs\"]")
                    .replace("\"p2\"", "\"p2\", \"terminals\": [\"bp\"]"),
            through("1", "1", "S", area(1)),
            through("1", "2", "S", area(1)),
            through("2", "1", "T", area(2.5)),
            through("2", "2", "U", area(0.35)));
    assertThat(judged.messages()).isEmpty();
    Judged both =
        judged(
            pair("1", "4mix", "n") + "," + pair("2", "2", "n"),
            through("1", "1", "S", area(1)),
            through("1", "2", "S", area(1)),
            through("2", "1", "T", area(0.5)),
            through("2", "2", "U", area(2.5)));
    assertThat(both.findings().get(0).details())
        .startsWith(
            "X2:1 -> X1:3, Y2:1 -> Y1:3 (W21, V21)", "X2:2 -> X1:4, Y2:2 -> Y1:4 (W22, V22)");
    Judged crossed =
        judged(
            pair("1", "4mix", "n") + "," + pair("2", "2", "n"),
            through("1", "1", "S", area(1)),
            through("1", "2", "S", area(1)),
            through("2", "1", "T", area(2.5)),
            through("2", "2", "U", area(0.5)));
    assertThat(crossed.findings().get(0).details())
        .startsWith(
            "X2:1 -> X1:4, Y2:1 -> Y1:4 (W21, V21)", "X2:2 -> X1:3, Y2:2 -> Y1:3 (W22, V22)");
  }

  @Test
  void feedKeepsAwayFromReturn() {
    Judged judged =
        judged(
            pair("1", "4", "n") + "," + pair("2", "2", "n"),
            through("1", "1", "BAT:-", ""),
            through("1", "1", "BAT:-", "").replace("W11", "W11b").replace("V11", "V11b"),
            through("2", "1", "BAT:+", ""));
    assertThat(judged.findings().get(0).details())
        .startsWith("X2:1 -> X1:3, Y2:1 -> Y1:3 (W21, V21)");
  }

  @Test
  void feedKeepsAwayFromReturnInEitherHalf() {
    // in the near half 1 touches 2 alone, in the far half it touches 2 and 3
    String json =
        harness(
                pair("1", "4", "n") + "," + pair("2", "2", "n"),
                through("1", "1", "BAT:-", ""),
                through("1", "1", "BAT:-", "").replace("W11", "W11b").replace("V11", "V11b"),
                through("2", "1", "BAT:+", ""))
            .replace(
                "\"p4\": {\"side\": \"pin\", \"family\": \"a\", \"rows\": [[\"4\", \"3\", \"2\","
                    + " \"1\"]]}",
                "\"p4\": {\"side\": \"pin\", \"family\": \"a\", \"rows\": [[\"1\", \"3\"], [\"2\","
                    + " \"4\"]]}");
    assertThat(Judged.of(new ConnectorCouldMerge(), json).findings().get(0).details())
        .startsWith("X2:1 -> X1:4, Y2:1 -> Y1:4 (W21, V21)");
  }

  @Test
  void feedAndReturnThatMoveTogetherKeepAwayFromEachOther() {
    Judged judged =
        judged(
            pair("1", "4", "n") + "," + pair("2", "2", "n"),
            through("1", "1"),
            through("1", "1").replace("W11", "W11b").replace("V11", "V11b"),
            through("1", "1").replace("W11", "W11c").replace("V11", "V11c"),
            through("2", "1", "BAT:+", ""),
            through("2", "2", "BAT:-", ""));
    assertThat(judged.findings().get(0).details())
        .startsWith(
            "X2:1 -> X1:2, Y2:1 -> Y1:2 (W21, V21)", "X2:2 -> X1:4, Y2:2 -> Y1:4 (W22, V22)");
  }

  @Test
  void whereNothingElseIsFreeTheNeighbourIsNamed() {
    Judged judged =
        judged(
            pair("1", "2", "n") + "," + pair("2", "2", "n"),
            through("1", "1", "BAT:-", ""),
            through("2", "1", "BAT:+", ""));
    assertThat(judged.findings().get(0).details())
        .contains("X1:2 (feed) would be beside X1:1 (return)");
  }

  @Test
  void noCavityIsPromisedTwiceAndNoPairGoesTwoWays() {
    Judged judged =
        judged(
            pair("1", "4", "n") + "," + pair("2", "2", "n") + "," + pair("3", "2", "n"),
            through("1", "1"),
            through("1", "2"),
            through("1", "3"),
            through("2", "1"),
            through("3", "1"));
    List<String> first =
        judged.findings().stream().map(finding -> finding.details().get(0)).toList();
    assertThat(first).containsExactly("X3:1 -> X1:4, Y3:1 -> Y1:4 (W31, V31)");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void whatIsNotKnownIsNotJudged() {
    Judged judged =
        judged(
            """
            "X1": {"mates": "Y1", "at": "n"}, "Y1": {},
            "X2": {"housing": "s2", "mates": "Y2"}, "Y2": {"housing": "p2"},
            "X3": {"housing": "s2", "mates": "Y3", "at": "n", "pinMap": {"1": "2", "2": "1"}},
            "Y3": {"housing": "p2"},
            "X4": {"housing": "s4", "mates": "Y4", "at": "n"}, "Y4": {"housing": "p2"}
            """,
            "\"W1\": {\"from\": \"X4:4\", \"to\": \"S1\"}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys(
            "the housing of one of the halves is not known",
            "no node says where it stands",
            "an adaptor's pinMap joins other cavities",
            "a wired cavity of it has no counterpart");
  }
}
