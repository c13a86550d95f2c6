package org.tugtest.report.html.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Figures as people read them: three digits that count, with their unit. */
public final class Figures {
  private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
  private static final double SMALL = 0.1;

  /** Amperes that are none: what a solver leaves over. */
  private static final double NOTHING = 1e-7;

  private Figures() {}

  /** {@code 12.08 V}. */
  public static String volts(double volts) {
    return fixed(volts, 2) + " V";
  }

  /** {@code 34.2 A}, {@code 20 mA}. */
  public static String amps(double amps) {
    double size = Math.abs(amps);
    if (!(size >= NOTHING && size < SMALL)) {
      return three(size) + " A";
    }
    return size < SMALL / 1000 ? three(1e6 * size) + " µA" : three(1000 * size) + " mA";
  }

  /** {@code 1.25 mΩ}, {@code 8.5 Ω}. */
  public static String milliohm(double milliohm) {
    return milliohm < 1000 ? three(milliohm) + " mΩ" : three(milliohm / 1000) + " Ω";
  }

  /** {@code 64 mV}, {@code 1.25 V}. */
  public static String drop(double volts) {
    double size = Math.abs(volts);
    return size < 1 ? three(1000 * size) + " mV" : three(size) + " V";
  }

  /** {@code 3.4 %}. */
  public static String percent(double share) {
    return fixed(100 * share, 1) + " %";
  }

  /** Three digits that count, without needless zeros; nothing under a millionth. */
  public static String three(double value) {
    if (!Double.isFinite(value)) {
      return value > 0 ? "without bound" : "not a number";
    }
    if (Math.abs(value) < 1e-6) {
      return "0";
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal rounded =
        exact.precision() - exact.scale() > 3
            ? exact.setScale(0, RoundingMode.HALF_UP)
            : exact.round(THREE);
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** {@code 4,312}. */
  public static String count(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  /** So many decimals, zeros included. */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return three(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }
}
