package org.tugtest.network;

import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** How switches and relays may still stand after some contacts were taken as closed. */
public final class Positions {
  /** Each may stand as it likes. */
  public static final Positions ANY = new Positions(Map.of());

  private final Map<Integer, BitSet> left;

  private Positions(Map<Integer, BitSet> left) {
    this.left = left;
  }

  /** The same with one mover in one of these settings; null when none is left. */
  @Nullable Positions and(int mover, BitSet settings) {
    BitSet before = left.get(mover);
    BitSet now = (BitSet) settings.clone();
    if (before != null) {
      now.and(before);
    }
    if (now.isEmpty()) {
      return null;
    }
    if (now.equals(before)) {
      return this;
    }
    Map<Integer, BitSet> more = new TreeMap<>(left);
    more.put(mover, now);
    return new Positions(more);
  }

  /** Whether everything that {@code other} leaves possible is possible here too. */
  boolean allows(Positions other) {
    for (Map.Entry<Integer, BitSet> mine : left.entrySet()) {
      BitSet theirs = other.left.get(mine.getKey());
      if (theirs == null) {
        return false;
      }
      BitSet beyond = (BitSet) theirs.clone();
      beyond.andNot(mine.getValue());
      if (!beyond.isEmpty()) {
        return false;
      }
    }
    return true;
  }
}
