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
import org.tugtest.text.Series;

/**
 * The volts at each load, in the state of both revisions in which they move most; the others stand
 * beside it.
 */
public final class LoadVolts implements Consequence {
  private static final int NAMED = 4;

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
          List<Moved> here =
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
                  .sorted(Moved.LARGEST_FIRST)
                  .toList();
          if (!here.isEmpty()) {
            moved.add(here.get(0).with(others(here.subList(1, here.size()), load)));
          }
        });
    return Moved.sorted(moved);
  }

  /** The other states in which a load's volts moved: {@code in day -0.12 V, in rain -0.10 V}. */
  private static String others(List<Moved> others, String load) {
    List<String> texts =
        others.stream()
            .map(moved -> moved.what().substring(load.length() + 1) + " " + moved.difference())
            .toList();
    return Series.and(texts, NAMED);
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
