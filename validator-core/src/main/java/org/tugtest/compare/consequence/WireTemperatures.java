package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.match.Match;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
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
    Map<String, Double> before = greatest(comparison.before().facts());
    Map<String, Double> after = greatest(comparison.after().facts());
    List<Moved> moved = new ArrayList<>();
    for (Match match : comparison.matches().in("wires")) {
      Double was = before.get(match.before());
      Double is = after.get(match.after());
      if (was != null && is != null) {
        Moved.of(match.after(), Subject.wire(match.after()), was, is, "°C", 0)
            .ifPresent(moved::add);
      }
    }
    return Moved.sorted(moved);
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
