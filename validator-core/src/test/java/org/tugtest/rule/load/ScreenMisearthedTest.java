package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class ScreenMisearthedTest {
  /** A control unit with an earthed and a floating pin, a plug pair halfway, and a sensor. */
  private static Judged judged(String wires, String groups) {
    return Judged.of(
        new ScreenMisearthed(),
        """
        {"format": 1,
         "parts": {"housings": {"h": {"side": "pin", "family": "t1.5", "rows": [["1", "2", "3"]]},
                                "s": {"side": "socket", "family": "t1.5", "rows": [["3", "2", "1"]]}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"elements": {"in": {"kind": "signal", "pin": "1", "type": "pulse"},
                                "screen": {"kind": "link", "a": "2", "b": "31"},
                                "screen-2": {"kind": "link", "a": "3", "b": "31"},
                                "spare": {"kind": "signal", "pin": "9", "type": "digital"}}}},
         "connectors": {"XA": {"housing": "h", "mates": "XB"}, "XB": {"housing": "s"}},
         "splices": {"S1": {}, "E1": {"kind": "end-cap"}, "E2": {"kind": "end-cap"}},
         "wires": {"W0": {"from": "ECU:31", "to": "BAT:-"}, %s},
         "groups": {%s}}
        """
            .formatted(wires, groups));
  }

  private static String group(String id, String screen) {
    return "\"%s\": {\"kind\": \"cable\", \"wires\": [], \"screen\": \"%s\"}".formatted(id, screen);
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  @Test
  void oneEarthedEndIsFine() {
    Judged judged = judged(wire("W1", "ECU:2", "E1"), group("G1", "W1"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void aScreenThatFloatsIsFound() {
    assertThat(judged(wire("W1", "E2", "E1"), group("G1", "W1")).messages())
        .containsExactly("screen W1 is earthed nowhere");
    assertThat(judged(wire("W1", "ECU:9", "E1"), group("G1", "W1")).messages())
        .containsExactly("screen W1 is earthed nowhere");
  }

  @Test
  void aScreenEarthedTwiceIsFound() {
    Judged judged = judged(wire("W1", "ECU:2", "BAT:-"), group("G1", "W1"));
    assertThat(judged.messages())
        .containsExactly("screen W1 is earthed at more than one end: ECU:2 and BAT:-");
    assertThat(judged.subjects()).containsExactly("groups/G1");
  }

  @Test
  void aScreenGoesOnThroughAPlug() {
    String wires = wire("W1", "ECU:2", "XA:2") + ", " + wire("W2", "XB:2", "E1");
    String groups = group("G1", "W1") + ", " + group("G2", "W2");
    Judged judged = judged(wires, groups);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
    String earthedTwice = wire("W1", "ECU:2", "XA:2") + ", " + wire("W2", "XB:2", "BAT:-");
    assertThat(judged(earthedTwice, groups).messages())
        .containsExactly("screens W1 and W2 are earthed at more than one end: ECU:2 and BAT:-");
  }

  @Test
  void screensOfASpliceAreEarthedOnceTogether() {
    String wires =
        String.join(
            ", ", wire("W1", "ECU:2", "S1"), wire("W2", "S1", "E1"), wire("W3", "S1", "E2"));
    String groups = group("G1", "W1") + ", " + group("G2", "W2") + ", " + group("G3", "W3");
    assertThat(judged(wires, groups).findings()).isEmpty();
    String second = wires.replace("\"to\": \"E2\"", "\"to\": \"ECU:3\"");
    assertThat(judged(second, groups).messages())
        .containsExactly("screens W1, W2 and W3 are earthed at more than one end: ECU:2 and ECU:3");
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    Judged open = judged(wire("W1", "ECU:2", "NOT:1"), group("G1", "W1"));
    assertThat(open.coverage().notJudged()).isEqualTo(1);
    Judged noSource =
        Judged.of(
            new ScreenMisearthed(),
            """
            {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1"}},
             "groups": {"G1": {"kind": "cable", "wires": [], "screen": "W1"}}}
            """);
    assertThat(noSource.findings()).isEmpty();
    assertThat(noSource.coverage().notJudged()).isEqualTo(1);
  }
}
