package org.tugtest.report.sheets.list;

import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;

/**
 * A cavity without a wire, which meets none either.
 *
 * @param plugged whether a blank closes it
 * @param open whether the housing is sealed and nothing closes it
 * @param meets the other half it would meet a free cavity of; empty: none
 */
record FreeCavity(Point at, boolean plugged, boolean open, String meets) {
  /** So many in a row that are alike are printed as one row; fewer are as short one by one. */
  static final int FOLDED = 4;

  /** The cavity, when it is free and what it meets is. */
  static Optional<FreeCavity> of(Facts facts, Point at) {
    Point other = facts.wiring().meets(at).orElse(null);
    if (!facts.wiring().endsAt(at).isEmpty()
        || (other != null && !facts.wiring().endsAt(other).isEmpty())) {
      return Optional.empty();
    }
    boolean plugged = Blanks.isBlanked(facts, at);
    boolean sealed =
        facts
            .wiring()
            .mating()
            .housingOf(at.owner())
            .filter(housing -> housing.sealed())
            .isPresent();
    return Optional.of(
        new FreeCavity(at, plugged, sealed && !plugged, other == null ? "" : other.owner()));
  }

  boolean isLike(FreeCavity other) {
    return plugged == other.plugged && open == other.open && meets.equals(other.meets);
  }

  /** {@code free}, {@code blank}, {@code free, plugs needed}. */
  String words(int count) {
    if (plugged) {
      return count == 1 ? "blank" : "blanks";
    }
    return open ? "free, " + (count == 1 ? "plug" : "plugs") + " needed" : "free";
  }
}
