package org.tugtest.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarmingTest {
  /** Resistivity of annealed copper at 20 °C, ohm mm (IEC 60364-5-54 Annex A). */
  private static final double RHO = 1.7241e-5;

  private static double milliohmPerM(double areaMm2) {
    return RHO * 1e6 / areaMm2;
  }

  /** The factor k of IEC 60364-5-54 Annex A (worked examples W12), A·s^0.5/mm². */
  private static double k(double fromC, double toC) {
    return Math.sqrt(0.00345 * (234.5 + 20) / RHO * Math.log((234.5 + toC) / (234.5 + fromC)));
  }

  /** Worked examples W12: k as published; here from the time to reach the final temperature. */
  @ParameterizedTest
  @CsvSource({
    "70, 160, 115", "70, 140, 103", "90, 160, 100", "90, 140, 86",
    "90, 250, 143", "60, 200, 141", "85, 220, 134", "180, 350, 132"
  })
  void withoutCoolingItIsTheAdiabaticFormula(double fromC, double toC, double published) {
    double area = 2.5;
    Warming warming = new Warming(area, milliohmPerM(area), Cooling.NONE, fromC, toC);
    double k = 1000 * Math.sqrt(warming.seconds(1000)) / area;
    assertThat(k).isCloseTo(published, Percentage.withPercentage(0.7));
    assertThat(k).isCloseTo(k(fromC, toC), Percentage.withPercentage(0.03));
    assertThat(warming.lastingAmps()).isZero();
  }

  /** Worked examples W11: S = I · sqrt(t) / k, as published, to their rounding. */
  @ParameterizedTest
  @CsvSource({
    "2500, 0.1, 70, 160, 6.9, 1.0",
    "12000, 0.2, 90, 250, 37.5, 0.25",
    "12000, 0.02, 90, 250, 11.9, 0.5"
  })
  void thePublishedAreaStandsForThePublishedTime(
      double amps, double seconds, double fromC, double toC, double area, double percent) {
    Warming warming = new Warming(area, milliohmPerM(area), Cooling.NONE, fromC, toC);
    assertThat(Math.sqrt(warming.seconds(amps)))
        .isCloseTo(Math.sqrt(seconds), Percentage.withPercentage(percent));
  }

  /** A cooling that goes straight with the temperature has an answer in closed form. */
  @Test
  void withStraightCoolingItIsTheExactAnswer() {
    double area = 1;
    double perKelvin = 0.15;
    double ambient = 40;
    Cooling cooling = celsius -> perKelvin * (celsius - ambient);
    Warming warming = new Warming(area, 18.5, cooling, 105, 155);
    double amps = 40;
    double heat = amps * amps * 18.5e-3;
    double b = heat * 0.00393 - perKelvin;
    double a = heat * (1 - 0.00393 * 20) + perKelvin * ambient;
    double exact = 3.45 * area * Math.log((a + b * 155) / (a + b * 105)) / b;
    assertThat(warming.seconds(amps)).isCloseTo(exact, within(1e-9 * exact));
  }

  /** At the greatest lasting current what comes in is what is given off at the end temperature. */
  @Test
  void forLongTimesItIsTheHeatBalance() {
    Cooling cooling = celsius -> 0.15 * (celsius - 40);
    Warming warming = new Warming(1, 18.5, cooling, 105, 155);
    double balance = Math.sqrt(0.15 * 115 / (18.5e-3 * (1 + 0.00393 * 135)));
    assertThat(warming.lastingAmps()).isCloseTo(balance, within(1e-9));
    assertThat(warming.seconds(balance * 0.9999)).isInfinite();
    assertThat(warming.seconds(balance * 1.0001)).isFinite().isGreaterThan(100);
  }

  @Test
  void whatIsThereAlreadyTakesNoTime() {
    assertThat(new Warming(1, 18.5, Cooling.NONE, 155, 155).seconds(10)).isZero();
    assertThat(new Warming(1, 18.5, Cooling.NONE, 200, 155).seconds(0)).isZero();
    assertThat(new Warming(1, 18.5, Cooling.NONE, 100, 155).seconds(0)).isInfinite();
  }

  /** Laws: never shorter than adiabatic, shorter with more current, longer with more cooling. */
  @Test
  void itNeverBeatsTheAdiabaticTimeAndFallsWithTheCurrent() {
    Random random = new Random(11);
    for (int run = 0; run < 500; run++) {
      double area = 0.2 + 20 * random.nextDouble();
      double perKelvin = random.nextDouble();
      double power = 1 + random.nextDouble();
      double from = 60 + 150 * random.nextDouble();
      double to = from + 1 + 100 * random.nextDouble();
      Cooling cooling = celsius -> perKelvin * Math.pow(Math.max(0, celsius - 40), power);
      Warming cooled = new Warming(area, milliohmPerM(area), cooling, from, to);
      Warming worse = new Warming(area, milliohmPerM(area), cooling.atFactor(0.7), from, to);
      Warming adiabatic = new Warming(area, milliohmPerM(area), Cooling.NONE, from, to);
      double before = Double.POSITIVE_INFINITY;
      double[] slopes = {Double.NEGATIVE_INFINITY};
      for (double amps = 0.5 * cooled.lastingAmps(); amps < 1e5; amps *= 1.2) {
        double seconds = cooled.seconds(amps);
        assertThat(seconds).isGreaterThanOrEqualTo(adiabatic.seconds(amps) * (1 - 1e-12));
        assertThat(worse.seconds(amps)).isLessThanOrEqualTo(seconds);
        assertThat(seconds).isLessThanOrEqualTo(before);
        if (Double.isFinite(before)) {
          double slope = Math.log(seconds / before) / Math.log(1.2);
          assertThat(slope).isBetween(slopes[0] - 1e-6, -2 + 1e-6);
          slopes[0] = slope;
        }
        before = seconds;
      }
    }
  }
}
