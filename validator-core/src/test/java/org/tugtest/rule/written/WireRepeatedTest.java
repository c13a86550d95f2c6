package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class WireRepeatedTest {
  private static final String PARTS =
      """
      "parts": {
        "housings": {"one": {"side": "socket", "rows": [["1", "2"]], "terminals": ["t1"]},
                     "two": {"side": "socket", "rows": [["1", "2"]], "terminals": ["t1", "t2"]}},
        "terminals": {"t1": {"family": "f", "side": "socket", "areaMinMm2": 1, "areaMaxMm2": 4},
                      "t2": {"family": "f", "side": "socket", "areaMinMm2": 1, "areaMaxMm2": 4,
                             "maxWires": 2}}},
      "connectors": {"ONE": {"housing": "one"}, "TWO": {"housing": "two"}},
      "devices": {"BAT": {"pins": {"+": {"family": "stud-m8"}, "f": {"family": "stud-m6",
                                   "maxTerminals": 1}}}}
      """;

  private static Judged judged(String... wires) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < wires.length; i++) {
      all.append(i == 0 ? "" : ", ").append("\"W%d\": {%s}".formatted(i + 1, wires[i]));
    }
    return Judged.of(
        new WireRepeated(),
        "{\"format\": 1, \"sketch\": true, " + PARTS + ", \"wires\": {" + all + "}}");
  }

  private static String wire(String from, String to, String more) {
    return "\"from\": \"%s\", \"to\": \"%s\"%s".formatted(from, to, more);
  }

  private static String feed(String from, String to) {
    return wire(from, to, ", \"circuit\": \"feed\"");
  }

  @Test
  void wiresWithOneEndInCommonAreFine() {
    Judged judged = judged(wire("S1", "S2", ""), wire("S1", "S3", ""), wire("S2", "S3", ""));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void sameEndsEitherWayRoundAreRepeated() {
    for (String second : new String[] {wire("S1", "S2", ""), wire("S2", "S1", "")}) {
      Judged judged = judged(wire("S1", "S2", ""), second);
      assertThat(judged.messages()).containsExactly("wires W1 and W2 both run from S1 to S2");
      assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
      assertThat(judged.coverage().judged()).isEqualTo(2);
    }
  }

  @Test
  void allOfThemAreOneFinding() {
    assertThat(judged(wire("S1", "S2", ""), wire("S1", "S2", ""), wire("S2", "S1", "")).messages())
        .containsExactly("wires W1, W2 and W3 all run from S1 to S2");
  }

  @Test
  void sameCircuitBetweenContactsThatTakeBothIsMeant() {
    assertThat(judged(feed("S1", "S2"), feed("S2", "S1")).messages()).isEmpty();
    assertThat(judged(feed("BAT:+", "S2"), feed("S2", "BAT:+")).messages()).isEmpty();
    assertThat(judged(feed("BAT:+", "TWO:1"), feed("BAT:+", "TWO:1")).messages()).isEmpty();
  }

  @Test
  void sameCircuitIsNotEnoughWhereAContactTakesOne() {
    assertThat(judged(feed("S1", "BAT:f"), feed("S1", "BAT:f")).messages()).hasSize(1);
    assertThat(judged(feed("S1", "ONE:1"), feed("S1", "ONE:1")).messages()).hasSize(1);
    assertThat(judged(feed("S1", "NEW:1"), feed("S1", "NEW:1")).messages()).hasSize(1);
    assertThat(judged(feed("S1", "TWO:1"), feed("S1", "TWO:1"), feed("S1", "TWO:1")).messages())
        .hasSize(1);
  }

  @Test
  void circuitsThatDifferOrAreMissingDoNotSayThatTheyShare() {
    assertThat(judged(feed("S1", "S2"), wire("S1", "S2", "")).messages()).hasSize(1);
    assertThat(judged(feed("S1", "S2"), wire("S1", "S2", ", \"circuit\": \"b\"")).messages())
        .hasSize(1);
  }

  @Test
  void wireThatShallBeRemovedRepeatsNothing() {
    assertThat(
            judged(wire("S1", "S2", ""), wire("S1", "S2", ", \"decision\": \"remove\"")).messages())
        .isEmpty();
  }

  @Test
  void wireWithAnOpenEndIsNotJudged() {
    Judged judged = judged("\"from\": \"S1\"", "\"from\": \"S1\"");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(2);
  }
}
