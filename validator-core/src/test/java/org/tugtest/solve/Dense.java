package org.tugtest.solve;

import org.jspecify.annotations.Nullable;

/** Gauss elimination with partial pivoting on a full matrix: the second algorithm, for tests. */
final class Dense {
  private Dense() {}

  /** The solution of {@code matrix · x = right}; null when the matrix is singular. */
  static double @Nullable [] solve(double[][] matrix, double[] right) {
    int n = right.length;
    double[][] m = new double[n][];
    for (int i = 0; i < n; i++) {
      m[i] = matrix[i].clone();
    }
    double[] x = right.clone();
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        pivot = Math.abs(m[row][column]) > Math.abs(m[pivot][column]) ? row : pivot;
      }
      if (Math.abs(m[pivot][column]) < 1e-12) {
        return null;
      }
      double[] swap = m[pivot];
      m[pivot] = m[column];
      m[column] = swap;
      double held = x[pivot];
      x[pivot] = x[column];
      x[column] = held;
      for (int row = column + 1; row < n; row++) {
        double factor = m[row][column] / m[column][column];
        if (factor != 0) {
          for (int k = column; k < n; k++) {
            m[row][k] -= factor * m[column][k];
          }
          x[row] -= factor * x[column];
        }
      }
    }
    for (int row = n - 1; row >= 0; row--) {
      for (int k = row + 1; k < n; k++) {
        x[row] -= m[row][k] * x[k];
      }
      x[row] /= m[row][row];
    }
    return x;
  }
}
