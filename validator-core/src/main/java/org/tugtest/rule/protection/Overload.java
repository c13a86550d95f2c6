package org.tugtest.rule.protection;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tugtest.heat.Ampacities;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;

/** How hot a wire gets under what its fuses let through for ever, and hold for ten minutes. */
record Overload(Stress stress, OptionalDouble celsius, OptionalDouble heldC) {
  /** Kelvin over its class that a wire may reach while a fuse makes up its mind. */
  static final double OVER_CLASS_K = 25;

  /** What a wire comes to, or another part in its place. */
  static Overload of(Ampacities heat, Wire wire, @Nullable WirePart part, Stress stress) {
    return part == null
        ? new Overload(
            stress,
            heat.steadyCelsius(wire, stress.amps()),
            heat.steadyCelsius(wire, stress.heldA()))
        : new Overload(
            stress,
            heat.steadyCelsius(wire, part, stress.amps()),
            heat.steadyCelsius(wire, part, stress.heldA()));
  }

  /** Whether it gets too hot while the fuses hold. */
  boolean tooHot(double classC) {
    return heldC.isEmpty() || heldC.getAsDouble() > classC + OVER_CLASS_K;
  }

  /** Both temperatures in words. */
  String text(double classC) {
    String held =
        stress.heldA() > stress.amps()
            ? ", at "
                + Figures.amps(stress.heldA())
                + ", which may last ten minutes, to "
                + words(heldC)
            : "";
    return "at "
        + Figures.amps(stress.amps())
        + " it comes to "
        + words(celsius)
        + held
        + "; its class is "
        + Figures.shown(classC)
        + " °C";
  }

  private static String words(OptionalDouble celsius) {
    return celsius.isPresent() ? Math.round(celsius.getAsDouble()) + " °C" : "no rest under 250 °C";
  }
}
