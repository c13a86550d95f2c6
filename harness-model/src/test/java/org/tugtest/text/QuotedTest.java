package org.tugtest.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuotedTest {
  @Test
  void leavesPlainTextAlone() {
    assertThat(Quoted.text("Rücklicht \uD83D\uDE97")).isEqualTo("\"Rücklicht \uD83D\uDE97\"");
  }

  @Test
  void showsWhatIsInvisible() {
    assertThat(Quoted.name("a\u0000b\nc\u202Ed\uD800e\u2028"))
        .isEqualTo("a\\u0000b\\u000ac\\u202ed\\ud800e\\u2028");
  }

  @Test
  void cutsAfterSixtyCharactersNeverInsideOne() {
    assertThat(Quoted.name("x".repeat(60))).isEqualTo("x".repeat(60));
    assertThat(Quoted.name("x".repeat(61))).isEqualTo("x".repeat(60) + "…");
    assertThat(Quoted.name("\uD83D\uDE97".repeat(61))).isEqualTo("\uD83D\uDE97".repeat(60) + "…");
  }

  @ParameterizedTest
  @CsvSource({"1.0, 1", "0.05, 0.05", "-0.0, 0", "1e9, 1000000000", "1e15, 1.0E15", "2.50, 2.5"})
  void writesNumbersPlainly(double number, String written) {
    assertThat(Quoted.number(number)).isEqualTo(written);
  }
}
