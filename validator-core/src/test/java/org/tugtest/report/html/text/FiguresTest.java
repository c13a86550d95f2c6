package org.tugtest.report.html.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FiguresTest {
  @Test
  void keepsThreeDigitsThatCount() {
    assertThat(Figures.three(0)).isEqualTo("0");
    assertThat(Figures.three(1.0)).isEqualTo("1");
    assertThat(Figures.three(1.2345)).isEqualTo("1.23");
    assertThat(Figures.three(0.012345)).isEqualTo("0.0123");
    assertThat(Figures.three(12345.6)).isEqualTo("12346");
    assertThat(Figures.three(1e-9)).isEqualTo("0");
    assertThat(Figures.three(Double.POSITIVE_INFINITY)).isEqualTo("without bound");
  }

  @Test
  void choosesTheUnit() {
    assertThat(Figures.amps(-0.0999)).isEqualTo("99.9 mA");
    assertThat(Figures.amps(0.1)).isEqualTo("0.1 A");
    assertThat(Figures.amps(0.0001)).isEqualTo("0.1 mA");
    assertThat(Figures.amps(3.69e-6)).isEqualTo("3.69 µA");
    assertThat(Figures.amps(9e-8)).isEqualTo("0 A");
    assertThat(Figures.amps(0)).isEqualTo("0 A");
    assertThat(Figures.milliohm(999.4)).isEqualTo("999 mΩ");
    assertThat(Figures.milliohm(1500)).isEqualTo("1.5 Ω");
    assertThat(Figures.drop(-0.0641)).isEqualTo("64.1 mV");
    assertThat(Figures.drop(1.25)).isEqualTo("1.25 V");
    assertThat(Figures.volts(12)).isEqualTo("12.00 V");
    assertThat(Figures.volts(-0.001)).isEqualTo("0.00 V");
    assertThat(Figures.percent(0.0345)).isEqualTo("3.5 %");
  }
}
