package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

/** 1192 mm are needed, cut to 1195 mm; between 0.3 and 1.5 m the table allows 50 mm more. */
class WireTooLongTest {
  private static Judged judged(double segment, double cut, String more) {
    return new Loom(
            Loom.segment("s1", "a", "b", segment, ""),
            "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"cutMm\": %s}".formatted(cut),
            more)
        .judged(new WireTooLong());
  }

  @Test
  void upToTheToleranceIsFine() {
    assertThat(judged(1000, 1195, "").messages()).isEmpty();
    assertThat(judged(1000, 1245, "").messages()).isEmpty();
    assertThat(judged(1000, 5, "").messages()).isEmpty();
  }

  @Test
  void overTheToleranceIsTooLong() {
    Judged judged = judged(1000, 1245.1, "");
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 is to be cut to 1245.1 mm, 50.1 mm more than the 1195 mm its route is cut to;"
                + " at most 1245 mm are in tolerance");
    assertThat(judged.findings().get(0).details().get(0))
        .isEqualTo("tolerance 50 mm: IPC/WHMA-A-620 table 11-1 (draft B for industry review)");
  }

  @Test
  void otherBandsHoldForOtherLengths() {
    // 4000 + 192 = 4192, cut to 4195: 150 mm
    assertThat(judged(4000, 4345, "").messages()).isEmpty();
    assertThat(judged(4000, 4346, "").messages()).hasSize(1);
    // 20000 + 192, cut to 20195: 5 %
    assertThat(judged(20000, 21204.7, "").messages()).isEmpty();
    assertThat(judged(20000, 21205, "").messages()).hasSize(1);
  }

  @Test
  void aTeamMayAllowABuildSpare() {
    String limits = ", \"limits\": {\"wire-too-long\": {\"extraMm\": 100}}";
    assertThat(judged(1000, 1345, limits).messages()).isEmpty();
    assertThat(judged(1000, 1346, limits).messages()).hasSize(1);
  }

  @Test
  void laidInPlaceItIsTheRoutedLengthAndItsBand() {
    // 1000 + 192 = 1192, not rounded up: 50 mm more
    String laid = "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"laidInPlace\": true";
    String way = Loom.segment("s1", "a", "b", 1000, "");
    WireTooLong rule = new WireTooLong();
    assertThat(new Loom(way, laid + "}", "").judged(rule).coverage().subjects()).isZero();
    assertThat(new Loom(way, laid + ", \"builtMm\": 1242}", "").judged(rule).messages()).isEmpty();
    Judged judged = new Loom(way, laid + ", \"builtMm\": 1242.1}", "").judged(rule);
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 is built 1242.1 mm, 50.1 mm more than the 1192 mm its route needs; at most"
                + " 1242 mm are in tolerance");
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo("trim it to 1192 mm, or give the way it really takes with \"via\"");
  }
}
