package org.tugtest.solve;

import java.nio.IntBuffer;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Structures of one network that were made before, by what conducts: the states of a harness, and
 * the rounds of one state, differ in little. For circuits with the same branches between the same
 * nodes only. What several threads ask for at a time is made by each, with the same result.
 */
public final class Grids {
  private static final int MOST_KEPT = 12;
  private final Map<Key, Grid> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Grid> eldest) {
          return size() > MOST_KEPT;
        }
      };

  private final Map<IntBuffer, Grids> ofParts = new ConcurrentHashMap<>();

  /** What a structure depends on: branches that join, that are metal, that only inject. */
  private record Key(int nodes, BitSet joins, BitSet metal, BitSet injects) {}

  /** The structures of a part of these circuits. */
  Grids of(Part part) {
    return ofParts.computeIfAbsent(part.key(), none -> new Grids());
  }

  /** The structure of a network. */
  Grid of(Linear linear) {
    int branches = linear.branches();
    BitSet joins = new BitSet(branches);
    BitSet metal = new BitSet(branches);
    BitSet injects = new BitSet(branches);
    for (int i = 0; i < branches; i++) {
      joins.set(i, linear.joins(i));
      metal.set(i, linear.metal(i));
      injects.set(i, linear.amps(i) != 0 && linear.kind(i) != Linear.Kind.PASSIVE);
    }
    Key key = new Key(linear.nodes(), joins, metal, injects);
    synchronized (known) {
      Grid grid = known.get(key);
      if (grid != null) {
        return grid;
      }
    }
    Grid made = Grid.of(linear);
    synchronized (known) {
      known.put(key, made);
    }
    return made;
  }
}
