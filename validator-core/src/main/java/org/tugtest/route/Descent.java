package org.tugtest.route;

/**
 * Moves circles until they overlap as little as can be: the method of limited memory of Broyden,
 * Fletcher, Goldfarb and Shanno (Nocedal, Mathematics of Computation 35, 1980), with steps halved
 * until they help enough (Armijo). It ends after a bounded number of steps.
 */
final class Descent {
  private static final int MEMORY = 7;
  private static final int HALVINGS = 12;
  private static final double ENOUGH = 1e-4;
  private static final double STALLED = 1e-6;
  private static final double FIRST_STEP = 0.25;

  private final Overlap overlap;
  private final int steps;
  private final int size;
  private final double[][] moves = new double[MEMORY][];
  private final double[][] turns = new double[MEMORY][];
  private final double[] inverse = new double[MEMORY];
  private int kept;

  /** A descent of at most so many steps. */
  Descent(Overlap overlap, int steps) {
    this.overlap = overlap;
    this.steps = steps;
    this.size = 2 * overlap.circles();
  }

  /** Moves the circles {@code at} within a circle of radius {@code bound}. */
  void run(double[] at, double bound, double close) {
    kept = 0;
    double[] gradient = new double[size];
    double[] nextGradient = new double[size];
    double[] next = new double[size];
    double now = overlap.of(at, bound, gradient);
    for (int step = 0; step < steps && now > close; step++) {
      double[] way = direction(gradient);
      double slope = dot(gradient, way);
      if (slope >= 0) {
        kept = 0;
        way = direction(gradient);
        slope = dot(gradient, way);
      }
      double then = now;
      double length = 1;
      int tried = 0;
      do {
        for (int i = 0; i < size; i++) {
          next[i] = at[i] + length * way[i];
        }
        then = overlap.of(next, bound, nextGradient);
        length /= 2;
        tried++;
      } while (!(then <= now + ENOUGH * 2 * length * slope) && tried < HALVINGS);
      if (!(then < now)) {
        return;
      }
      keep(at, next, gradient, nextGradient);
      double gained = now - then;
      System.arraycopy(next, 0, at, 0, size);
      System.arraycopy(nextGradient, 0, gradient, 0, size);
      now = then;
      if (gained < STALLED * now) {
        return;
      }
    }
  }

  private double[] direction(double[] gradient) {
    double[] way = new double[size];
    for (int i = 0; i < size; i++) {
      way[i] = -gradient[i];
    }
    double[] share = new double[MEMORY];
    int oldest = Math.max(0, kept - MEMORY);
    for (int k = kept - 1; k >= oldest; k--) {
      int slot = k % MEMORY;
      share[slot] = inverse[slot] * dot(moves[slot], way);
      add(way, -share[slot], turns[slot]);
    }
    scale(way);
    for (int k = oldest; k < kept; k++) {
      int slot = k % MEMORY;
      add(way, share[slot] - inverse[slot] * dot(turns[slot], way), moves[slot]);
    }
    return way;
  }

  private void scale(double[] way) {
    double factor = FIRST_STEP;
    if (kept > 0) {
      int last = (kept - 1) % MEMORY;
      factor = 1 / (inverse[last] * dot(turns[last], turns[last]));
    }
    for (int i = 0; i < size; i++) {
      way[i] *= factor;
    }
  }

  private void keep(double[] at, double[] next, double[] gradient, double[] nextGradient) {
    double[] move = new double[size];
    double[] turn = new double[size];
    for (int i = 0; i < size; i++) {
      move[i] = next[i] - at[i];
      turn[i] = nextGradient[i] - gradient[i];
    }
    double curved = dot(move, turn);
    if (curved > 0 && Double.isFinite(1 / curved)) {
      int slot = kept % MEMORY;
      moves[slot] = move;
      turns[slot] = turn;
      inverse[slot] = 1 / curved;
      kept++;
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static void add(double[] to, double factor, double[] what) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * what[i];
    }
  }
}
