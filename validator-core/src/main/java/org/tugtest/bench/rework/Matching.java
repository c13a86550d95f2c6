package org.tugtest.bench.rework;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.text.NaturalOrder;

/**
 * Which thing of the loom as it is becomes which of the loom that is wanted, by their ids. What is
 * not named is taken out, or comes new.
 */
public record Matching(
    Map<String, String> wires, Map<String, String> connectors, Map<String, String> splices) {
  public Matching {
    wires = sorted(wires);
    connectors = sorted(connectors);
    splices = sorted(splices);
  }

  /** Everything keeps its id. */
  public static Matching byId(Facts now, Facts target) {
    return new Matching(
        same(now.harness().wires().keySet(), target.harness().wires().keySet()),
        same(now.wiring().connectors(), target.wiring().connectors()),
        same(now.wiring().splices(), target.wiring().splices()));
  }

  private static Map<String, String> same(Set<String> now, Set<String> target) {
    Map<String, String> same = new TreeMap<>(NaturalOrder.NATURAL);
    now.stream().filter(target::contains).forEach(id -> same.put(id, id));
    return same;
  }

  private static Map<String, String> sorted(Map<String, String> map) {
    Map<String, String> sorted = new TreeMap<>(NaturalOrder.NATURAL);
    sorted.putAll(map);
    return Collections.unmodifiableMap(sorted);
  }
}
