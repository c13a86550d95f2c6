package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class HalvesDoNotFitTest {
  private static Judged judged(String skt, String pin) {
    return judged(skt, pin, "{}");
  }

  private static Judged judged(String skt, String pin, String pinMap) {
    return Judged.of(
        new HalvesDoNotFit(),
        """
        {"format": 1,
         "parts": {"housings": {"skt": %s, "pin": %s}},
         "connectors": {"X1": {"housing": "skt", "mates": "X2", "pinMap": %s},
                        "X2": {"housing": "pin"}}}
        """
            .formatted(skt, pin, pinMap));
  }

  private static String housing(String side, String rows, String more) {
    return "{\"side\": \"%s\", \"rows\": %s%s}".formatted(side, rows, more);
  }

  @Test
  void oppositeSidesWithTheSameCavitiesFit() {
    Judged judged =
        judged(housing("socket", "[[\"1\", \"2\"]]", ""), housing("pin", "[[\"2\", \"1\"]]", ""));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void oneHousingNamingTheOtherIsEnough() {
    assertThat(
            judged(
                    housing("socket", "[[\"1\"]]", ", \"matesWith\": [\"other\"]"),
                    housing("pin", "[[\"1\"]]", ", \"matesWith\": [\"skt\"]"))
                .messages())
        .isEmpty();
  }

  @Test
  void twoHalvesOfOneSideDoNotFit() {
    Judged judged = judged(housing("pin", "[[\"1\"]]", ""), housing("pin", "[[\"1\"]]", ""));
    assertThat(judged.messages())
        .containsExactly("X1 and X2 do not fit each other: both are pin halves");
    assertThat(judged.subjects()).containsExactly("connectors/X1");
  }

  @Test
  void aHousingMadeForAnotherDoesNotFit() {
    assertThat(
            judged(
                    housing("socket", "[[\"1\"]]", ""),
                    housing("pin", "[[\"1\"]]", ", \"matesWith\": [\"b\", \"a\"]"))
                .messages())
        .containsExactly(
            "X1 and X2 do not fit each other: housing pin mates with b and a, not with skt");
  }

  @Test
  void keyingIsComparedWhenBothGiveOne() {
    String a = ", \"keying\": \"A\"";
    assertThat(
            judged(housing("socket", "[[\"1\"]]", a), housing("pin", "[[\"1\"]]", "")).messages())
        .isEmpty();
    assertThat(
            judged(
                    housing("socket", "[[\"1\"]]", a),
                    housing("pin", "[[\"1\"]]", ", \"keying\": \" a \""))
                .messages())
        .isEmpty();
    assertThat(
            judged(
                    housing("socket", "[[\"1\"]]", a),
                    housing("pin", "[[\"1\"]]", ", \"keying\": \"B\""))
                .messages())
        .containsExactly("X1 and X2 do not fit each other: keying \"A\" meets keying \"B\"");
  }

  @Test
  void cavitiesWithoutCounterpartAreNamedOnBothHalves() {
    assertThat(
            judged(
                    housing("socket", "[[\"1\", \"2\", \"3\"]]", ""),
                    housing("pin", "[[\"1\", \"A\"]]", ""))
                .messages())
        .containsExactly(
            "X1 and X2 do not fit each other: X2 has no cavities 2 and 3; X1 has no cavity A");
  }

  @Test
  void anAdaptorNeedNotHaveTheSameCavities() {
    String four = housing("socket", "[[\"1\", \"2\", \"3\", \"4\"]]", "");
    String two = housing("pin", "[[\"A\", \"B\"]]", "");
    Judged judged = judged(four, two, "{\"1\": \"A\", \"4\": \"B\"}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
    assertThat(judged(four, housing("socket", "[[\"A\"]]", ""), "{\"1\": \"A\"}").messages())
        .containsExactly("X1 and X2 do not fit each other: both are socket halves");
  }

  @Test
  void aWiredCavityThatAnAdaptorLeavesOutMustNotMeetAMappedContact() {
    String json =
        """
        {"format": 1, "sketch": true,
         "parts": {"housings": {"skt": {"side": "socket", "rows": [["1", "2"]]},
                                "pin": {"side": "pin", "rows": [["2", "1"]]}}},
         "connectors": {"X1": {"housing": "skt", "mates": "X2", "pinMap": %s},
                        "X2": {"housing": "pin"}},
         "wires": {"W2": {"from": "X1:2", "to": "S1"}}}
        """;
    assertThat(Judged.of(new HalvesDoNotFit(), json.formatted("{\"1\": \"2\"}")).messages())
        .containsExactly(
            "X1 and X2 do not fit each other: contact 2 is met by cavity 1 of X1, as its pinMap"
                + " says, and by cavity 2, which it leaves out");
    assertThat(
            Judged.of(new HalvesDoNotFit(), json.formatted("{\"1\": \"2\", \"2\": \"1\"}"))
                .messages())
        .isEmpty();
  }

  @Test
  void aPortIsComparedByItsCavitiesNotByItsPins() {
    String json =
        """
        {"format": 1,
         "parts": {"housings": {
           "skt": {"side": "socket", "rows": [["1", "2"]]},
           "pin": {"side": "pin", "rows": [["2", "1"]]}}},
         "devices": {"ECU": {"ports": {"A": {"housing": "pin", "pins": {"1": "30", "2": "31"}},
                                       "B": {}}}},
         "connectors": {"X1": {"housing": "skt", "mates": "ECU.A"},
                        "X2": {"housing": "skt", "mates": "ECU.B"}}}
        """;
    Judged judged = Judged.of(new HalvesDoNotFit(), json);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("the housing of one of the halves is not known");
  }

  @Test
  void allThatIsWrongStandsInOneFinding() {
    assertThat(
            judged(
                    housing("pin", "[[\"1\", \"2\"]]", ", \"keying\": \"A\""),
                    housing("pin", "[[\"1\"]]", ", \"keying\": \"B\""))
                .messages())
        .containsExactly(
            "X1 and X2 do not fit each other: both are pin halves; keying \"A\" meets keying"
                + " \"B\"; X2 has no cavity 2");
  }
}
