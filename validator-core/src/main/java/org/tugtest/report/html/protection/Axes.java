package org.tugtest.report.html.protection;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.report.html.text.Figures;

/** Logarithmic axes: amperes to the right, seconds upwards, in whole units. */
record Axes(int leastPower, int greatestPower) {
  static final int LEFT = 58;
  static final int TOP = 18;
  static final int WIDTH = 560;
  static final int HEIGHT = 330;
  private static final int LEAST_SECONDS = -3;
  private static final int GREATEST_SECONDS = 5;

  /** Axes that show these currents. */
  static Axes of(double leastA, double greatestA) {
    int least = (int) Math.floor(Math.log10(Math.max(1e-3, leastA)));
    int greatest = (int) Math.ceil(Math.log10(Math.min(1e6, Math.max(greatestA, leastA))));
    return new Axes(least, Math.max(greatest, least + 1));
  }

  double leastA() {
    return Math.pow(10, leastPower);
  }

  double greatestA() {
    return Math.pow(10, greatestPower);
  }

  int x(double amps) {
    return (int) Math.round(exactX(amps));
  }

  int y(double seconds) {
    return (int) Math.round(exactY(seconds));
  }

  /** A place on the chart in the language of SVG, to a tenth of a unit. */
  String at(double amps, double seconds) {
    return Figures.fixed(exactX(amps), 1) + "," + Figures.fixed(exactY(seconds), 1);
  }

  private double exactX(double amps) {
    double share = (Math.log10(Math.max(1e-9, amps)) - leastPower) / (greatestPower - leastPower);
    return LEFT + Math.max(0, Math.min(1, share)) * WIDTH;
  }

  private double exactY(double seconds) {
    double power =
        Double.isInfinite(seconds) ? GREATEST_SECONDS : Math.log10(Math.max(1e-9, seconds));
    double share = (power - LEAST_SECONDS) / (GREATEST_SECONDS - LEAST_SECONDS);
    return TOP + HEIGHT - Math.max(0, Math.min(1, share)) * HEIGHT;
  }

  /** Lines of the grid with what stands beside them, currents first. */
  List<ProtectionChart.Tick> ticks() {
    List<ProtectionChart.Tick> ticks = new ArrayList<>();
    for (int power = leastPower; power <= greatestPower; power++) {
      double one = Math.pow(10, power);
      ticks.add(new ProtectionChart.Tick(true, x(one), Figures.three(one), true));
      for (int digit = 2; digit < 10 && power < greatestPower; digit++) {
        boolean named = greatestPower - leastPower <= 2 && (digit == 2 || digit == 5);
        String text = named ? Figures.three(digit * one) : "";
        ticks.add(new ProtectionChart.Tick(true, x(digit * one), text, false));
      }
    }
    for (int power = LEAST_SECONDS; power <= GREATEST_SECONDS; power++) {
      double one = Math.pow(10, power);
      ticks.add(new ProtectionChart.Tick(false, y(one), Figures.three(one), true));
    }
    return ticks;
  }
}
