package org.tugtest.expect;

import java.util.function.Predicate;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;

/** What an expectation that does not hold lacks: a joint somewhere would let it hold. */
public sealed interface Lacking {
  /** A load has too few volts in a state. */
  record Volts(Edge.OfElement load, String state) implements Lacking {}

  /** A contact has no volts in a state. */
  record Plus(Point point, String state) implements Lacking {}

  /**
   * Points are not joined.
   *
   * @param these whether a point is joined to the one side
   * @param those whether a point is joined to the other side
   */
  record Joint(Predicate<Point> these, Predicate<Point> those) implements Lacking {}
}
