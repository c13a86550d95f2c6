package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.rule.Judged;

/** 1000 mm of segment and, at each end, 60 breakout, 30 spare and 6 strip: 1192 mm are needed. */
class WireTooShortTest {
  private static Judged judged(String length) {
    return new Loom(
            Loom.segment("s1", "a", "b", 1000, ""),
            "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"part\": \"w3\"%s}".formatted(length),
            "")
        .judged(new WireTooShort());
  }

  @Test
  void whatTheRouteNeedsAndMoreIsFine() {
    assertThat(judged(", \"cutMm\": 1192").messages()).isEmpty();
    assertThat(judged(", \"cutMm\": 1192.1").coverage().judged()).isEqualTo(1);
  }

  @Test
  void aTenthLessIsTooShort() {
    Judged judged = judged(", \"cutMm\": 1191.9");
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 is to be cut to 1191.9 mm, but its route needs 1192 mm; it reaches, with 0.1"
                + " mm less spare than planned");
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo("cut it to 1195 mm, or correct the route or what its ends need");
    assertThat(judged.findings().get(0).basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            "route over s1: 1000 mm of segments, 120 mm breakout, 60 mm spare and 12 mm strip",
            "rests on breakoutMm of the format (60 mm), serviceMm of the format (30 mm) and"
                + " stripMm of the format (6 mm)");
  }

  @Test
  void itSaysWhetherItReachesWithoutItsSpare() {
    assertThat(judged(", \"cutMm\": 1132").messages().get(0)).contains("it reaches, with 60 mm");
    assertThat(judged(", \"cutMm\": 1131").messages())
        .containsExactly(
            "wire W1 is to be cut to 1131 mm, but its route needs 1192 mm; it does not reach, even"
                + " without the 60 mm of spare");
  }

  @Test
  void theBuiltLengthGoesBeforeTheCutOne() {
    assertThat(judged(", \"cutMm\": 100, \"builtMm\": 1200").messages()).isEmpty();
    assertThat(judged(", \"cutMm\": 1200, \"builtMm\": 1100").messages().get(0))
        .startsWith("wire W1 is built 1100 mm, but its route needs 1192 mm");
  }

  @Test
  void withoutLengthItIsNoSubjectAndWithoutRouteNotJudged() {
    assertThat(judged("").coverage().subjects()).isZero();
    Judged judged =
        new Loom(
                Loom.segment("s1", "a", "x", 1000, ""),
                "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"cutMm\": 50}",
                "")
            .judged(new WireTooShort());
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly("no way along the layout joins its ends");
  }

  @Test
  void laidInPlaceItIsSubjectOnceMeasuredAndLaidAnew() {
    assertThat(judged(", \"laidInPlace\": true").coverage().subjects()).isZero();
    assertThat(judged(", \"laidInPlace\": true, \"builtMm\": 1192").messages()).isEmpty();
    Judged judged = judged(", \"laidInPlace\": true, \"builtMm\": 1191");
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 is built 1191 mm, but its route needs 1192 mm; it reaches, with 1 mm less"
                + " spare than planned");
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo(
            "lay it anew, 1192 mm or up to the tolerance longer, or correct the route or what its"
                + " ends need");
  }

  @Test
  void aLengthInMetresIsFoundWithoutARoute() {
    String text =
        """
        {"format": 1, "sketch": true,
         "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1, "cutMm": %s}}}
        """;
    assertThat(Judged.of(new WireTooShort(), text.formatted("12")).findings()).isEmpty();
    Judged judged = Judged.of(new WireTooShort(), text.formatted("2.8"));
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 is to be cut to 2.8 mm, but its two ends alone are stripped over 12 mm");
    assertThat(judged.findings().get(0).remedy()).contains("3000");
  }
}
