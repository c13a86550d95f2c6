package org.tugtest.protect;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;

/**
 * The lasting current that a wire can see before any fuse opens.
 *
 * @param wire the wire
 * @param mostA at most this flows, in amperes; infinite when no known rating bounds it
 * @param leastA at least this can flow; less than {@code mostA} only where a rating is not known
 * @param cut the fuses, trips and self-limiting sources that bound it; a fuse whose rating is not
 *     known is never in it
 * @param unfused a way from a source to the wire, and through it, without a fuse; null when every
 *     way has one
 */
public record Exposure(
    Edge.OfWire wire,
    double mostA,
    double leastA,
    List<Edge.OfElement> cut,
    @Nullable Path unfused) {

  public Exposure {
    cut = List.copyOf(cut);
  }

  /** Whether a current without a bound can flow for ever. */
  public boolean unbounded() {
    return unfused != null;
  }

  /** The limit in amperes; empty when nothing bounds it or a rating that counts is not known. */
  public Optional<Double> limitA() {
    return !unbounded() && Double.isFinite(mostA) && mostA == leastA
        ? Optional.of(mostA)
        : Optional.empty();
  }
}
