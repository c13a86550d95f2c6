package org.tugtest.report.html.loom;

import java.util.BitSet;

/** Where the knots of a skeleton lie, in mm or any other unit, y downwards. */
final class Places {
  private final double[] x;
  private final double[] y;
  private final BitSet bent = new BitSet();

  /** No knot has a place yet. */
  Places(int knots) {
    x = new double[knots];
    y = new double[knots];
  }

  /** How far to the right each knot lies. */
  double[] x() {
    return x;
  }

  /** How far down each knot lies. */
  double[] y() {
    return y;
  }

  /** Arms that are not drawn to length, by their place in the skeleton. */
  BitSet bent() {
    return bent;
  }
}
