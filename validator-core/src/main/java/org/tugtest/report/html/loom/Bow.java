package org.tugtest.report.html.loom;

/**
 * An arm as drawn: from one point over the pull of another to a third. One that comes back to where
 * it begins is a loop, of which the pull says how high it rises.
 */
record Bow(boolean loop, double x1, double y1, double pullX, double pullY, double x2, double y2) {
  /**
   * An arm between two knots: the first of several is straight, the others bow out more and more.
   *
   * @param nth which of several it is, from 0
   */
  static Bow between(double x1, double y1, double x2, double y2, int nth) {
    double far = Math.max(1e-9, Math.hypot(x2 - x1, y2 - y1));
    double out = nth == 0 ? 0 : (nth % 2 == 0 ? -1 : 1) * (36 + 14 * nth);
    double midX = (x1 + x2) / 2 - (y2 - y1) / far * out;
    double midY = (y1 + y2) / 2 + (x2 - x1) / far * out;
    return new Bow(false, x1, y1, midX, midY, x2, y2);
  }

  /**
   * An arm that comes back to its knot.
   *
   * @param nth which of several it is, from 0
   */
  static Bow back(double x, double y, int nth) {
    return new Bow(true, x, y, x, y - 70 - 30 * nth, x, y);
  }

  /** How far to the right it is at a share of its length. */
  double x(double t) {
    return (1 - t) * (1 - t) * x1 + 2 * t * (1 - t) * pullX + t * t * x2;
  }

  /** How far down it is at a share of its length. */
  double y(double t) {
    return (1 - t) * (1 - t) * y1 + 2 * t * (1 - t) * pullY + t * t * y2;
  }

  /** What a path element draws it by. */
  String path() {
    String start = "M" + at(x1, y1);
    if (loop) {
      double lift = y1 - pullY;
      return start + "C" + at(x1 - lift, pullY) + " " + at(x1 + lift, pullY) + " " + at(x2, y2);
    }
    boolean straight =
        Math.abs(x(0.5) - (x1 + x2) / 2) < 1e-6 && Math.abs(y(0.5) - (y1 + y2) / 2) < 1e-6;
    return start + (straight ? "L" : "Q" + at(pullX, pullY) + " ") + at(x2, y2);
  }

  /** A point of a path. */
  static String at(double x, double y) {
    return Math.round(x) + "," + Math.round(y);
  }
}
