package org.tugtest.protect;

import java.util.List;
import org.tugtest.network.Edge;

/**
 * The greatest lasting current into a place.
 *
 * @param amps infinite when nothing bounds it
 * @param cut the fuses, trips and self-limiting sources that bound it
 */
record Limit(double amps, List<Edge.OfElement> cut) {
  /** Nothing bounds it. */
  static final Limit NONE = new Limit(Double.POSITIVE_INFINITY, List.of());

  /** Nothing flows. */
  static final Limit DEAD = new Limit(0, List.of());

  Limit {
    cut = List.copyOf(cut);
  }

  /** The greater of the two; this one when they are alike. */
  Limit orGreater(Limit other) {
    return other.amps > amps ? other : this;
  }

  /** The lesser of the two; this one when they are alike. */
  Limit orLess(Limit other) {
    return other.amps < amps ? other : this;
  }
}
