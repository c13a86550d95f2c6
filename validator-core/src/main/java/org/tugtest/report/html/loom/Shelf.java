package org.tugtest.report.html.loom;

import java.util.List;

/** Puts trees that have places of their own side by side and below each other. */
final class Shelf {
  private static final double GAP = 0.1;
  private static final double BROAD = 1.6;
  private final Places places;
  private final double arm;
  private final double least;
  private double width;
  private double x;
  private double y;
  private double deepest;
  private double gap;

  /**
   * A shelf.
   *
   * @param arm how long arms are, more or less
   * @param trees how many trees there will be
   */
  Shelf(Places places, double arm, int trees) {
    this.places = places;
    this.arm = arm;
    this.least = BROAD * arm * Math.sqrt(trees);
  }

  /** Moves a tree to where there is room; the first, or their number, decides how wide it is. */
  void put(List<Integer> tree) {
    double left = tree.stream().mapToDouble(knot -> places.x()[knot]).min().orElse(0);
    double right = tree.stream().mapToDouble(knot -> places.x()[knot]).max().orElse(0);
    double top = tree.stream().mapToDouble(knot -> places.y()[knot]).min().orElse(0);
    double bottom = tree.stream().mapToDouble(knot -> places.y()[knot]).max().orElse(0);
    if (width == 0) {
      width = Math.max(right - left, least);
      gap = Math.max(GAP * width, 0.8 * arm);
    } else if (x + right - left > width) {
      x = 0;
      y = deepest + gap;
    }
    for (int knot : tree) {
      places.x()[knot] += x - left;
      places.y()[knot] += y - top;
    }
    deepest = Math.max(deepest, y + bottom - top);
    x += right - left + gap;
  }
}
