package org.tugtest.solve;

import java.nio.IntBuffer;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Structures of one network that were made before, by what conducts: the states of a harness, and
 * the rounds of one state, differ in little. For circuits with the same branches between the same
 * nodes only. What several threads ask for at a time is made by each, with the same result.
 */
public final class Grids {
  private static final int MOST_KEPT = 12;
  private static final int MOST_PARTINGS = 8;
  private static final int MOST_RESTS = 12;
  private static final int MOST_BRANCHES = 200_000;
  private final Map<Key, Grid> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Grid> eldest) {
          return size() > MOST_KEPT;
        }
      };

  private final Deque<Parts> parts = new ArrayDeque<>();
  private final Deque<Rest> rests = new ArrayDeque<>();
  private final Map<IntBuffer, Grids> ofParts = new ConcurrentHashMap<>();

  /** What a structure depends on: branches that join, that are metal, that only inject. */
  private record Key(int nodes, BitSet joins, BitSet metal, BitSet injects) {}

  /** How a part came to rest before, and what that follows from. */
  private static final class Rest {
    private final Branch[] branches;
    private final @Nullable List<Integer> before;
    private final Settled settled;

    Rest(Branch[] branches, @Nullable List<Integer> before, Settled settled) {
      this.branches = branches;
      this.before = before;
      this.settled = settled;
    }

    boolean isOf(Part part, @Nullable List<Integer> since) {
      return Objects.equals(before, since) && part.is(branches);
    }
  }

  /** The parts of one of these circuits. */
  Parts parts(Circuit circuit) {
    int[] kinds = Parts.kinds(circuit);
    synchronized (parts) {
      for (Parts known : parts) {
        if (known.fit(kinds)) {
          return known;
        }
      }
    }
    Parts made = Parts.of(circuit, kinds);
    synchronized (parts) {
      parts.addFirst(made);
      if (parts.size() > MOST_PARTINGS) {
        parts.removeLast();
      }
    }
    return made;
  }

  /**
   * How an equal part came to rest before: the states of a harness differ in few of its parts.
   * These are the structures of the part.
   *
   * @param before the coils that were pulled before; null: not known
   */
  Optional<Settled> settled(Part part, @Nullable List<Integer> before) {
    List<Rest> known;
    synchronized (rests) {
      known = List.copyOf(rests);
    }
    return known.stream().filter(one -> one.isOf(part, before)).findFirst().map(one -> one.settled);
  }

  /** Keeps how a part came to rest, as long as that is not much. */
  void settled(Part part, @Nullable List<Integer> before, Settled settled) {
    int most = Math.min(MOST_RESTS, MOST_BRANCHES / Math.max(1, part.branches().length));
    synchronized (rests) {
      rests.addFirst(new Rest(part.outside(), before, settled));
      while (rests.size() > most) {
        rests.removeLast();
      }
    }
  }

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
