package org.tugtest.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A small circle round given circles. From a few fixed arrangements the circles are pressed into
 * circles that are too small and moved until they overlap least; what is left of overlap is taken
 * out by spreading all of them. The outcome is a packing that exists, so never below the optimum;
 * for equal circles it is within 2 % of the published one. Equal input gives equal output, and the
 * order of the circles does not matter. One and two circles are exact.
 */
final class CirclePacking {
  /** More circles than this are not laid out: the diameter is that of a perfect hexagonal lay. */
  static final int MOST = 1000;

  /** Share of the plane that circles in a hexagonal lay cover, pi / sqrt(12). */
  private static final double HEXAGONAL = Math.PI / Math.sqrt(12);

  /** The golden angle: a spiral of even density. */
  private static final double TURN = Math.PI * (3 - Math.sqrt(5));

  private static final double LOOSE = 0.8;
  private static final long SEED = 20261125;
  private static final int FEW = 30;
  private static final int MANY = 300;
  private static final int ROUNDS = 8;
  private static final int STEPS = 400;
  private static final double CLOSE = 1e-24;
  private static final double SAME = 1e-5;

  private final double[] radii;
  private final double least;
  private double bound;
  private double[] best;

  private CirclePacking(double[] radii) {
    this.radii = radii;
    double area = 0;
    for (double radius : radii) {
      area += radius * radius;
    }
    this.least = Math.max(radii[0] + radii[1], Math.sqrt(area / HEXAGONAL));
    this.best = spiral(1);
    this.bound = spread(best);
  }

  /** Packs circles of these diameters, each above 0. */
  static Packing of(List<Double> diametersMm) {
    int count = diametersMm.size();
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.<Integer, Double>comparing(diametersMm::get).reversed())
            .mapToInt(Integer::intValue)
            .toArray();
    double[] radii = Arrays.stream(order).mapToDouble(i -> diametersMm.get(i) / 2).toArray();
    if (count == 0) {
      return new Packing(0, List.of());
    }
    if (count > MOST) {
      double squares = diametersMm.stream().mapToDouble(d -> d * d).sorted().sum();
      return new Packing(Math.sqrt(squares / HEXAGONAL), List.of());
    }
    double[] at = new double[2 * count];
    double bound = radii[0];
    if (count == 2) {
      bound = radii[0] + radii[1];
      at[0] = -radii[1];
      at[2] = radii[0];
    } else if (count > 2) {
      CirclePacking packing = new CirclePacking(radii);
      packing.press();
      bound = packing.bound;
      at = packing.best;
    }
    Packing.Circle[] circles = new Packing.Circle[count];
    for (int i = 0; i < count; i++) {
      circles[order[i]] = new Packing.Circle(at[2 * i], at[2 * i + 1], 2 * radii[i]);
    }
    return new Packing(2 * bound, new ArrayList<>(Arrays.asList(circles)));
  }

  private void press() {
    press(spiral(0), 1);
    if (radii.length <= MANY) {
      press(scattered(), 1);
    }
    if (radii.length <= FEW) {
      press(spiral(1), 1.06);
      press(spiral(0), 1.12);
    }
  }

  private void press(double[] at, double factor) {
    Overlap overlap = new Overlap(radii);
    Descent descent = new Descent(overlap, STEPS);
    double own = Double.POSITIVE_INFINITY;
    double target = least * factor;
    for (int round = 0; round < ROUNDS; round++) {
      descent.run(at, target, CLOSE * radii[0] * radii[0]);
      double[] feasible = at.clone();
      double needed = spread(feasible);
      if (needed < bound) {
        bound = needed;
        best = feasible;
      }
      own = Math.min(own, needed);
      if (!Double.isFinite(own) || own - target < SAME * own) {
        return;
      }
      target += (own - target) / 2;
    }
  }

  /** Spreads the circles until the closest two just touch; the radius they then need. */
  private double spread(double[] at) {
    double factor = 0;
    for (int i = 0; i < radii.length; i++) {
      for (int j = i + 1; j < radii.length; j++) {
        double dx = at[2 * i] - at[2 * j];
        double dy = at[2 * i + 1] - at[2 * j + 1];
        factor = Math.max(factor, (radii[i] + radii[j]) / Math.sqrt(dx * dx + dy * dy));
      }
    }
    double needed = 0;
    for (int i = 0; i < radii.length; i++) {
      at[2 * i] *= factor;
      at[2 * i + 1] *= factor;
      double x = at[2 * i];
      double y = at[2 * i + 1];
      needed = Math.max(needed, Math.sqrt(x * x + y * y) + radii[i]);
    }
    return needed;
  }

  /** The largest in the middle, the others round it by the golden angle. */
  private double[] spiral(double start) {
    double[] at = new double[2 * radii.length];
    double area = start * radii[0] * radii[0];
    for (int i = 0; i < radii.length; i++) {
      double far = Math.sqrt(area / LOOSE);
      at[2 * i] = far * StrictMath.cos(i * TURN);
      at[2 * i + 1] = far * StrictMath.sin(i * TURN);
      area += radii[i] * radii[i];
    }
    return at;
  }

  /** All over the place, but the same in every run. */
  private double[] scattered() {
    Random random = new Random(SEED);
    double area = 0;
    for (double radius : radii) {
      area += radius * radius;
    }
    double[] at = new double[2 * radii.length];
    for (int i = 0; i < radii.length; i++) {
      double angle = 2 * Math.PI * random.nextDouble();
      double room = Math.max(0, Math.sqrt(area / LOOSE) - radii[i]);
      double far = room * Math.sqrt(random.nextDouble());
      at[2 * i] = far * StrictMath.cos(angle);
      at[2 * i + 1] = far * StrictMath.sin(angle);
    }
    return at;
  }
}
