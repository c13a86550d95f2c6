package org.tugtest.compare.cause;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Leaf;
import org.tugtest.compare.entry.Leaves;
import org.tugtest.compare.entry.Named;

/**
 * Which units need others: what comes to name a thing needs the thing to come, and a thing goes
 * only when all that names it has ceased to.
 */
final class Dependencies {
  private static final Set<String> OWNERS = Set.of("devices", "connectors", "splices");
  private final List<BitSet> needs = new ArrayList<>();
  private final List<BitSet> neededBy = new ArrayList<>();

  Dependencies(List<Unit> units, Map<String, Map<String, Object>> base) {
    Map<String, Integer> adds = new HashMap<>();
    Map<String, List<Integer>> unnames = new HashMap<>();
    List<Set<String>> named = new ArrayList<>();
    for (int i = 0; i < units.size(); i++) {
      needs.add(new BitSet());
      neededBy.add(new BitSet());
      named.add(new HashSet<>());
      for (Leaf leaf : units.get(i).leaves()) {
        if (leaf.adds()) {
          adds.put(name(leaf), i);
        }
        Object old = base.getOrDefault(leaf.section(), Map.of()).get(leaf.id());
        Set<String> was = names(leaf, old);
        Set<String> is = names(leaf, Leaves.with(old, leaf));
        for (String name : is) {
          if (!was.contains(name)) {
            named.get(i).add(name);
          }
        }
        for (String name : was) {
          if (!is.contains(name)) {
            unnames.computeIfAbsent(name, none -> new ArrayList<>()).add(i);
          }
        }
      }
    }
    for (int i = 0; i < units.size(); i++) {
      for (String name : named.get(i)) {
        Integer other = adds.get(name);
        if (other != null) {
          link(i, other);
        }
      }
      for (Leaf leaf : units.get(i).leaves()) {
        if (leaf.removes()) {
          for (int other : unnames.getOrDefault(name(leaf), List.of())) {
            link(i, other);
          }
        }
      }
    }
  }

  private void link(int unit, int needed) {
    if (unit != needed) {
      needs.get(unit).set(needed);
      neededBy.get(needed).set(unit);
    }
  }

  private static String name(Leaf leaf) {
    return (OWNERS.contains(leaf.section()) ? Named.OWNER : leaf.section() + "/") + leaf.id();
  }

  private static Set<String> names(Leaf leaf, @Nullable Object entry) {
    return entry == null ? Set.of() : Named.in(leaf.section(), leaf.id(), entry);
  }

  /** These and all that they need. */
  BitSet withNeeded(BitSet units) {
    return reach(units, needs);
  }

  /** These and all that need them. */
  BitSet withNeeding(BitSet units) {
    return reach(units, neededBy);
  }

  private static BitSet reach(BitSet start, List<BitSet> next) {
    BitSet reached = (BitSet) start.clone();
    BitSet open = (BitSet) start.clone();
    while (!open.isEmpty()) {
      int unit = open.nextSetBit(0);
      open.clear(unit);
      BitSet fresh = (BitSet) next.get(unit).clone();
      fresh.andNot(reached);
      reached.or(fresh);
      open.or(fresh);
    }
    return reached;
  }
}
