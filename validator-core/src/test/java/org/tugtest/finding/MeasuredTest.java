package org.tugtest.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredTest {
  @ParameterizedTest
  @CsvSource({
    "5.2, 3, 5.2, 3",
    "3.04, 3, 3.04, 3",
    "3.0004, 3, 3.0004, 3",
    "2.96, 3, 2.96, 3",
    "1.5, 1, 1.5, 1",
    "1.30896, 1, 1.31, 1",
    "0.04, 0, 0.04, 0",
    "2.6, 2.5, 2.6, 2.5",
    "2.51, 2.5, 2.51, 2.5",
    "2.5499, 2.5, 2.55, 2.5",
    "3, 3, 3, 3",
    "120, 100, 120, 100",
    "1234567, 1000000, 1234567, 1000000"
  })
  void neverSeemsToPass(double actual, double limit, String shownActual, String shownLimit) {
    Measured measured = Measured.over(actual, limit, "mm");
    assertThat(measured.actualShown()).isEqualTo(shownActual);
    assertThat(measured.limitShown()).isEqualTo(shownLimit);
  }
}
