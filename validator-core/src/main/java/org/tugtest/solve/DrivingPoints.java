package org.tugtest.solve;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The entries of the inverse of a conductance matrix that lie where its factor has entries: the
 * resistance at every node, and between any two nodes that an edge joins. Computed column by column
 * from the last to the first (Takahashi's recurrence for selected entries of an inverse).
 */
public final class DrivingPoints {
  private final int[] positionOf;
  private final int[] columns;
  private final int[] rows;
  private final double[] inverse;

  /** Of a factor as {@link Factor} holds it. */
  DrivingPoints(int[] positionOf, int[] columns, int[] rows, double[] values) {
    this.positionOf = positionOf;
    this.columns = columns;
    this.rows = rows;
    this.inverse = new double[values.length];
    for (int column = columns.length - 2; column >= 0; column--) {
      fill(column, values);
    }
  }

  /** The resistance between a node and its ground, in ohms; 0 at a grounded node. */
  public double ohms(int node) {
    int at = positionOf[node];
    return Factor.isGround(at) ? 0 : inverse[columns[at]];
  }

  /**
   * The resistance between two nodes of one island, in ohms; empty where it takes {@link
   * Factor#ohmsBetween}, which is so for some pairs that no edge joins.
   */
  public OptionalDouble ohmsBetween(int a, int b) {
    int one = positionOf[a];
    int other = positionOf[b];
    if (Factor.isGround(one) || Factor.isGround(other) || a == b) {
      return OptionalDouble.of(a == b ? 0 : ohms(a) + ohms(b));
    }
    int slot = slot(Math.max(one, other), Math.min(one, other));
    return slot < 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(ohms(a) + ohms(b) - 2 * inverse[slot]);
  }

  private void fill(int column, double[] lower) {
    int start = columns[column];
    int end = columns[column + 1];
    double pivot = lower[start];
    for (int i = end - 1; i > start; i--) {
      double sum = 0;
      for (int k = start + 1; k < end; k++) {
        sum += lower[k] * at(rows[i], rows[k]);
      }
      inverse[i] = -sum;
    }
    double sum = 0;
    for (int k = start + 1; k < end; k++) {
      sum += lower[k] * inverse[k];
    }
    inverse[start] = 1 / pivot - sum;
  }

  private double at(int one, int other) {
    return inverse[slot(Math.max(one, other), Math.min(one, other))];
  }

  private int slot(int row, int column) {
    return Arrays.binarySearch(rows, columns[column], columns[column + 1], row);
  }
}
