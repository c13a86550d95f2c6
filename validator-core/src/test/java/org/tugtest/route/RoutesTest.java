package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;

class RoutesTest {
  /** a -300- b -200- c, and b -150- d. */
  private static final String LAYOUT =
      """
      "layout": {"nodes": {"a": {}, "b": {}, "c": {}, "d": {}}, "segments": {
        "s1": {"from": "a", "to": "b", "lengthMm": 300},
        "s2": {"from": "c", "to": "b", "lengthMm": 200},
        "s3": {"from": "b", "to": "d", "lengthMm": 150}}}
      """;

  private static final String DEVICES =
      """
      "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "C": {"at": "c"}, "D": {"at": "d"}}
      """;

  private static Laid wires(String wires) {
    return Laid.out(LAYOUT, DEVICES, "\"wires\": {" + wires + "}");
  }

  @Test
  void aWireRunsTheShortestWayAndGetsWhatItsEndsNeed() {
    Laid laid = wires("\"W1\": {\"from\": \"A:1\", \"to\": \"C:1\", \"areaMm2\": 1}");
    assertThat(laid.pieces("W1")).isEqualTo("s1 0-300, s2 200-0");
    assertThat(laid.route("W1").nodes()).containsExactly("a", "b", "c");
    // 500 mm of segments and, at each end, 60 breakout, 30 spare and 6 strip of the format
    assertThat(laid.route("W1").routedMm()).isEqualTo(692);
    assertThat(laid.route("W1").cutMm()).isEqualTo(695);
    assertThat(laid.route("W1").basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(laid.route("W1").restsOn())
        .containsExactly(
            "breakoutMm of the format (60 mm)",
            "serviceMm of the format (30 mm)",
            "stripMm of the format (6 mm)");
  }

  @Test
  void whichEndIsWhichChangesNothing() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "C:1"}, "W2": {"from": "C:2", "to": "A:2"}
            """);
    assertThat(laid.pieces("W2")).isEqualTo("s2 0-200, s1 300-0");
    assertThat(laid.route("W2").routedMm()).isEqualTo(laid.route("W1").routedMm());
  }

  @Test
  void figuresOfConnectorPinAndTerminalGoBeforeDefaultsAndThoseAreGiven() {
    Laid laid =
        Laid.out(
            LAYOUT,
            """
            "defaults": {"breakoutMm": 50, "serviceMm": 20, "stripMm": 5, "cutStepMm": 10},
            "parts": {"terminals": {"t": {"family": "f", "side": "ring", "areaMinMm2": 0.5,
                "areaMaxMm2": 2, "stripMm": 8}},
              "housings": {"h": {"side": "socket", "rows": [["1"]]}}},
            "devices": {"A": {"at": "c", "pins": {"1": {"at": "a", "breakoutMm": 12,
                "serviceMm": 0}}}},
            "connectors": {"X": {"housing": "h", "at": "b", "breakoutMm": 70}},
            "wires": {"W1": {"from": "A:1", "to": "X:1", "areaMm2": 1, "fromTerminal": "t"}}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s1 0-300");
    assertThat(laid.route("W1").routedMm()).isEqualTo(300 + 12 + 0 + 8 + 70 + 20 + 5);
    assertThat(laid.route("W1").cutMm()).isEqualTo(420);
    assertThat(laid.route("W1").basis()).isEqualTo(Basis.GIVEN);
    assertThat(laid.route("W1").restsOn()).isEmpty();
  }

  @Test
  void aSpliceStandsAtItsNodeOrAlongItsSegmentAndNeedsOnlyStrip() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "S1"}, "W2": {"from": "S1", "to": "S2"},
            "W3": {"from": "S2", "to": "S3"}, "W4": {"from": "S1", "to": "S3"}},
            "splices": {"S1": {"on": "s1", "offsetMm": 100}, "S2": {"on": "s1", "offsetMm": 240},
              "S3": {"at": "c"}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s1 0-100");
    assertThat(laid.route("W1").routedMm()).isEqualTo(100 + 96 + 6);
    assertThat(laid.pieces("W2")).isEqualTo("s1 100-240");
    assertThat(laid.route("W2").nodes()).isEmpty();
    assertThat(laid.pieces("W3")).isEqualTo("s1 240-300, s2 200-0");
    assertThat(laid.route("W3").nodes()).containsExactly("b", "c");
    assertThat(laid.route("W4").segmentsMm()).isEqualTo(400);
  }

  @Test
  void aSpliceAtTheVeryEndOfItsSegmentStandsAtTheNode() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "S1"}, "W2": {"from": "S1", "to": "C:1"}},
            "splices": {"S1": {"on": "s1", "offsetMm": 300}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s1 0-300");
    assertThat(laid.pieces("W2")).isEqualTo("s2 200-0");
  }

  @Test
  void viaIsPassedInOrderEvenOutAndBack() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "C:1", "via": ["d"]},
            "W2": {"from": "A:2", "to": "C:2", "via": ["b"]}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s1 0-300, s3 0-150, s3 150-0, s2 200-0");
    assertThat(laid.route("W1").nodes()).containsExactly("a", "b", "d", "b", "c");
    assertThat(laid.pieces("W2")).isEqualTo("s1 0-300, s2 200-0");
  }

  @Test
  void anOwnLoomAndWhatIsLooseMayBeUsedNoOtherLoom() {
    String json =
        """
        {"format": 1, "sketch": true, "uses": ["one.json", "two.json"],
         "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
         "layout": {"nodes": {"a": {}, "b": {}},
                    "segments": {"far": {"from": "a", "to": "b", "lengthMm": 900}}},
         "wires": {"W0": {"from": "A:0", "to": "B:0"}}}
        """;
    String loom =
        """
        {"format": 1, "loom": {"id": "%1$s"},
         "layout": {"segments": {"near-%1$s": {"from": "a", "to": "b", "lengthMm": %2$d}}},
         "wires": {"W-%1$s": {"from": "A:%1$s", "to": "B:%1$s"}}}
        """;
    Laid laid =
        new Laid(
            org.tugtest.rule.Judged.facts(
                Map.of(
                    org.tugtest.rule.Judged.ROOT,
                    json,
                    "one.json",
                    loom.formatted("one", 500),
                    "two.json",
                    loom.formatted("two", 1000))));
    assertThat(laid.pieces("W0")).isEqualTo("far 0-900");
    assertThat(laid.pieces("W-one")).isEqualTo("near-one 0-500");
    assertThat(laid.pieces("W-two")).isEqualTo("far 0-900");
  }

  @Test
  void ofEqualWaysTheOneOfFewerSegmentsThenTheFirstIdIsTakenAndTheOtherSaid() {
    String layout =
        """
        "layout": {"segments": {
          "s9": {"from": "a", "to": "x", "lengthMm": 100},
          "s10": {"from": "x", "to": "b", "lengthMm": 100},
          "s2": {"from": "a", "to": "y", "lengthMm": 120},
          "s11": {"from": "y", "to": "b", "lengthMm": 80}%s}},
        "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
        "wires": {"W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "B:2", "to": "A:2"}}
        """;
    Laid two = Laid.out(layout.formatted(""));
    assertThat(two.pieces("W1")).isEqualTo("s2 0-120, s11 0-80");
    assertThat(two.pieces("W2")).isEqualTo("s11 80-0, s2 120-0");
    assertThat(two.route("W1").equalWay()).containsExactly("s9", "s10");
    assertThat(two.route("W2").equalWay()).containsExactly("s10", "s9");
    Laid straight =
        Laid.out(layout.formatted(", \"z\": {\"from\": \"b\", \"to\": \"a\", \"lengthMm\": 200}"));
    assertThat(straight.pieces("W1")).isEqualTo("z 200-0");
    assertThat(straight.route("W1").equalWay()).containsExactly("s2", "s11");
  }

  @Test
  void oneLongerByAThousandthIsNotEqual() {
    Laid laid =
        Laid.out(
            """
            "layout": {"segments": {
              "s1": {"from": "a", "to": "b", "lengthMm": 100.001},
              "s2": {"from": "a", "to": "b", "lengthMm": 100}}},
            "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
            "wires": {"W1": {"from": "A:1", "to": "B:1"}}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s2 0-100");
    assertThat(laid.route("W1").equalWay()).isEmpty();
  }

  @Test
  void loopsSelfLoopsParallelsAndSegmentsOfNoLengthDoNoHarm() {
    Laid laid =
        Laid.out(
            """
            "layout": {"segments": {
              "loop": {"from": "a", "to": "a", "lengthMm": 50},
              "s1": {"from": "a", "to": "b", "lengthMm": 0},
              "s2": {"from": "a", "to": "b", "lengthMm": 0},
              "s3": {"from": "b", "to": "c", "lengthMm": 70},
              "s4": {"from": "c", "to": "a", "lengthMm": 70}}},
            "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "C": {"at": "c"}},
            "splices": {"S1": {"on": "loop", "offsetMm": 30}},
            "wires": {"W1": {"from": "A:1", "to": "C:1"}, "W2": {"from": "B:1", "to": "C:2"},
              "W3": {"from": "S1", "to": "C:3"}, "W4": {"from": "A:2", "to": "A:3"},
              "W5": {"from": "S1", "to": "S1"}}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s4 70-0");
    assertThat(laid.pieces("W2")).isEqualTo("s3 0-70");
    assertThat(laid.pieces("W3")).isEqualTo("loop 30-50, s4 70-0");
    assertThat(laid.pieces("W4")).isEmpty();
    assertThat(laid.route("W4").routedMm()).isEqualTo(192);
    assertThat(laid.pieces("W5")).isEmpty();
  }

  @Test
  void whatHasNoRouteSaysWhy() {
    Laid laid =
        Laid.out(
            LAYOUT,
            """
            "devices": {"A": {"at": "a"}, "N": {}, "F": {"at": "f"}, "Q": {"at": "nowhere"}},
            "splices": {"S1": {"on": "s1", "offsetMm": 301}, "S2": {}},
            "wires": {"W1": {"from": "A:1", "to": ""}, "W2": {"from": "A:2", "to": "N:1"},
              "W3": {"from": "A:3", "to": "Q:1"}, "W4": {"from": "A:4", "to": "S1"},
              "W5": {"from": "S2", "to": "A:5"},
              "W6": {"from": "A:6", "to": "A:7", "via": ["nowhere"]}}
            """);
    assertThat(laid.reason("W1")).isEqualTo(NoRoute.Why.END_OPEN);
    assertThat(laid.reason("W2")).isEqualTo(NoRoute.Why.NO_STAND);
    assertThat(laid.why("W2")).isEqualTo("nothing says at which node N:1 is");
    assertThat(laid.reason("W3")).isEqualTo(NoRoute.Why.BROKEN);
    assertThat(laid.why("W3")).isEqualTo("no loose segment reaches node nowhere");
    assertThat(laid.why("W4")).isEqualTo("splice S1 lies past the end of segment s1");
    assertThat(laid.why("W5")).isEqualTo("nothing says at which node or on which segment S2 is");
    assertThat(laid.why("W6")).isEqualTo("no loose segment reaches node nowhere");
    assertThat(Laid.out("\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"}}").reason("W1"))
        .isEqualTo(NoRoute.Why.NO_LAYOUT);
  }

  @Test
  void twoPiecesOfALayoutHaveNoWayBetweenThem() {
    Laid laid =
        Laid.out(
            """
            "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 100},
              "s2": {"from": "c", "to": "d", "lengthMm": 100}}},
            "devices": {"A": {"at": "a"}, "D": {"at": "d"}},
            "wires": {"W1": {"from": "A:1", "to": "D:1"}, "W2": {"from": "D:2", "to": "D:3"}}
            """);
    assertThat(laid.why("W1")).isEqualTo("no way joins node a and node d");
    assertThat(laid.facts().routes().missing("W1").orElseThrow().leg())
        .isEqualTo(new NoRoute.Leg("a", "d"));
    assertThat(laid.pieces("W2")).isEmpty();
  }

  @Test
  void aSegmentWithoutLengthOnlyMattersWhereItCouldBeOnTheWay() {
    Laid laid =
        Laid.out(
            """
            "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 100},
              "s2": {"from": "b", "to": "c"}, "s3": {"from": "b", "to": "c", "lengthMm": 90}}},
            "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "C": {"at": "c"}},
            "wires": {"W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "C:1"}}
            """);
    assertThat(laid.pieces("W1")).isEqualTo("s1 0-100");
    assertThat(laid.reason("W2")).isEqualTo(NoRoute.Why.NO_LENGTH);
    assertThat(laid.why("W2")).isEqualTo("segment s2 gives no length");
  }

  @Test
  void lengthsAreAsBuiltElseAsCutElseAsRouted() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "C:1"}, "W2": {"from": "A:2", "to": "C:2", "cutMm": 720},
            "W3": {"from": "A:3", "to": "C:3", "cutMm": 720, "builtMm": 731},
            "W4": {"from": "A:4", "to": "Z:1", "cutMm": 40}, "W5": {"from": "A:5", "to": "Z:2"}
            """);
    assertThat(laid.length("W1").mm()).isEqualTo(692);
    assertThat(laid.length("W1").origin()).isEqualTo("routed");
    assertThat(laid.length("W2").mm()).isEqualTo(720);
    assertThat(laid.length("W3").mm()).isEqualTo(731);
    assertThat(laid.length("W4").mm()).isEqualTo(40);
    assertThat(laid.facts().lengths().of(laid.facts().harness().wires().get("W5"))).isEmpty();
  }

  @Test
  void aTwistAddsItsLayOnThePiecesThatAreShared() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "C:1", "part": "w"},
            "W2": {"from": "A:2", "to": "C:2", "part": "w"},
            "W3": {"from": "A:3", "to": "D:3", "part": "w"},
            "W4": {"from": "A:4", "to": "B:4", "part": "w"}},
            "parts": {"wires": {"w": {"areaMm2": 0.35, "maxC": 125, "outerMm": 1.3}}},
            "groups": {"G1": {"kind": "twisted", "wires": ["W1", "W2"], "pitchMm": 25},
              "G2": {"kind": "twisted", "wires": ["W3", "W4"], "pitchMm": 20}
            """);
    // two wires of 1.3 mm: the middle of each runs on a circle of 1.3 mm
    double pair = Math.sqrt(1 + Math.pow(Math.PI * 1.3 / 25, 2));
    assertThat(laid.route("W1").routedMm()).isCloseTo(500 * pair + 192, within(1e-9));
    assertThat(laid.route("W1").basis()).isEqualTo(Basis.COMMON_PRACTICE);
    double other = Math.sqrt(1 + Math.pow(Math.PI * 1.3 / 20, 2));
    assertThat(laid.route("W3").routedMm()).isCloseTo(300 * other + 150 + 192, within(1e-9));
    assertThat(laid.route("W4").routedMm()).isCloseTo(300 * other + 192, within(1e-9));
  }

  @Test
  void theLayFactorIsThatOfTheHandbook() {
    // sqrt(1 + (pi D / L)^2): 1.074 at L = 8 D, 1.048 at 10, 1.034 at 12, 1.019 at 16 (geometry)
    double[][] rows = {{8, 1.074}, {10, 1.048}, {12, 1.034}, {16, 1.019}};
    for (double[] row : rows) {
      Laid laid =
          wires(
              """
              "W1": {"from": "A:1", "to": "C:1", "part": "w"},
              "W2": {"from": "A:2", "to": "C:2", "part": "w"}},
              "parts": {"wires": {"w": {"areaMm2": 0.35, "maxC": 125, "outerMm": 2}}},
              "groups": {"G1": {"kind": "twisted", "wires": ["W1", "W2"], "pitchMm": %s}
              """
                  .formatted(2 * row[0]));
      Route.Lay lay = laid.route("W1").lay();
      assertThat(lay).isNotNull();
      assertThat(lay.factor()).isCloseTo(row[1], within(5e-4));
    }
  }

  @Test
  void aTwistWithoutPitchOrDiameterIsNotCountedAndSaysSo() {
    Laid laid =
        wires(
            """
            "W1": {"from": "A:1", "to": "C:1", "part": "w"},
            "W2": {"from": "A:2", "to": "C:2", "part": "w"},
            "W3": {"from": "A:3", "to": "C:3"}, "W4": {"from": "A:4", "to": "C:4"}},
            "parts": {"wires": {"w": {"areaMm2": 0.35, "maxC": 125, "outerMm": 1.3}}},
            "groups": {"G1": {"kind": "twisted", "wires": ["W1", "W2"]},
              "G2": {"kind": "twisted", "wires": ["W3", "W4"], "pitchMm": 20}
            """);
    assertThat(laid.route("W1").routedMm()).isEqualTo(692);
    assertThat(laid.route("W1").restsOn())
        .contains("group G1 gives no pitchMm: its lay is not counted");
    assertThat(laid.route("W3").restsOn())
        .contains("a wire of group G2 has no diameter: its lay is not counted");
  }

  @Test
  void membersOfAGroupRunTogetherThoughTheirEndsDiffer() {
    // a square; W1 runs a-b-c (200); alone, W2 from a to d would run a-d over s4, not b-c-d
    String layout =
        """
        "layout": {"segments": {
          "s1": {"from": "a", "to": "b", "lengthMm": 100},
          "s2": {"from": "b", "to": "c", "lengthMm": 100},
          "s3": {"from": "c", "to": "d", "lengthMm": 10},
          "s4": {"from": "d", "to": "a", "lengthMm": 195}}},
        "devices": {"A": {"at": "a"}, "C": {"at": "c"}, "D": {"at": "d"}},
        "wires": {"W1": {"from": "A:1", "to": "C:1"}, "W2": {"from": "A:2", "to": "D:1"%s}}
        """;
    Laid alone = Laid.out(layout.formatted(""));
    assertThat(alone.pieces("W1")).isEqualTo("s1 0-100, s2 0-100");
    assertThat(alone.pieces("W2")).isEqualTo("s4 195-0");
    String group = ", \"groups\": {\"G\": {\"kind\": \"cable\", \"wires\": [\"W2\", \"W1\"]}}";
    Laid together = Laid.out(layout.formatted("") + group);
    assertThat(together.pieces("W1")).isEqualTo("s1 0-100, s2 0-100");
    assertThat(together.pieces("W2")).isEqualTo("s1 0-100, s2 0-100, s3 0-10");
    Laid via = Laid.out(layout.formatted(", \"via\": [\"d\"]") + group);
    assertThat(via.pieces("W2")).isEqualTo("s4 195-0");
  }
}
