package org.tugtest.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Judged;

class TracerTest {
  private static final String LAMP =
      """
      {
        "format": 1, "title": "Work lamp",
        "parts": {
          "wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}},
          "fuses": {"mini-10": {"ratingA": 10, "style": "blade-mini"}},
          "terminals": {
            "skt-2.8": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 1.5}
          },
          "housings": {
            "lamp-skt": {
              "side": "socket", "family": "t2.8", "rows": [["1", "2", "3"]],
              "terminals": ["skt-2.8"]
            },
            "lamp-pin": {"side": "pin", "family": "t2.8", "rows": [["3", "2", "1"]]}
          }
        },
        "devices": {
          "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
          "FB": {
            "elements": {
              "f1": {"kind": "fuse", "a": "in", "b": "1"},
              "f2": {"kind": "fuse", "a": "in", "b": "2"}
            }
          },
          "SW": {
            "positions": ["off", "on"],
            "elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}
          },
          "LAMP": {
            "ports": {"plug": {"housing": "lamp-pin"}},
            "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35, "atVolts": 12}}
          },
          "CASE": {"pins": {"g": {"family": "stud-m6"}}, "boltedTo": {"g": "BODY:g"}},
          "BODY": {"pins": {"g": {"family": "stud-m6"}}}
        },
        "fitted": {"FB.f1": "mini-10"},
        "connectors": {"X1": {"housing": "lamp-skt", "mates": "LAMP"}},
        "splices": {"S1": {}},
        "wires": {
          "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5, "cutMm": 150},
          "W2": {"from": "FB:1", "to": "SW:1", "part": "w1.0", "colour": "RD/WH"},
          "W3": {"from": "SW:2", "to": "X1:1", "part": "w1.0", "colour": "YE", "circuit": "lamp"},
          "W4": {"from": "X1:2", "to": "S1", "part": "w1.0", "colour": "BK"},
          "W5": {"from": "S1", "to": "BAT:-", "awg": "14", "colour": "BK"},
          "W6": {"from": "S1", "to": "CASE:g", "awg": "14", "colour": "BK"}
        },
        "groups": {"feeders": {"kind": "cable", "wires": ["W3", "W4"]}}
      }
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "X9:1 | there is no X9:1; did you mean X1:1?",
        "LAM | there is no LAM; did you mean LAMP?",
        "wires/W7 | there is no W7; did you mean W1, W2 or W3?",
        "nothing-like-it | there is no nothing-like-it; name a contact such as R1:3, or the id of a"
            + " wire, connector, device or splice",
        "X1:4 | connector X1 has no 4; it has 1, 2, 3",
        "FB:3 | device FB has no 3; it has 1, 2, in",
        "FB.f3 | there is no FB.f3; did you mean FB.f1 or FB.f2?",
      })
  void whatIsNotThereIsAnsweredWithWhatIsNear(String thing, String answer) {
    Tracer tracer = tracer(LAMP);

    assertThat(tracer.trace(thing)).isEmpty();
    assertThat(tracer.notFound(thing)).isEqualTo(answer);
  }

  @Test
  void aCavityBothWays() {
    assertThat(trace(LAMP, "X1:2"))
        .isEqualTo(
            """
            X1:2, cavity of connector X1 (housing lamp-skt), terminal skt-2.8 @37
              W4 BK w1.0 1 mm2 to S1 @43
                W5 BK AWG 14 to BAT:- @44
                  BAT.cell (source 12.6 V) to BAT:+ @18
                W6 BK AWG 14 to CASE:g @45
                  bolted to BODY:g @34
              meets LAMP:2 @29
                LAMP.bulb (load 35 W) to LAMP:1 @31
            net BAT:-: 6 points, 3 wires
            return: BAT:- -W5- S1 -W4- X1:2
            in state as drawn: 0.01 V; 3.035 A out by W4; 3.035 A in by X1:2-LAMP:2; W2, W3, W4\
             and 1 more lack a figure
            """);
  }

  @Test
  void theFeedSideIsNamedWithItsFuse() {
    assertThat(trace(LAMP, "connectors/X1:1"))
        .isEqualTo(
            """
            X1:1, cavity of connector X1 (housing lamp-skt), terminal skt-2.8 @37
              W3 YE w1.0 1 mm2 "lamp" to SW:2 @42
                SW.contact (contact, closed in position on) to SW:1 @27
              meets LAMP:1 @29
                LAMP.bulb (load 35 W) to LAMP:2 @31
            net LAMP:1: 3 points, 1 wire
            feed: BAT:+ -W1- FB:in -FB.f1- FB:1 -W2- SW:1 -SW.contact- SW:2 -W3- X1:1; through\
             FB.f1 (fuse 10 A)
            in state as drawn: 12.52 V; 3.035 A in by W3; 3.035 A out by X1:1-LAMP:1; W2, W3, W4\
             and 1 more lack a figure
            """);
  }

  @Test
  void aSpareCavityAndAnEmptyFuseWay() {
    assertThat(trace(LAMP, "X1:3"))
        .isEqualTo(
            """
            X1:3, cavity of connector X1 (housing lamp-skt) @37
              meets LAMP:3 @29
            net LAMP:3: 2 points, 0 wires
            feed and return: no way to a source that passes no load and no coil
            in state as drawn: not live
            """);
    assertThat(trace(LAMP, "FB:2"))
        .isEqualTo(
            """
            FB:2, pin of device FB @19
              FB.f2 (fuse way, no fuse fitted) to FB:in @22
            net FB:2: 1 point, 0 wires
            feed and return: no way to a source that passes no load and no coil
            in state as drawn: not live
            """);
  }

  @Test
  void aWireFromEndToEnd() {
    assertThat(trace(LAMP, "W1"))
        .isEqualTo(
            """
            W1 2.5 mm2 cut 150 mm, wire @40
              from BAT:+, pin of device BAT @40
                BAT.cell (source 12.6 V) to BAT:- @18
              to FB:in, pin of device FB @40
                FB.f1 (fuse 10 A) to FB:1 @21
                FB.f2 (fuse way, no fuse fitted) to FB:2 @22
            net BAT:+: 2 points, 1 wire
            feed: BAT:+; no fuse
            in state as drawn: 0.007 V across it; 3.035 A from BAT:+; W2, W3, W4 and 1 more lack a\
             figure
            """);
  }

  @Test
  void aConnectorCavityByCavity() {
    String connector =
        """
        connector X1 (housing lamp-skt), plugged into LAMP.plug @37
          1: W3 YE w1.0 1 mm2 "lamp" to SW:2; meets LAMP:1 @42
          2: W4 BK w1.0 1 mm2 to S1; meets LAMP:2 @43
          3: no wire; meets LAMP:3 @37
        """;
    assertThat(trace(LAMP, "X1")).isEqualTo(connector);
    assertThat(trace(LAMP, "LAMP.plug")).isEqualTo(connector);
  }

  @Test
  void aDevicePinByPin() {
    assertThat(trace(LAMP, "SW"))
        .isEqualTo(
            """
            device SW @25
              1: W2 RD/WH w1.0 1 mm2 to FB:1 @41
              2: W3 YE w1.0 1 mm2 "lamp" to X1:1 @42
              SW.contact (contact, closed in position on) between 1 and 2 @27
            """);
  }

  @Test
  void anElementAtBothEnds() {
    assertThat(trace(LAMP, "FB.f1"))
        .isEqualTo(
            """
            FB.f1 (fuse 10 A) @21
              FB:in, pin of device FB @19
                W1 2.5 mm2 cut 150 mm to BAT:+ @40
                  BAT.cell (source 12.6 V) to BAT:- @18
                FB.f2 (fuse way, no fuse fitted) to FB:2 @22
                net BAT:+: 2 points, 1 wire
                feed: BAT:+ -W1- FB:in; no fuse
              FB:1, pin of device FB @19
                W2 RD/WH w1.0 1 mm2 to SW:1 @41
                  SW.contact (contact, closed in position on) to SW:2 @27
                net FB:1: 2 points, 1 wire
                feed: BAT:+ -W1- FB:in -FB.f1- FB:1; through FB.f1 (fuse 10 A)
            in state as drawn: 0.03 V across it; 3.035 A from FB:in; W2, W3, W4 and 1 more lack a\
             figure
            """);
  }

  @Test
  void aGroupWireByWire() {
    assertThat(trace(LAMP, "feeders"))
        .isEqualTo(
            """
            group feeders @47
              W3 YE w1.0 1 mm2 "lamp" from SW:2 to X1:1 @42
              W4 BK w1.0 1 mm2 from X1:2 to S1 @43
            """);
  }

  @Test
  void aSketchWithoutSourceRoundALoop() {
    String sketch =
        """
        {"format": 1, "sketch": true, "wires": {
          "A": {"from": "R1:1", "to": "S1"},
          "B": {"from": "S1", "to": "S2"},
          "C": {"from": "S2", "to": "S1"},
          "D": {"from": "S2"}}}
        """;
    assertThat(trace(sketch, "R1:1"))
        .isEqualTo(
            """
            R1:1, cavity of connector R1 (named by wires only) @1
              A to S1 @2
                B to S2 @3
                  C to S1 (see above) @4
                  D ends on nothing @5
                C to S2 (see above) @4
            net R1:1: 3 points, 4 wires
            feed and return: not known, since no source is given
            """);
  }

  @Test
  void aWireWhoseEndIsNotKnown() {
    String wires =
        """
        {"format": 1, "splices": {"S1": {}}, "wires": {
          "A": {"from": "S1", "to": "NOPE:1"}}}
        """;
    assertThat(trace(wires, "S1"))
        .isEqualTo(
            """
            S1, splice @1
              A to NOPE:1, which is not known @2
            net S1: 1 point, 1 wire
            feed and return: not known, since no source is given
            """);
  }

  @Test
  void aLongChainEndsWithoutFailing() {
    String wires =
        IntStream.range(0, 20_000)
            .mapToObj(
                i -> "\"W" + i + "\": {\"from\": \"S" + i + "\", \"to\": \"S" + (i + 1) + "\"}")
            .collect(Collectors.joining(","));

    List<TraceLine> lines =
        tracer("{\"format\": 1, \"sketch\": true, \"wires\": {" + wires + "}}")
            .trace("S0")
            .orElseThrow();

    assertThat(lines).hasSize(1 + 500 + 1 + 2);
    assertThat(lines.get(501).text()).isEqualTo("and 19500 more lines");
  }

  @Test
  void aContactThatASketchDoesNotNameIsNotThere() {
    Tracer tracer =
        tracer(
            """
            {"format": 1, "sketch": true,
             "devices": {"L": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
             "wires": {"W1": {"from": "L:1", "to": "X1:4"}}}
            """);

    for (String there : List.of("L:1", "L:2", "X1:4")) {
      assertThat(tracer.trace(there)).as(there).isPresent();
    }
    for (String not : List.of("L:9", "X1:1", "X2:1")) {
      assertThat(tracer.trace(not)).as(not).isEmpty();
    }
    assertThat(tracer.notFound("L:9")).isEqualTo("device L has no 9; it has 1, 2");
    assertThat(tracer.notFound("X1:1")).isEqualTo("connector X1 has no 1; it has 4");
  }

  private static String trace(String json, String thing) {
    Optional<List<TraceLine>> lines = tracer(json).trace(thing);
    assertThat(lines).as(thing).isPresent();
    return lines.orElseThrow().stream()
        .map(
            line ->
                "  ".repeat(line.depth())
                    + line.text()
                    + (line.at() == null ? "" : " @" + line.at().line())
                    + "\n")
        .collect(Collectors.joining());
  }

  private static Tracer tracer(String json) {
    HarnessReader reader =
        new HarnessReader(MemoryFiles.of("car.harness.json", json), ReadLimits.STANDARD);
    return new Tracer(Facts.of(reader.read("car.harness.json"), Judged.TODAY, KnownRules.NONE));
  }

  @Test
  void aWireLaidInPlaceSaysSo() {
    assertThat(trace(LAMP.replace("\"cutMm\": 150", "\"laidInPlace\": true"), "W1"))
        .startsWith("W1 2.5 mm2 laid in place, wire @40\n");
  }
}
