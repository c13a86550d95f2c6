package org.tugtest.heat;

/** What a long horizontal cylinder gives off to still air round it. */
public final class Surface {
  /** Emissivity of plastics, tape and rubber, 0.85 to 0.96 in tables of emissivity. */
  static final double EMISSIVITY = 0.9;

  /** Emissivity of aluminium foil in tables of emissivity. */
  private static final double BRIGHT = 0.04;

  /** W/(m²·K⁴) (CODATA). */
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /** m/s². */
  static final double GRAVITY = 9.80665;

  private Surface() {}

  /**
   * Nusselt number of free convection from a horizontal cylinder: Churchill and Chu 1975, the form
   * for all Rayleigh numbers from 1e-5 to 1e12.
   */
  static double nusselt(double rayleigh, double prandtl) {
    double bracket = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / bracket;
    return root * root;
  }

  /**
   * Heat transfer by convection in W/(m²·K).
   *
   * @param outerMm outside diameter, above 0
   * @param surfaceC surface temperature, °C
   * @param airC temperature of the air far away, °C
   */
  static double convection(double outerMm, double surfaceC, double airC) {
    double film = (surfaceC + airC) / 2 + Air.ZERO_C;
    double metres = outerMm / 1000;
    double viscosity = Air.viscosity(film);
    double prandtl = Air.prandtl(film);
    double rayleigh =
        GRAVITY
            / film
            * Math.abs(surfaceC - airC)
            * metres
            * metres
            * metres
            * prandtl
            / (viscosity * viscosity);
    return nusselt(rayleigh, prandtl) * Air.conductivity(film) / metres;
  }

  /** Heat transfer by radiation in W/(m²·K), between a surface and what is round it. */
  static double radiation(double surfaceC, double aroundC) {
    return EMISSIVITY * radiationOfBlack(surfaceC, aroundC);
  }

  /** The same for two black surfaces. */
  static double radiationOfBlack(double oneC, double otherC) {
    double one = oneC + Air.ZERO_C;
    double other = otherC + Air.ZERO_C;
    return STEFAN_BOLTZMANN * (one * one + other * other) * (one + other);
  }

  /**
   * Heat given off by a metre of cylinder, in watts; negative when the air is warmer.
   *
   * @param outerMm outside diameter, above 0
   */
  public static double wattsPerM(double outerMm, double surfaceC, double airC) {
    double transfer = convection(outerMm, surfaceC, airC) + radiation(surfaceC, airC);
    return Math.PI * outerMm / 1000 * transfer * (surfaceC - airC);
  }

  /** The same for a cylinder in bright foil. */
  static double brightWattsPerM(double outerMm, double surfaceC, double airC) {
    double radiation = BRIGHT * radiationOfBlack(surfaceC, airC);
    double transfer = convection(outerMm, surfaceC, airC) + radiation;
    return Math.PI * outerMm / 1000 * transfer * (surfaceC - airC);
  }
}
