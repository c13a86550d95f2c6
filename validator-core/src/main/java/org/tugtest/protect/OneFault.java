package org.tugtest.protect;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Edge;

/**
 * The fault inside one load that can send most through a wire of the return side for ever. Two
 * loads that fail at the same time are no case that anybody provides for.
 *
 * @param mostA at most this flows, in amperes; infinite when no known rating bounds it
 * @param leastA at least this can flow; less than {@code mostA} only where a rating is not known
 * @param load the load; null when none with a fuse returns through the wire
 * @param cut the fuses, trips and self-limiting sources that bound it
 * @param homeA what fuses between the wire and the minus of every source let through; infinite when
 *     there is none that all must pass, or its rating is not known
 */
public record OneFault(
    double mostA,
    double leastA,
    Edge.@Nullable OfElement load,
    List<Edge.OfElement> cut,
    Edge.@Nullable OfElement home,
    double homeA) {
  /** Nothing flows. */
  static final OneFault NONE = new OneFault(0, 0, null, List.of(), null, Double.POSITIVE_INFINITY);

  public OneFault {
    cut = List.copyOf(cut);
  }

  OneFault orGreater(OneFault other) {
    return other.mostA > mostA ? other : this;
  }

  OneFault orLess(OneFault other) {
    return other.mostA < mostA ? other : this;
  }

  /** The same where it has to pass a fuse on its way home. */
  OneFault through(Edge.OfElement fuse, double ratingA) {
    boolean less = ratingA < homeA;
    Edge.OfElement least = less ? fuse : home;
    double leastHomeA = less ? ratingA : homeA;
    return ratingA < mostA
        ? new OneFault(ratingA, ratingA, load, List.of(fuse), least, leastHomeA)
        : new OneFault(mostA, leastA, load, cut, least, leastHomeA);
  }

  /** The same with the least that is sure to be able to flow. */
  OneFault atLeast(double amps) {
    return new OneFault(mostA, Math.min(amps, mostA), load, cut, home, homeA);
  }
}
