package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A kind of fuse.
 *
 * @param times its own opening times; empty: the table of its style
 */
public record FusePart(
    String id,
    @Nullable Double ratingA,
    @Nullable String style,
    @Nullable Double maxV,
    @Nullable Double breakingCapacityA,
    @Nullable Double coldMilliohm,
    List<Time> times) {

  public FusePart {
    times = List.copyOf(times);
  }

  /**
   * Opening times at a multiple of the rating.
   *
   * @param multiple of the rating
   * @param leastS it opens no earlier than this, seconds
   * @param greatestS it opens no later than this, seconds; null where that is not guaranteed
   */
  public record Time(double multiple, @Nullable Double leastS, @Nullable Double greatestS) {}
}
