package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class RouteBrokenTest {
  private static Judged judged(String nodes, String wires) {
    return Judged.of(
        new RouteBroken(),
        """
        {"format": 1, "sketch": true,
         "layout": {"nodes": {%s}, "segments": {
           "s1": {"from": "nose", "to": "dash", "lengthMm": 900},
           "s2": {"from": "bay", "to": "tail", "lengthMm": 1400}}},
         "devices": {"N": {"at": "nose"}, "D": {"at": "dash"}, "B": {"at": "bay"},
           "T": {"at": "tail"}, "F": {"at": "fin"}, "Q": {}},
         "wires": {%s}}
        """
            .formatted(nodes, wires));
  }

  @Test
  void aWayIsFineEvenOfNoLength() {
    Judged judged =
        judged(
            "",
            """
            "W1": {"from": "N:1", "to": "D:1"}, "W2": {"from": "N:2", "to": "N:3"},
            "W3": {"from": "F:2", "to": "F:3"}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void bothPiecesAreNamedOnceWithAllWiresThatNeedTheGapClosed() {
    Judged judged =
        judged(
            "",
            """
            "W1": {"from": "N:1", "to": "T:1"}, "W2": {"from": "B:2", "to": "D:2"},
            "W3": {"from": "D:3", "to": "T:3"}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "the layout is in pieces: no way joins node tail (and 1 more node) and node nose"
                + " (and 1 more node), as wires W1, W2 and W3 need");
    assertThat(judged.findings().get(0).subjects())
        .extracting(Subject::place)
        .containsExactly("nodes/tail", "nodes/nose", "wires/W1", "wires/W2", "wires/W3");
  }

  @Test
  void withCoordinatesTheNodesNearestToEachOtherAreNamed() {
    Judged judged =
        judged(
            """
            "nose": {"xyzMm": [0, 0, 0]}, "dash": {"xyzMm": [900, 0, 0]},
            "bay": {"xyzMm": [1200, 400, 0]}, "tail": {"xyzMm": [2500, 0, 0]}
            """,
            "\"W1\": {\"from\": \"N:1\", \"to\": \"T:1\"}");
    assertThat(judged.subjects()).containsExactly("nodes/bay");
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            "one piece: bay and tail",
            "the other: dash and nose",
            "bay and dash are the nodes nearest to each other, 500 mm in a straight line");
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo(
            "add a segment between bay and dash, or correct where the ends of the wires stand");
  }

  @Test
  void aNodeThatNoSegmentReachesIsAPieceOfItsOwn() {
    Judged judged =
        judged(
            "",
            """
            "W1": {"from": "F:1", "to": "T:1"}, "W2": {"from": "N:1", "to": "D:1", "via": ["fin"]}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "the layout is in pieces: no way joins node tail (and 1 more node) and node fin,"
                + " as wire W1 needs",
            "the layout is in pieces: no way joins node nose (and 1 more node) and node fin,"
                + " as wire W2 needs");
  }

  @Test
  void aGivenLengthNeedsNoWay() {
    Judged judged =
        judged(
            "",
            """
            "W1": {"from": "N:1", "to": "T:1", "cutMm": 3000},
            "W2": {"from": "N:2", "to": "T:2", "builtMm": 3000}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(2);
  }

  @Test
  void whatStandsNowhereIsNotJudged() {
    Judged judged =
        judged(
            "",
            """
            "W1": {"from": "N:1", "to": "Q:1"}, "W2": {"from": "N:2", "to": ""}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly(
            "an end of it is open or not known", "nothing says where an end of it stands");
    Judged noLayout =
        Judged.of(
            new RouteBroken(),
            """
            {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
            """);
    assertThat(noLayout.coverage().missing().keySet()).containsExactly("the harness has no layout");
  }

  @Test
  void segmentsOfAnotherLoomThatWouldJoinThemAreSaid() {
    Judged judged =
        Judged.of(
            new RouteBroken(),
            Map.of(
                Judged.ROOT,
                """
                {"format": 1, "sketch": true, "uses": ["a.json", "b.json"],
                 "devices": {"A": {"at": "a"}, "B": {"at": "b"}}}
                """,
                "a.json",
                """
                {"format": 1, "loom": {"id": "one"},
                 "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 100}}}}
                """,
                "b.json",
                """
                {"format": 1, "loom": {"id": "two"},
                 "splices": {"S1": {"on": "s1", "offsetMm": 50}},
                 "wires": {"W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "B:2", "to": "S1"}}}
                """));
    assertThat(judged.messages())
        .containsExactly(
            "the layout for loom two is in pieces: no way joins node a and node b, as wire W1"
                + " needs",
            "wire W2 of loom two ends on segment s1, which belongs to loom one");
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo(
            "add a segment between a and b, or take the segments of loom one, which do join them,"
                + " into a file without a loom");
  }

  @Test
  void aNodeThatIsNamedAndNotDefinedHasAFindingOfItsOwn() {
    String json =
        """
        {"format": 1,
         "layout": {"nodes": {"nose": {}, "dash": {}, "tail": {}}, "segments": {
           "s1": {"from": "nose", "to": "dash", "lengthMm": 900}%s}},
         "devices": {"N": {"at": "nose", "pins": {"1": {}}}, "D": {"at": "dash", "pins": {"1": {}}},
                     "T": {"at": "tail", "pins": {"1": {}}}},
         "wires": {"W1": {"from": "N:1", "to": "%s:1"%s}}}
        """;
    String undefined = "a node of the layout is named and not defined";
    Judged via = Judged.of(new RouteBroken(), json.formatted("", "D", ", \"via\": [\"dahs\"]"));
    assertThat(via.messages()).isEmpty();
    assertThat(via.coverage().missing().keySet()).containsExactly(undefined);
    String segment = ", \"s2\": {\"from\": \"dash\", \"to\": \"tial\", \"lengthMm\": 900}";
    Judged end = Judged.of(new RouteBroken(), json.formatted(segment, "T", ""));
    assertThat(end.messages()).isEmpty();
    assertThat(end.coverage().missing().keySet()).containsExactly(undefined);
    assertThat(Judged.of(new RouteBroken(), json.formatted("", "T", "")).messages()).hasSize(1);
  }
}
