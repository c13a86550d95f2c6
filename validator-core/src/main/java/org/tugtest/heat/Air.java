package org.tugtest.heat;

/**
 * Dry air at 1 atm: polynomials for 250 to 450 K, fitted to a textbook table by a university
 * heat-transfer laboratory's page of air properties. Beyond, they go on as they are; at 550 K they
 * still rise. The thermal diffusivity is the viscosity over the Prandtl number.
 */
public final class Air {
  /** Kelvin at 0 °C. */
  public static final double ZERO_C = 273.15;

  private Air() {}

  /** Thermal conductivity in W/(m·K) at a temperature in kelvin. */
  public static double conductivity(double kelvin) {
    return (-2.571428571e-8 * kelvin + 9.3e-5) * kelvin + 6.685714286e-4;
  }

  /** Kinematic viscosity in m²/s at a temperature in kelvin. */
  public static double viscosity(double kelvin) {
    return (1.005714286e-10 * kelvin + 3.444e-8) * kelvin - 3.466857143e-6;
  }

  /** Prandtl number at a temperature in kelvin. */
  public static double prandtl(double kelvin) {
    return -1.7e-4 * kelvin + 0.7601;
  }
}
