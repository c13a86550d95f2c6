package org.tugtest.report.html.loom;

/** Distances in the plane. */
final class Distance {
  private Distance() {}

  /** From a point to the nearest point of a line between two others. */
  static double ofPoint(double x, double y, double x1, double y1, double x2, double y2) {
    double dx = x2 - x1;
    double dy = y2 - y1;
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((x - x1) * dx + (y - y1) * dy) / square;
    double at = Math.max(0, Math.min(1, along));
    return Math.hypot(x - x1 - at * dx, y - y1 - at * dy);
  }

  /** Between two lines, each between two points; 0 where they cross. */
  static double between(
      double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
    if (turn(ax, ay, bx, by, cx, cy) * turn(ax, ay, bx, by, dx, dy) < 0
        && turn(cx, cy, dx, dy, ax, ay) * turn(cx, cy, dx, dy, bx, by) < 0) {
      return 0;
    }
    double first = Math.min(ofPoint(ax, ay, cx, cy, dx, dy), ofPoint(bx, by, cx, cy, dx, dy));
    double second = Math.min(ofPoint(cx, cy, ax, ay, bx, by), ofPoint(dx, dy, ax, ay, bx, by));
    return Math.min(first, second);
  }

  /** Above 0 where the third point lies to one side of the way from the first to the second. */
  private static double turn(double ax, double ay, double bx, double by, double cx, double cy) {
    return Math.signum((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  }
}
