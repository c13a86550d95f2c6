package org.tugtest.solve;

/** Small full systems of equations. */
final class Elimination {
  private Elimination() {}

  /**
   * Solves by Gauss elimination with partial pivoting; both arguments are used up.
   *
   * @param matrix row by row
   * @param right right side, in which the answer stands afterwards
   * @param least a pivot no greater than this makes the matrix singular
   * @return whether there is an answer
   */
  static boolean solve(double[][] matrix, double[] right, double least) {
    int n = right.length;
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        pivot = Math.abs(matrix[row][column]) > Math.abs(matrix[pivot][column]) ? row : pivot;
      }
      if (!(Math.abs(matrix[pivot][column]) > least)) {
        return false;
      }
      double[] line = matrix[pivot];
      matrix[pivot] = matrix[column];
      matrix[column] = line;
      double held = right[pivot];
      right[pivot] = right[column];
      right[column] = held;
      for (int row = column + 1; row < n; row++) {
        double factor = matrix[row][column] / matrix[column][column];
        for (int k = column; factor != 0 && k < n; k++) {
          matrix[row][k] -= factor * matrix[column][k];
        }
        right[row] -= factor * right[column];
      }
    }
    for (int row = n - 1; row >= 0; row--) {
      for (int k = row + 1; k < n; k++) {
        right[row] -= matrix[row][k] * right[k];
      }
      right[row] /= matrix[row][row];
    }
    return true;
  }
}
