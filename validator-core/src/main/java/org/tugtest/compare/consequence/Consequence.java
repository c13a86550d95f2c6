package org.tugtest.compare.consequence;

import java.util.List;
import org.tugtest.compare.Comparison;

/** One sort of figure that can move with a change. */
public interface Consequence {
  /** What the figures are, for a heading: {@code volts at the loads}. */
  String title();

  /** The figures that moved, the largest first; what did not move is left out. */
  List<Moved> of(Comparison comparison);
}
