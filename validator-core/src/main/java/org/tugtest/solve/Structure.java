package org.tugtest.solve;

import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.jspecify.annotations.Nullable;

/**
 * Which nodes of a grounded network are joined, and the order in which they are eliminated: made
 * once, then used with any conductances.
 */
public final class Structure {
  private static final int NONE = -1;
  private final int[] positionOf;
  private final int[] nodeAt;
  private final int[] columns;
  private final int[] rows;
  private final int[] diagonalOf;
  private final int[] first;
  private final int[] second;
  private final int[] between;
  private @Nullable CholeskyUpLooking_DSCC analysed;

  private Structure(int nodes, int[] a, int[] b, boolean[] grounded) {
    positionOf = new int[nodes];
    nodeAt = eliminationOrder(nodes, a, b, grounded, positionOf);
    int edges = a.length;
    first = new int[edges];
    second = new int[edges];
    between = new int[edges];
    long[] cells = new long[edges];
    int count = 0;
    for (int i = 0; i < edges; i++) {
      first[i] = positionOf[a[i]];
      second[i] = positionOf[b[i]];
      if (first[i] != NONE && second[i] != NONE && first[i] != second[i]) {
        cells[count++] = cell(first[i], second[i]);
      }
    }
    cells = Arrays.stream(cells, 0, count).sorted().distinct().toArray();
    int size = nodeAt.length;
    columns = new int[size + 1];
    rows = new int[cells.length + size];
    diagonalOf = new int[size];
    int at = 0;
    int slot = 0;
    int[] slotOf = new int[cells.length];
    for (int column = 0; column < size; column++) {
      while (at < cells.length && (int) (cells[at] >>> Integer.SIZE) == column) {
        rows[slot] = (int) cells[at];
        slotOf[at++] = slot++;
      }
      diagonalOf[column] = slot;
      rows[slot++] = column;
      columns[column + 1] = slot;
    }
    for (int i = 0; i < edges; i++) {
      between[i] =
          first[i] == NONE || second[i] == NONE || first[i] == second[i]
              ? NONE
              : slotOf[Arrays.binarySearch(cells, cell(first[i], second[i]))];
    }
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
    int size = nodeAt.length;
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(size, size, rows.length);
    System.arraycopy(columns, 0, matrix.col_idx, 0, columns.length);
    System.arraycopy(rows, 0, matrix.nz_rows, 0, rows.length);
    matrix.nz_length = rows.length;
    matrix.indicesSorted = true;
    for (int i = 0; i < siemens.length; i++) {
      if (first[i] == second[i]) {
        continue;
      }
      if (first[i] != NONE) {
        matrix.nz_values[diagonalOf[first[i]]] += siemens[i];
      }
      if (second[i] != NONE) {
        matrix.nz_values[diagonalOf[second[i]]] += siemens[i];
      }
      if (between[i] != NONE) {
        matrix.nz_values[between[i]] -= siemens[i];
      }
    }
    if (size == 0) {
      return Optional.of(new Factor(positionOf, nodeAt, matrix));
    }
    return lower(matrix).map(lower -> new Factor(positionOf, nodeAt, lower));
  }

  /** The factor of a matrix; where its entries lie is found once for all matrices. */
  private synchronized Optional<DMatrixSparseCSC> lower(DMatrixSparseCSC matrix) {
    CholeskyUpLooking_DSCC cholesky = analysed;
    if (cholesky == null) {
      cholesky = new CholeskyUpLooking_DSCC();
    }
    analysed = null;
    if (!cholesky.decompose(matrix)) {
      return Optional.empty();
    }
    cholesky.setStructureLocked(true);
    analysed = cholesky;
    DMatrixSparseCSC found = cholesky.getL();
    DMatrixSparseCSC lower = new DMatrixSparseCSC(found.numRows, found.numCols, 0);
    lower.nz_values = Arrays.copyOf(found.nz_values, found.nz_length);
    lower.nz_rows = found.nz_rows;
    lower.col_idx = found.col_idx;
    lower.nz_length = found.nz_length;
    lower.indicesSorted = found.indicesSorted;
    return Optional.of(lower);
  }

  private static long cell(int one, int other) {
    return ((long) Math.max(one, other) << Integer.SIZE) | Math.min(one, other);
  }

  private static int[] eliminationOrder(
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
    int[] order = MinimumDegree.order(free, Arrays.copyOf(from, joined), Arrays.copyOf(to, joined));
    Arrays.fill(positionOf, NONE);
    for (int i = 0; i < free; i++) {
      order[i] = nodeOf[order[i]];
      positionOf[order[i]] = i;
    }
    return order;
  }
}
