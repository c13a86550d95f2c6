package org.tugtest.heat;

import java.util.HashMap;
import java.util.Map;

/**
 * How many wires warm up: what wires alike give off is reckoned once, whatever share of their
 * current their bundles allow them. For one thread.
 */
public final class Warmings {
  private final Map<Alike, double[]> known = new HashMap<>();

  /** What gives off alike. */
  private record Alike(Cooling cooling, double fromC, double toC) {}

  /** As {@link Warming#Warming(double, double, Cooling, double, double)}. */
  public Warming of(
      double areaMm2, double milliohmPerM, Cooling cooling, double fromC, double toC) {
    Cooling full = cooling instanceof Cooling.AtFactor part ? part.full() : cooling;
    double factor = cooling instanceof Cooling.AtFactor part ? part.currentFactor() : 1;
    double[] losses =
        known.computeIfAbsent(new Alike(full, fromC, toC), key -> Warming.losses(full, fromC, toC));
    return new Warming(areaMm2, milliohmPerM, losses, factor, fromC, toC);
  }
}
