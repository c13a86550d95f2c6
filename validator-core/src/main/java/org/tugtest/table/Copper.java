package org.tugtest.table;

/** How the resistance of copper goes with its temperature. */
public final class Copper {
  /**
   * Per kelvin, at 20 °C, for annealed copper of 100 % IACS conductivity (Industrial Power
   * Engineering and Applications Handbook, p. 970).
   */
  public static final double ALPHA_20 = 0.00393;

  /** The temperature for which resistances are given, in degrees Celsius. */
  public static final double REFERENCE_C = 20;

  private Copper() {}

  /** Resistance at a temperature over that at 20 °C: 1 + 0.00393 (T − 20 °C), never under 0.1. */
  public static double factor(double celsius) {
    return Math.max(0.1, 1 + ALPHA_20 * (celsius - REFERENCE_C));
  }
}
