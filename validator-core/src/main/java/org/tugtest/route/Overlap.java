package org.tugtest.route;

import java.util.Arrays;

/**
 * How much circles overlap each other and stick out of a circle round the origin: the sum of the
 * squares of all overlaps, and its gradient. Pairs that are far apart are left out until something
 * has moved far enough to matter.
 */
final class Overlap {
  private static final double SKIN = 0.6;
  private final double[] radii;
  private final double skin;
  private int[] one = new int[64];
  private int[] two = new int[64];
  private int pairs;
  private double[] listedAt = new double[0];

  /** The overlap of circles of these radii, the largest first. */
  Overlap(double[] radii) {
    this.radii = radii;
    this.skin = SKIN * radii[0];
  }

  int circles() {
    return radii.length;
  }

  /**
   * The overlap.
   *
   * @param at x and y of each circle
   * @param bound radius of the circle round them
   * @param gradient is filled with the gradient
   */
  double of(double[] at, double bound, double[] gradient) {
    if (stale(at)) {
      list(at);
    }
    Arrays.fill(gradient, 0);
    double sum = 0;
    for (int k = 0; k < pairs; k++) {
      int i = 2 * one[k];
      int j = 2 * two[k];
      double dx = at[i] - at[j];
      double dy = at[i + 1] - at[j + 1];
      double touch = radii[one[k]] + radii[two[k]];
      double square = dx * dx + dy * dy;
      if (square < touch * touch) {
        double apart = Math.sqrt(square);
        double overlap = touch - apart;
        sum += overlap * overlap;
        if (apart > 0) {
          double push = -2 * overlap / apart;
          gradient[i] += push * dx;
          gradient[i + 1] += push * dy;
          gradient[j] -= push * dx;
          gradient[j + 1] -= push * dy;
        }
      }
    }
    return sum + outside(at, bound, gradient);
  }

  private double outside(double[] at, double bound, double[] gradient) {
    double sum = 0;
    for (int i = 0; i < radii.length; i++) {
      double x = at[2 * i];
      double y = at[2 * i + 1];
      double room = bound - radii[i];
      double square = x * x + y * y;
      if (room < 0 || square > room * room) {
        double far = Math.sqrt(square);
        double out = far - room;
        sum += out * out;
        if (far > 0) {
          double pull = 2 * out / far;
          gradient[2 * i] += pull * x;
          gradient[2 * i + 1] += pull * y;
        }
      }
    }
    return sum;
  }

  private boolean stale(double[] at) {
    if (listedAt.length == 0) {
      return true;
    }
    double most = skin * skin / 4;
    for (int i = 0; i < at.length; i += 2) {
      double dx = at[i] - listedAt[i];
      double dy = at[i + 1] - listedAt[i + 1];
      if (dx * dx + dy * dy > most) {
        return true;
      }
    }
    return false;
  }

  private void list(double[] at) {
    listedAt = at.clone();
    pairs = 0;
    for (int i = 0; i < radii.length; i++) {
      for (int j = i + 1; j < radii.length; j++) {
        double dx = at[2 * i] - at[2 * j];
        double dy = at[2 * i + 1] - at[2 * j + 1];
        double near = radii[i] + radii[j] + skin;
        if (dx * dx + dy * dy < near * near) {
          if (pairs == one.length) {
            one = Arrays.copyOf(one, 2 * pairs);
            two = Arrays.copyOf(two, 2 * pairs);
          }
          one[pairs] = i;
          two[pairs++] = j;
        }
      }
    }
  }
}
