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

  /**
   * What the computing leaves of nothing is nothing, unless that would hide on which side it is.
   */
  @ParameterizedTest
  @CsvSource({
    "2.5e-28, 7.2, 0",
    "0.00000000042, 7.2, 0.00000000042",
    "-3e-17, 7.2, 0",
    "2e-14, 0, 0.000000000000020"
  })
  void dustIsNothing(double actual, double limit, String shown) {
    assertThat(Measured.under(actual, limit, "V").actualShown()).isEqualTo(shown);
  }
}
