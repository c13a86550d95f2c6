package org.tugtest.heat;

import java.util.OptionalDouble;

/** One insulated wire alone in still air: the steady balance of its heat. */
public final class FreeAir {
  /** A wire that is warmer than this has no steady temperature that matters, °C. */
  public static final double HOTTEST_C = 250;

  private static final int HALVINGS = 50;

  private FreeAir() {}

  /**
   * Heat in W/m that a wire gives off for good; 0 when it is no warmer than the air.
   *
   * @param conductorC temperature of its conductor, °C
   * @param airC air round it, °C
   */
  public static double wattsPerM(Insulated wire, double conductorC, double airC) {
    if (conductorC <= airC) {
      return 0;
    }
    double drop = wire.insulationKelvin();
    double low = airC;
    double high = conductorC;
    for (int i = 0; i < HALVINGS; i++) {
      double surface = (low + high) / 2;
      double needed = surface + Surface.wattsPerM(wire.outerMm(), surface, airC) * drop;
      if (needed > conductorC) {
        high = surface;
      } else {
        low = surface;
      }
    }
    return Surface.wattsPerM(wire.outerMm(), (low + high) / 2, airC);
  }

  /** The lasting current in amperes at which the conductor has a temperature; 0 at or below air. */
  public static double amps(Insulated wire, double conductorC, double airC) {
    return Math.sqrt(wattsPerM(wire, conductorC, airC) / wire.ohmPerM(conductorC));
  }

  /**
   * The steady temperature of the conductor in °C under a current; empty when there is none up to
   * {@link #HOTTEST_C}, or the air is warmer than that.
   */
  public static OptionalDouble celsius(Insulated wire, double amps, double airC) {
    if (airC >= HOTTEST_C || amps > amps(wire, HOTTEST_C, airC)) {
      return OptionalDouble.empty();
    }
    double drop = wire.insulationKelvin();
    double low = airC;
    double high = HOTTEST_C;
    for (int i = 0; i < HALVINGS; i++) {
      double surface = (low + high) / 2;
      double watts = Surface.wattsPerM(wire.outerMm(), surface, airC);
      if (amps * amps * wire.ohmPerM(surface + watts * drop) > watts) {
        low = surface;
      } else {
        high = surface;
      }
    }
    double surface = (low + high) / 2;
    return OptionalDouble.of(surface + Surface.wattsPerM(wire.outerMm(), surface, airC) * drop);
  }
}
