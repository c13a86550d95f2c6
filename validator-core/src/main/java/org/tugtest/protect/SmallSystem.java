package org.tugtest.protect;

/**
 * A few linear equations, solved by elimination with full pivoting. Unknowns that no equation fixes
 * come out as 0.
 */
final class SmallSystem {
  private static final double NOTHING = 1e-13;
  private final int size;
  private final double[][] rows;

  /** So many equations of as many unknowns, all coefficients 0. */
  SmallSystem(int size) {
    this.size = size;
    this.rows = new double[size][size + 1];
  }

  /** Adds to the coefficient of an unknown in an equation. */
  void add(int equation, int unknown, double value) {
    rows[equation][unknown] += value;
  }

  /** Sets what an equation comes to. */
  void sum(int equation, double value) {
    rows[equation][size] = value;
  }

  /** The unknowns. The equations are used up. */
  double[] solve() {
    int[] unknownAt = new int[size];
    double greatest = 0;
    for (int i = 0; i < size; i++) {
      unknownAt[i] = i;
      for (int k = 0; k < size; k++) {
        greatest = Math.max(greatest, Math.abs(rows[i][k]));
      }
    }
    int rank = 0;
    while (rank < size && pivot(rank, unknownAt, greatest * NOTHING)) {
      eliminate(rank++);
    }
    double[] values = new double[size];
    for (int i = rank - 1; i >= 0; i--) {
      double left = rows[i][size];
      for (int k = i + 1; k < rank; k++) {
        left -= rows[i][k] * values[unknownAt[k]];
      }
      values[unknownAt[i]] = left / rows[i][i];
    }
    return values;
  }

  /** Brings the greatest coefficient left to the place of the pivot; false when all are nothing. */
  private boolean pivot(int at, int[] unknownAt, double nothing) {
    int row = at;
    int column = at;
    for (int i = at; i < size; i++) {
      for (int k = at; k < size; k++) {
        if (Math.abs(rows[i][k]) > Math.abs(rows[row][column])) {
          row = i;
          column = k;
        }
      }
    }
    if (Math.abs(rows[row][column]) <= nothing) {
      return false;
    }
    double[] moved = rows[at];
    rows[at] = rows[row];
    rows[row] = moved;
    if (column != at) {
      for (double[] each : rows) {
        double value = each[at];
        each[at] = each[column];
        each[column] = value;
      }
      int unknown = unknownAt[at];
      unknownAt[at] = unknownAt[column];
      unknownAt[column] = unknown;
    }
    return true;
  }

  private void eliminate(int at) {
    for (int i = at + 1; i < size; i++) {
      double factor = rows[i][at] / rows[at][at];
      if (factor != 0) {
        for (int k = at; k <= size; k++) {
          rows[i][k] -= factor * rows[at][k];
        }
      }
    }
  }
}
