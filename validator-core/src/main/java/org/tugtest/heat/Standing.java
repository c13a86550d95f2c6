package org.tugtest.heat;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.tugtest.finding.Basis;

/**
 * What a wire stands in a piece of its way.
 *
 * @param temperature that its conductor comes to there under a current; empty without a rest
 * @param cooling what it gives off there
 */
record Standing(Ampacity ampacity, DoubleFunction<OptionalDouble> temperature, Cooling cooling) {
  OptionalDouble celsius(double amps) {
    return temperature.apply(amps);
  }

  /** The same with another figure that is sure. */
  Standing withSure(double amps, Basis basis) {
    Ampacity its = ampacity;
    Ampacity sure =
        new Ampacity(
            its.amps(), its.basis(), amps, basis, its.freeAirA(), its.around(), its.byMaker());
    return new Standing(sure, temperature, cooling);
  }
}
