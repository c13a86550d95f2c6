package org.tugtest.solve;

import java.util.Arrays;
import java.util.Optional;

/**
 * Which nodes of a grounded network are joined, the order in which they are eliminated, and where
 * the factor of its matrix has entries: made once, then used with any conductances.
 */
public final class Structure {
  private static final int NONE = -1;
  private final int[] positionOf;
  private final int[] nodeAt;

  /** Where each column of the factor begins; its first entry is that of the diagonal. */
  private final int[] columns;

  private final int[] rows;
  private final int[] first;
  private final int[] second;
  private final int[] between;

  private Structure(int nodes, int[] a, int[] b, boolean[] grounded) {
    positionOf = new int[nodes];
    MinimumDegree.Order order = order(nodes, a, b, grounded, positionOf);
    nodeAt = order.nodes;
    int size = nodeAt.length;
    int count = size;
    for (int[] left : order.left) {
      count += left.length;
    }
    columns = new int[size + 1];
    rows = new int[count];
    fill(order.left);
    int edges = a.length;
    first = new int[edges];
    second = new int[edges];
    between = new int[edges];
    for (int i = 0; i < edges; i++) {
      int one = a[i] == b[i] ? NONE : positionOf[a[i]];
      int other = a[i] == b[i] ? NONE : positionOf[b[i]];
      first[i] = one == NONE ? NONE : columns[one];
      second[i] = other == NONE ? NONE : columns[other];
      between[i] =
          one == NONE || other == NONE ? NONE : slot(Math.max(one, other), Math.min(one, other));
    }
  }

  /**
   * Writes the columns.
   *
   * @param left the positions that each is joined to
   */
  private void fill(int[][] left) {
    int slot = 0;
    for (int column = 0; column < left.length; column++) {
      columns[column] = slot;
      rows[slot++] = column;
      Arrays.sort(left[column]);
      System.arraycopy(left[column], 0, rows, slot, left[column].length);
      slot += left[column].length;
    }
    columns[left.length] = slot;
  }

  private int slot(int row, int column) {
    return Arrays.binarySearch(rows, columns[column], columns[column + 1], row);
  }

  /**
   * The structure of a network.
   *
   * @param nodes how many nodes there are
   * @param a one end of each conductance
   * @param b its other end; the same node as {@code a} is allowed and has no effect
   * @param grounded nodes that are held at 0 V; at least one in every part that hangs together
   */
  public static Structure of(int nodes, int[] a, int[] b, boolean[] grounded) {
    return new Structure(nodes, a, b, grounded);
  }

  /**
   * The factor for these conductances.
   *
   * @param siemens of each edge, in the order in which they were given
   * @return empty when the matrix is not positive definite, as far as can be computed
   */
  public Optional<Factor> factor(double[] siemens) {
    double[] values = new double[rows.length];
    for (int i = 0; i < siemens.length; i++) {
      if (first[i] != NONE) {
        values[first[i]] += siemens[i];
      }
      if (second[i] != NONE) {
        values[second[i]] += siemens[i];
      }
      if (between[i] != NONE) {
        values[between[i]] -= siemens[i];
      }
    }
    return eliminated(values)
        ? Optional.of(new Factor(positionOf, nodeAt, columns, rows, values))
        : Optional.empty();
  }

  /**
   * Makes of the lower half of a matrix its factor L·D·Lᵀ in place, column by column: D on the
   * diagonal, and of L what is under it. False when an entry of D is not above 0.
   */
  private boolean eliminated(double[] values) {
    for (int column = 0; column < nodeAt.length; column++) {
      int end = columns[column + 1];
      double pivot = values[columns[column]];
      if (!(pivot > 0)) {
        return false;
      }
      for (int at = columns[column] + 1; at < end; at++) {
        double share = values[at] / pivot;
        int target = columns[rows[at]];
        values[target] -= share * values[at];
        for (int below = at + 1; below < end; below++) {
          do {
            target++;
          } while (rows[target] != rows[below]);
          values[target] -= share * values[below];
        }
        values[at] = share;
      }
    }
    return true;
  }

  /** The order of the nodes that are not grounded, what is left of each by its position. */
  private static MinimumDegree.Order order(
      int nodes, int[] a, int[] b, boolean[] grounded, int[] positionOf) {
    int[] freeOf = new int[nodes];
    int[] nodeOf = new int[nodes];
    int free = 0;
    for (int i = 0; i < nodes; i++) {
      freeOf[i] = grounded[i] ? NONE : free;
      if (!grounded[i]) {
        nodeOf[free++] = i;
      }
    }
    int[] from = new int[a.length];
    int[] to = new int[a.length];
    int joined = 0;
    for (int i = 0; i < a.length; i++) {
      if (freeOf[a[i]] != NONE && freeOf[b[i]] != NONE && a[i] != b[i]) {
        from[joined] = freeOf[a[i]];
        to[joined++] = freeOf[b[i]];
      }
    }
    MinimumDegree.Order order =
        MinimumDegree.order(free, Arrays.copyOf(from, joined), Arrays.copyOf(to, joined));
    Arrays.fill(positionOf, NONE);
    for (int i = 0; i < free; i++) {
      positionOf[nodeOf[order.nodes[i]]] = i;
    }
    for (int[] left : order.left) {
      for (int i = 0; i < left.length; i++) {
        left[i] = positionOf[nodeOf[left[i]]];
      }
    }
    for (int i = 0; i < free; i++) {
      order.nodes[i] = nodeOf[order.nodes[i]];
    }
    return order;
  }
}
