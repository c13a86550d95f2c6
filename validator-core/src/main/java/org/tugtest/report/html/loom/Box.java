package org.tugtest.report.html.loom;

/** A rectangle, y downwards. */
record Box(double left, double top, double width, double height) {
  double right() {
    return left + width;
  }

  double bottom() {
    return top + height;
  }

  boolean touches(Box other) {
    return left < other.right()
        && other.left < right()
        && top < other.bottom()
        && other.top < bottom();
  }

  /** The point of it that is nearest to another point. */
  double[] nearest(double x, double y) {
    return new double[] {
      Math.max(left, Math.min(right(), x)), Math.max(top, Math.min(bottom(), y))
    };
  }

  /** Whether a line between two points passes through it. */
  boolean crossed(double x1, double y1, double x2, double y2) {
    double from = 0;
    double to = 1;
    double[] step = {x1 - x2, x2 - x1, y1 - y2, y2 - y1};
    double[] room = {x1 - left, right() - x1, y1 - top, bottom() - y1};
    for (int i = 0; i < 4; i++) {
      if (step[i] == 0) {
        if (room[i] < 0) {
          return false;
        }
      } else if (step[i] < 0) {
        from = Math.max(from, room[i] / step[i]);
      } else {
        to = Math.min(to, room[i] / step[i]);
      }
    }
    return from <= to;
  }
}
