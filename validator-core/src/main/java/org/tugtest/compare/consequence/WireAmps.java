package org.tugtest.compare.consequence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.compare.Comparison;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;

/** The greatest lasting current of each wire over all states. */
public final class WireAmps implements Consequence {
  @Override
  public String title() {
    return "greatest currents of the wires";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    return Moved.ofWires(comparison, WireAmps::greatest, "A", 2);
  }

  private static Map<String, Double> greatest(Facts facts) {
    Map<String, Double> greatest = new HashMap<>();
    for (OperatingPoint point : facts.operating().all()) {
      if (!point.brief()) {
        for (Edge edge : facts.network().edges()) {
          if (edge instanceof Edge.OfWire wire) {
            greatest.merge(wire.wire().id(), Math.abs(point.amps(edge)), Math::max);
          }
        }
      }
    }
    return greatest;
  }
}
