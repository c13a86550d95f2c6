package org.tugtest.bench.rework;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.compare.match.Match;
import org.tugtest.compare.match.Matches;
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

  /** What a comparison takes for the same. */
  public static Matching of(Matches matches) {
    return new Matching(ids(matches, "wires"), ids(matches, "connectors"), ids(matches, "splices"));
  }

  private static Map<String, String> ids(Matches matches, String section) {
    Map<String, String> ids = new TreeMap<>(NaturalOrder.NATURAL);
    for (Match match : matches.in(section)) {
      ids.put(match.before(), match.after());
    }
    return ids;
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
