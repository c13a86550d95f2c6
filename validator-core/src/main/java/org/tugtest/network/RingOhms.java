package org.tugtest.network;

import java.util.Arrays;

/**
 * The resistance between the points of one ring, by nodal analysis: the conductances towards a
 * grounded point as a matrix, inverted once (Cholesky); then {@code R(p,q) = z_pp + z_qq - 2 z_pq}.
 */
final class RingOhms {
  /** Beyond as many points the shortest way is taken instead. */
  static final int MOST = 300;

  /** A resistance of none counts as this, in milliohm, so that the matrix can be inverted. */
  private static final double LEAST = 1e-6;

  private final double[][] inverse;

  /**
   * The inverse for points 0 to {@code points - 1}, the last of them grounded. Edge {@code i} lies
   * between {@code from[i]} and {@code to[i]} and has {@code milliohm[i]}.
   */
  RingOhms(int points, int[] from, int[] to, double[] milliohm) {
    int n = points - 1;
    double[][] matrix = new double[n][n];
    for (int i = 0; i < from.length; i++) {
      double conductance = 1 / Math.max(milliohm[i], LEAST);
      add(matrix, from[i], from[i], conductance);
      add(matrix, to[i], to[i], conductance);
      add(matrix, from[i], to[i], -conductance);
      add(matrix, to[i], from[i], -conductance);
    }
    inverse = inverse(matrix);
  }

  /** The resistance between two of the points, in milliohm. */
  double between(int p, int q) {
    return Math.max(0, z(p, p) + z(q, q) - 2 * z(p, q));
  }

  private double z(int p, int q) {
    return p < inverse.length && q < inverse.length ? inverse[p][q] : 0;
  }

  private static void add(double[][] matrix, int p, int q, double value) {
    if (p < matrix.length && q < matrix.length) {
      matrix[p][q] += value;
    }
  }

  private static double[][] inverse(double[][] matrix) {
    int n = matrix.length;
    double[][] root = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= root[i][k] * root[j][k];
        }
        root[i][j] = i == j ? Math.sqrt(sum) : sum / root[j][j];
      }
    }
    double[][] inverse = new double[n][];
    for (int column = 0; column < n; column++) {
      inverse[column] = solve(root, column);
    }
    return inverse;
  }

  private static double[] solve(double[][] root, int column) {
    int n = root.length;
    double[] x = new double[n];
    for (int i = column; i < n; i++) {
      double sum = i == column ? 1 : 0;
      for (int k = column; k < i; k++) {
        sum -= root[i][k] * x[k];
      }
      x[i] = sum / root[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      for (int k = i + 1; k < n; k++) {
        sum -= root[k][i] * x[k];
      }
      x[i] = sum / root[i][i];
    }
    return Arrays.copyOf(x, n);
  }
}
