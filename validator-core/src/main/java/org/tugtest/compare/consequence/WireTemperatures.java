package org.tugtest.compare.consequence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.compare.Comparison;
import org.tugtest.facts.Facts;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.operate.OperatingPoint;

/** How warm each wire becomes in its hottest piece, in the state in which it is warmest. */
public final class WireTemperatures implements Consequence {
  @Override
  public String title() {
    return "greatest temperatures of the wires";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    return Moved.ofWires(comparison, WireTemperatures::greatest, "°C", 0);
  }

  private static Map<String, Double> greatest(Facts facts) {
    Map<String, Double> greatest = new HashMap<>();
    for (OperatingPoint point : facts.operating().all()) {
      LoomWarmth warmth = point.warmth().orElse(null);
      if (warmth != null) {
        for (String id : facts.harness().wires().keySet()) {
          warmth.hottest(id).ifPresent(hot -> greatest.merge(id, hot.celsius(), Math::max));
        }
      }
    }
    return greatest;
  }
}
