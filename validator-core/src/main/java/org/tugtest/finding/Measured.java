package org.tugtest.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A figure against its limit, printed so that it never seems to pass: to three digits or the
 * limit's decimals, with more of them for as long as the rounded figure would stand on another side
 * of the limit than the figure itself.
 *
 * @param unit as printed: {@code mm}, {@code A}, {@code mm2}, ..; empty for counts
 */
public record Measured(double actual, double limit, String unit, Bound bound) {
  private static final int MOST_DECIMALS = 12;
  private static final int DIGITS = 3;

  /** Which way the limit bounds. */
  public enum Bound {
    /** The limit is the greatest allowed. */
    AT_MOST,
    /** The limit is the least allowed. */
    AT_LEAST
  }

  /** A figure that is over the greatest allowed. */
  public static Measured over(double actual, double greatest, String unit) {
    return new Measured(actual, greatest, unit, Bound.AT_MOST);
  }

  /** A figure that is under the least allowed. */
  public static Measured under(double actual, double least, String unit) {
    return new Measured(actual, least, unit, Bound.AT_LEAST);
  }

  /** The limit with its own decimals, without unit. */
  public String limitShown() {
    return plain(limit).toPlainString();
  }

  /** The figure, rounded as far as that cannot mislead, without unit. */
  public String actualShown() {
    BigDecimal limitFigure = plain(limit);
    BigDecimal figure = BigDecimal.valueOf(actual);
    int side = figure.compareTo(limitFigure);
    int forDigits = DIGITS - figure.precision() + figure.scale();
    int first = Math.max(limitFigure.scale(), Math.min(forDigits, MOST_DECIMALS - 1));
    for (int decimals = first; decimals < MOST_DECIMALS; decimals++) {
      BigDecimal near = figure.setScale(decimals, RoundingMode.HALF_EVEN);
      if (near.compareTo(limitFigure) == side) {
        return plain(near).toPlainString();
      }
    }
    return figure.toPlainString();
  }

  private static BigDecimal plain(double value) {
    return plain(BigDecimal.valueOf(value));
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
  }
}
