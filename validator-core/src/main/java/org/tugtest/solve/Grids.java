package org.tugtest.solve;

import java.nio.IntBuffer;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Structures of one network that were made before, by what conducts: the states of a harness, and
 * the rounds of one state, differ in little. For circuits with the same branches between the same
 * nodes only. Not for several threads.
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

  private final Map<IntBuffer, Grids> ofParts = new HashMap<>();

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
    Grid grid = known.get(key);
    if (grid == null) {
      grid = Grid.of(linear);
      known.put(key, grid);
    }
    return grid;
  }
}
