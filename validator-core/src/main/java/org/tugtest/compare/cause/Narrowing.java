package org.tugtest.compare.cause;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The least set of units that still causes something (delta debugging): parts of the set are left
 * out, halves first, then smaller ones, as long as the rest causes it; what needs a unit that is
 * left out goes with it. In the end no single unit can be left out, unless the trials run out.
 */
final class Narrowing {
  private final Dependencies dependencies;
  private final Predicate<BitSet> causes;
  private final Map<BitSet, Boolean> tried = new HashMap<>();
  private int left;

  /**
   * Begins.
   *
   * @param most trials that may be made
   */
  Narrowing(Dependencies dependencies, Predicate<BitSet> causes, int most) {
    this.dependencies = dependencies;
    this.causes = causes;
    this.left = most;
  }

  /**
   * The least of {@code all}, which causes it.
   *
   * @param likely units to try alone first
   */
  BitSet least(BitSet all, BitSet likely) {
    BitSet start = dependencies.withNeeded(likely);
    start.and(all);
    BitSet current =
        !start.isEmpty() && start.cardinality() < all.cardinality() && isCause(start) ? start : all;
    int parts = 2;
    while (current.cardinality() > 1 && left > 0) {
      BitSet smaller = smaller(current, parts);
      if (smaller != null) {
        current = smaller;
        parts = Math.max(2, parts - 1);
      } else if (parts >= current.cardinality()) {
        break;
      } else {
        parts = Math.min(current.cardinality(), 2 * parts);
      }
    }
    return current;
  }

  /** Whether the trials ran out before the least set was found. */
  boolean exhausted() {
    return left <= 0;
  }

  private @org.jspecify.annotations.Nullable BitSet smaller(BitSet current, int parts) {
    for (BitSet part : split(current, parts)) {
      BitSet rest = (BitSet) current.clone();
      rest.andNot(dependencies.withNeeding(part));
      if (!rest.isEmpty() && isCause(rest)) {
        return rest;
      }
    }
    return null;
  }

  private static List<BitSet> split(BitSet units, int parts) {
    List<BitSet> split = new ArrayList<>();
    int size = units.cardinality();
    int at = 0;
    for (int unit = units.nextSetBit(0); unit >= 0; unit = units.nextSetBit(unit + 1)) {
      int part = (int) ((long) at++ * parts / size);
      while (split.size() <= part) {
        split.add(new BitSet());
      }
      split.get(part).set(unit);
    }
    return split;
  }

  private boolean isCause(BitSet units) {
    Boolean known = tried.get(units);
    if (known != null) {
      return known;
    }
    if (left <= 0) {
      return false;
    }
    left--;
    boolean caused = causes.test(units);
    tried.put((BitSet) units.clone(), caused);
    return caused;
  }
}
