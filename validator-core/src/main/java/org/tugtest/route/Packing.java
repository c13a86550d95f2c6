package org.tugtest.route;

import java.util.List;

/**
 * Circles laid side by side in the least circle that was found for them; the middle of that circle
 * is the origin.
 *
 * @param diameterMm of the circle round all of them
 * @param circles in the order they were given; empty when there were too many to lay out
 */
public record Packing(double diameterMm, List<Circle> circles) {
  public Packing {
    circles = List.copyOf(circles);
  }

  /** A circle of a packing; all in mm. */
  public record Circle(double x, double y, double diameterMm) {}
}
