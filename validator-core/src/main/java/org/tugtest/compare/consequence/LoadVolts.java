package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.compare.Comparison;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.NaturalOrder;

/** The volts at each load, in the state of both revisions in which they move most. */
public final class LoadVolts implements Consequence {
  @Override
  public String title() {
    return "volts at the loads";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Map<String, Map<String, Double>> before = volts(comparison.before().facts());
    Map<String, Map<String, Double>> after = volts(comparison.after().facts());
    List<Moved> moved = new ArrayList<>();
    before.forEach(
        (load, states) -> {
          Map<String, Double> now = after.getOrDefault(load, Map.of());
          states.entrySet().stream()
              .filter(state -> now.containsKey(renamed(comparison, state.getKey())))
              .flatMap(
                  state -> {
                    String name = renamed(comparison, state.getKey());
                    return Moved.of(
                        load + " in " + name,
                        new org.tugtest.finding.Subject("devices/" + load),
                        state.getValue(),
                        now.get(name),
                        "V",
                        2)
                        .stream();
                  })
              .min(Moved.LARGEST_FIRST)
              .ifPresent(moved::add);
        });
    return Moved.sorted(moved);
  }

  private static String renamed(Comparison comparison, String state) {
    return comparison.matches().renames().id("states", state);
  }

  /** Volts across each load by state; 0 where it is not powered. */
  private static Map<String, Map<String, Double>> volts(Facts facts) {
    Map<String, Map<String, Double>> volts = new TreeMap<>(NaturalOrder.NATURAL);
    for (OperatingPoint point : facts.operating().all()) {
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Load) {
          volts
              .computeIfAbsent(edge.text(), none -> new TreeMap<>(NaturalOrder.NATURAL))
              .put(point.state(), Math.abs(point.across(edge)));
        }
      }
    }
    return volts;
  }
}
