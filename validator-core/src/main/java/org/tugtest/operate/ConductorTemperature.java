package org.tugtest.operate;

import org.tugtest.model.Wire;

/** How warm the conductor of a wire is. */
@FunctionalInterface
public interface ConductorTemperature {
  /** The temperature of a wire's conductor, in degrees Celsius. */
  double celsius(Wire wire);

  /** The same for the wire that is this edge of the network, which may be quicker told. */
  default double celsius(int edge, Wire wire) {
    return celsius(wire);
  }
}
