package org.tugtest.heat;

import java.util.OptionalDouble;

/** One insulated wire alone in still air: the steady balance of its heat. */
public final class FreeAir {
  /** A wire that is warmer than this has no steady temperature that matters, °C. */
  public static final double HOTTEST_C = 250;

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
    double surface =
        Root.of(
            at -> at + Surface.wattsPerM(wire.outerMm(), at, airC) * drop - conductorC,
            airC,
            conductorC);
    return Surface.wattsPerM(wire.outerMm(), surface, airC);
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
    double surface =
        Root.of(
            at -> {
              double watts = Surface.wattsPerM(wire.outerMm(), at, airC);
              return watts - amps * amps * wire.ohmPerM(at + watts * drop);
            },
            airC,
            HOTTEST_C);
    return OptionalDouble.of(surface + Surface.wattsPerM(wire.outerMm(), surface, airC) * drop);
  }
}
