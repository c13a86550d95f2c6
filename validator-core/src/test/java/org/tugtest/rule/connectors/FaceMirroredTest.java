package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class FaceMirroredTest {
  private static Judged judged(String skt, String pin) {
    return Judged.of(
        new FaceMirrored(),
        """
        {"format": 1,
         "parts": {"housings": {"skt": {"side": "socket", "rows": %s},
                                "pin": {"side": "pin", "rows": %s}}},
         "connectors": {"X1": {"housing": "skt", "mates": "X2"}, "X2": {"housing": "pin"},
                        "X3": {"housing": "pin", "mates": "X4"}, "X4": {"housing": "skt"}}}
        """
            .formatted(skt, pin));
  }

  @Test
  void rowsFromRightToLeftAreMirrorImages() {
    Judged judged =
        judged(
            "[[\"1\", \"2\", \"3\"], [\"4\", \"5\"]]", "[[\"3\", \"2\", \"1\"], [\"5\", \"4\"]]");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aColumnLooksAlikeFromBothSidesAndGapsDoNotCount() {
    assertThat(judged("[[\"1\"], [\"2\"]]", "[[\"1\"], [\"2\"]]").messages()).isEmpty();
    assertThat(judged("[[\"1\", \"\", \"2\"]]", "[[\"2\", \"1\"], [\"\"]]").messages()).isEmpty();
  }

  @Test
  void rowsWrittenAlikeAreOneFindingForBothPairs() {
    Judged judged = judged("[[\"1\", \"2\"], [\"3\", \"4\"]]", "[[\"1\", \"2\"], [\"3\", \"4\"]]");
    assertThat(judged.messages())
        .containsExactly(
            "the rows of housings pin and skt are not mirror images: both are written alike, so"
                + " one of them is seen from the mating face");
    assertThat(judged.findings().get(0).details())
        .containsExactly("they meet in X1 and X2", "they meet in X3 and X4");
    assertThat(judged.subjects()).containsExactly("parts/housings/pin");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aFaceTurnedUpsideDownIsNamed() {
    assertThat(
            judged("[[\"1\", \"2\"], [\"3\", \"4\"]]", "[[\"3\", \"4\"], [\"1\", \"2\"]]")
                .messages())
        .containsExactly(
            "the rows of housings pin and skt are not mirror images: they agree only with the"
                + " latch of one of them down");
  }

  @Test
  void theCavitiesThatDoNotFaceEachOtherAreNamed() {
    assertThat(
            judged("[[\"1\", \"2\"], [\"3\", \"4\"]]", "[[\"2\", \"1\"], [\"3\", \"4\"]]")
                .messages())
        .containsExactly(
            "the rows of housings pin and skt are not mirror images: cavities 3 and 4 do not face"
                + " each other");
  }

  @Test
  void otherCavitiesAreNotJudged() {
    Judged judged = judged("[[\"1\", \"2\"]]", "[[\"1\", \"A\"]]");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("the halves do not have the same cavities");
  }

  @Test
  void adaptorsAndUnknownHousingsAreNotJudged() {
    Judged judged =
        Judged.of(
            new FaceMirrored(),
            """
            {"format": 1,
             "parts": {"housings": {"skt": {"side": "socket", "rows": [["1", "2"]]},
                                    "pin": {"side": "pin", "rows": [["1", "2"]]}}},
             "connectors": {"X1": {"housing": "skt", "mates": "X2", "pinMap": {"1": "2", "2": "1"}},
                            "X2": {"housing": "pin"}, "X3": {"mates": "X4"}, "X4": {}}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys(
            "an adaptor's pinMap joins other cavities",
            "the housing of one of the halves is not known");
  }
}
