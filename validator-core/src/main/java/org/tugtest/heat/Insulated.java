package org.tugtest.heat;

import org.tugtest.table.Copper;

/**
 * A round conductor in its insulation.
 *
 * @param conductorMm diameter of the conductor, above 0
 * @param outerMm outside diameter, above that of the conductor
 * @param milliohmPerM resistance at 20 °C, above 0
 * @param insulation thermal conductivity of the insulation in W/(m·K)
 */
public record Insulated(
    double conductorMm, double outerMm, double milliohmPerM, double insulation) {
  /** Cross-linked polyolefin and PVC, W/(m·K) (IEC 60287-2-1: 5.0 K·m/W). */
  public static final double PLASTIC = 0.20;

  private static final double MILLI = 1e-3;

  /** Resistance in ohms per metre at a conductor temperature. */
  public double ohmPerM(double celsius) {
    return milliohmPerM * MILLI * Copper.factor(celsius);
  }

  /** Thermal resistance of the insulation, K·m/W. */
  public double insulationKelvin() {
    return Math.log(outerMm / conductorMm) / (2 * Math.PI * insulation);
  }
}
