package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for labels: none lies on another or on a knot, and few on an arm. A label that finds
 * no room near its thing goes farther away and is tied to it by a line; below everything else there
 * is always room.
 */
final class Labels {
  /** How high a line of text is. */
  static final int LINE = 15;

  private static final double SIZE = 12;
  private static final int RINGS = 40;
  private static final int STEP = 9;
  private static final int DIRECTIONS = 16;
  private static final double PAD = 2;

  /** A label so near to its thing needs no tie. */
  static final int NEAR = 12;

  private final List<Box> taken = new ArrayList<>();
  private final List<double[]> strokes = new ArrayList<>();

  /** Everything that has a place. */
  List<Box> all() {
    return Collections.unmodifiableList(taken);
  }

  /** How wide a text is at most, with letters of one width; wide letters count twice. */
  static double width(String text) {
    return text.codePoints().mapToDouble(c -> c < 0x1100 ? 0.625 : 1.25).sum() * SIZE;
  }

  /** Notes something that labels must not lie on. */
  void take(Box box) {
    taken.add(box);
  }

  /** Notes a line of some width on which labels should not lie. */
  void stroke(double x1, double y1, double x2, double y2, double width) {
    strokes.add(new double[] {x1, y1, x2, y2, width / 2});
  }

  /**
   * Room for a label of a thing.
   *
   * @param radius of the thing
   */
  Box place(double x, double y, double radius, double width, double height) {
    Box best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int ring = 0; ring < RINGS && ring < least; ring++) {
      double away = radius + 4 + STEP * ring;
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        double dx = Math.cos(angle);
        double dy = Math.sin(angle);
        Box box =
            new Box(
                x + dx * (away + width / 2) - width / 2,
                y + dy * (away + height / 2) - height / 2,
                width,
                height);
        double cost = ring + (i % 4 == 0 ? 0 : 0.3) + cost(box, least - ring);
        if (cost < least && cost + tied(box, x, y, radius) < least) {
          least = cost + tied(box, x, y, radius);
          best = box;
        }
      }
    }
    Box found = best == null ? below(x, width, height) : best;
    taken.add(found);
    return found;
  }

  /** Room for a label centred on a point beside an arm, if there is any. */
  @Nullable Box beside(double x, double y, double width, double height) {
    Box box = new Box(x - width / 2, y - height / 2, width, height);
    if (cost(box, 1) >= 1) {
      return null;
    }
    taken.add(box);
    return box;
  }

  private static Box padded(Box box, double pad) {
    return new Box(
        box.left() - pad, box.top() - pad, box.width() + 2 * pad, box.height() + 2 * pad);
  }

  private double cost(Box box, double most) {
    Box padded = padded(box, PAD);
    for (Box other : taken) {
      if (padded.touches(other)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    double cost = 0;
    for (double[] stroke : strokes) {
      Box clear = padded(box, PAD + stroke[4]);
      if (clear.crossed(stroke[0], stroke[1], stroke[2], stroke[3])) {
        cost += 3;
        if (cost > most) {
          return cost;
        }
      }
    }
    return cost;
  }

  /** What it costs that the tie of a label passes over other things. */
  private double tied(Box box, double x, double y, double radius) {
    double[] near = box.nearest(x, y);
    double cost = 0;
    if (Math.hypot(near[0] - x, near[1] - y) > radius + NEAR) {
      for (Box other : taken) {
        boolean own = other.touches(new Box(x - 1, y - 1, 2, 2));
        cost += !own && other.crossed(x, y, near[0], near[1]) ? 1 : 0;
      }
    }
    return cost;
  }

  private Box below(double x, double width, double height) {
    double bottom = taken.stream().mapToDouble(Box::bottom).max().orElse(0);
    return new Box(x - width / 2, bottom + LINE, width, height);
  }
}
