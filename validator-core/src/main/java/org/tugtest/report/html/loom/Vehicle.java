package org.tugtest.report.html.loom;

import java.util.List;
import java.util.Optional;

/**
 * Lays a skeleton out as it lies in the vehicle, seen obliquely: the longer of the first two axes
 * to the right, the third up, and the other one up and to the right at half its size.
 */
final class Vehicle {
  private static final double AWAY_RIGHT = 0.5;
  private static final double AWAY_UP = 0.4;

  private Vehicle() {}

  /** The places of all knots; empty when one of them does not say where it is. */
  static Optional<Places> of(Skeleton skeleton) {
    List<Skeleton.Knot> knots = skeleton.knots();
    if (knots.isEmpty() || knots.stream().anyMatch(knot -> knot.xyzMm().size() != 3)) {
      return Optional.empty();
    }
    int along = span(knots, 0) >= span(knots, 1) ? 0 : 1;
    Places places = new Places(knots.size());
    for (int i = 0; i < knots.size(); i++) {
      List<Double> at = knots.get(i).xyzMm();
      double away = at.get(1 - along);
      places.x()[i] = at.get(along) + AWAY_RIGHT * away;
      places.y()[i] = -at.get(2) - AWAY_UP * away;
    }
    return Optional.of(places);
  }

  private static double span(List<Skeleton.Knot> knots, int axis) {
    double least = knots.stream().mapToDouble(knot -> knot.xyzMm().get(axis)).min().orElse(0);
    return knots.stream().mapToDouble(knot -> knot.xyzMm().get(axis)).max().orElse(0) - least;
  }
}
