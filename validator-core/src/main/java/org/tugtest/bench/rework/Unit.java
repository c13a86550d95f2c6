package org.tugtest.bench.rework;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Series;

/**
 * What comes out of a seat, or goes into it, in one go: one terminal with its wires, or a bare end
 * in a splice.
 *
 * @param seat where it sits
 * @param ends of the wires in it, sorted; more than one only where a terminal takes several
 * @param terminal part of the terminal; null when it is not known, or there is none
 * @param seal part of the seal on the wire; null when there is none
 */
public record Unit(
    Seat seat, List<PieceEnd> ends, @Nullable String terminal, @Nullable String seal) {
  public Unit {
    ends = ends.stream().sorted().toList();
  }

  /** The wires, {@code W1 and W2}. */
  String wires() {
    return Series.and(ends.stream().map(end -> end.piece().name()).distinct().toList());
  }
}
