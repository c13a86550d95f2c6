package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class PairSplitTest {
  private static Judged judged(String wires, String group, String splices) {
    return Judged.of(
        new PairSplit(),
        """
        {"format": 1, "sketch": true,
         "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900},
           "s2": {"from": "a", "to": "c", "lengthMm": 500},
           "s3": {"from": "c", "to": "b", "lengthMm": 700}}},
         "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "C": {"at": "c"}},
         "splices": {%s},
         "wires": {%s},
         "groups": {"G": {%s}}}
        """
            .formatted(splices, wires, group));
  }

  private static final String PAIR = "\"kind\": \"twisted\", \"wires\": [\"W1\", \"W2\"]";

  @Test
  void togetherAllTheWayIsFine() {
    Judged judged =
        judged(
            """
            "W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "B:2", "to": "A:2"}
            """,
            PAIR,
            "");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void aViaOfOneOfThemLeadsItAway() {
    Judged judged =
        judged(
            """
            "W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "B:2", "via": ["c"]}
            """,
            PAIR,
            "");
    assertThat(judged.messages())
        .containsExactly(
            "wire W2 leaves the others of group G for 1200 mm, over segments s2 and s3, as its"
                + " \"via\" says; at most 50 mm are good practice");
    assertThat(judged.subjects()).containsExactly("wires/W2");
  }

  @Test
  void splicesSetApartByFiftyMillimetresAreFine() {
    String wires =
        """
        "W1": {"from": "A:1", "to": "S1"}, "W2": {"from": "A:2", "to": "S2"},
        "W3": {"from": "S1", "to": "B:1"}, "W4": {"from": "S2", "to": "B:2"}
        """;
    String splices =
        "\"S1\": {\"on\": \"s1\", \"offsetMm\": 300}, \"S2\": {\"on\": \"s1\", \"offsetMm\": %s}";
    assertThat(judged(wires, PAIR, splices.formatted("350")).messages()).isEmpty();
    assertThat(judged(wires, PAIR, splices.formatted("350.1")).messages())
        .containsExactly(
            "wire W2 leaves the others of group G for 50.1 mm, over segment s1; at most 50 mm are"
                + " good practice");
  }

  @Test
  void otherEndsLeadAwayToo() {
    assertThat(
            judged(
                    """
                    "W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "C:2"}
                    """,
                    PAIR,
                    "")
                .messages())
        .hasSize(1);
  }

  @Test
  void aScreenMayEndEarly() {
    assertThat(
            judged(
                    """
                    "W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "B:2"},
                    "W3": {"from": "A:3", "to": "E"}
                    """,
                    "\"kind\": \"cable\", \"wires\": [\"W1\", \"W2\", \"W3\"], \"screen\": \"W3\"",
                    "\"E\": {\"on\": \"s1\", \"offsetMm\": 200, \"kind\": \"end-cap\"}")
                .messages())
        .isEmpty();
  }

  @Test
  void withoutTwoRoutesItIsNotJudgedAndAloneNoSubject() {
    assertThat(
            judged(
                    """
                    "W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "Z:2"}
                    """,
                    PAIR,
                    "")
                .coverage()
                .missing()
                .keySet())
        .containsExactly("less than two of its wires have a route");
    assertThat(
            judged(
                    "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"}",
                    "\"kind\": \"cable\", \"wires\": [\"W1\"]",
                    "")
                .coverage()
                .subjects())
        .isZero();
  }

  @Test
  void outAndBackAlongOneSegmentNamesItOnce() {
    Judged judged =
        Judged.of(
            new PairSplit(),
            """
            {"format": 1, "sketch": true,
             "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900},
                                     "s2": {"from": "b", "to": "c", "lengthMm": 300}}},
             "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
             "groups": {"G": {"kind": "twisted", "wires": ["W1", "W2"]}},
             "wires": {"W1": {"from": "A:1", "to": "B:1"},
                       "W2": {"from": "A:2", "to": "B:2", "via": ["c"]}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "wire W2 leaves the others of group G for 600 mm, over segment s2, out and back, as its"
                + " \"via\" says; at most 50 mm are good practice");
  }
}
