package org.tugtest.protect;

import org.tugtest.model.Element;
import org.tugtest.network.Edge;

/** What counts as the motor that cranks an engine: a load of 100 A or more (common practice). */
final class CrankingMotor {
  private static final double LEAST_A = 100;

  private CrankingMotor() {}

  /** Whether a load draws that much at the nominal volts. */
  static boolean is(Edge.OfElement edge, double nominalV) {
    if (!(edge.element() instanceof Element.Load load)) {
      return false;
    }
    if (load.amps() != null) {
      return load.amps() >= LEAST_A;
    }
    if (load.ohms() != null) {
      return load.ohms() > 0 && nominalV / load.ohms() >= LEAST_A;
    }
    double at = load.atVolts() == null ? nominalV : load.atVolts();
    return load.watts() != null && at > 0 && load.watts() / at >= LEAST_A;
  }
}
