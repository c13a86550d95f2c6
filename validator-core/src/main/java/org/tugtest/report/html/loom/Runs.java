package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which arms each wire runs through. Equal runs are kept once.
 *
 * @param all every run, as numbers of arms in the order of the wire
 * @param of wire to the place of its run in {@code all}; a wire without a run is not in it
 */
public record Runs(List<List<Integer>> all, Map<String, Integer> of) {
  /** The wires in each arm, by the arm's number. */
  Map<Integer, List<String>> wires() {
    Map<Integer, List<String>> wires = new LinkedHashMap<>();
    of.forEach(
        (wire, run) ->
            all.get(run).stream()
                .distinct()
                .forEach(arm -> wires.computeIfAbsent(arm, none -> new ArrayList<>()).add(wire)));
    return wires;
  }

  /** Runs that grow. */
  static final class Builder {
    private final Map<List<Integer>, Integer> places = new LinkedHashMap<>();
    private final Map<String, Integer> of = new LinkedHashMap<>();

    void add(String wire, List<Integer> arms) {
      if (!arms.isEmpty()) {
        of.put(wire, places.computeIfAbsent(List.copyOf(arms), none -> places.size()));
      }
    }

    Runs build() {
      return new Runs(List.copyOf(places.keySet()), of);
    }
  }
}
