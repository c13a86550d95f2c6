package org.tugtest.heat;

import java.util.function.DoubleUnaryOperator;

/** Where a continuous rising function is zero: regula falsi after Illinois, halving where slow. */
final class Root {
  private static final int MOST_ROUNDS = 80;
  private static final double CLOSE = 1e-11;

  private Root() {}

  /**
   * The zero of a function between two places.
   *
   * @param low where it is 0 or less
   * @param high where it is 0 or more, not below {@code low}
   */
  static double of(DoubleUnaryOperator rising, double low, double high) {
    double[] between = between(rising, low, high);
    return (between[0] + between[1]) / 2;
  }

  /**
   * The last place, but for the accuracy, at which a rising function is still 0 or less.
   *
   * @param low where it is 0 or less
   * @param high not below {@code low}
   */
  static double last(DoubleUnaryOperator rising, double low, double high) {
    return between(rising, low, high)[0];
  }

  /** Two places, close together or one, where it is not above and not below zero. */
  private static double[] between(DoubleUnaryOperator rising, double low, double high) {
    double a = low;
    double b = high;
    double atA = rising.applyAsDouble(a);
    double atB = rising.applyAsDouble(b);
    if (atA >= 0) {
      return new double[] {a, a};
    }
    if (atB <= 0) {
      return new double[] {b, b};
    }
    double width = b - a;
    int side = 0;
    for (int i = 0; i < MOST_ROUNDS && b - a > CLOSE * (1 + Math.abs(b)); i++) {
      boolean slow = i % 4 == 3 && b - a > width / 4;
      width = i % 4 == 3 ? b - a : width;
      double next = slow ? (a + b) / 2 : (a * atB - b * atA) / (atB - atA);
      if (!(next > a && next < b)) {
        next = (a + b) / 2;
      }
      double there = rising.applyAsDouble(next);
      if (there == 0) {
        return new double[] {next, next};
      }
      if (there < 0) {
        a = next;
        atA = there;
        atB = side == -1 ? atB / 2 : atB;
        side = -1;
      } else {
        b = next;
        atB = there;
        atA = side == 1 ? atA / 2 : atA;
        side = 1;
      }
    }
    return new double[] {a, b};
  }
}
