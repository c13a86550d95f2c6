package org.tugtest.solve;

import java.util.Arrays;
import java.util.Random;
import java.util.function.IntUnaryOperator;

/** A seeded graph with conductances, node 0 grounded; for tests. */
public final class RandomGraph {
  private final int nodes;
  private final int[] a;
  private final int[] b;
  private final double[] siemens;

  private RandomGraph(Random random, int nodes, int more, IntUnaryOperator parent) {
    this.nodes = nodes;
    int edges = nodes - 1 + more;
    a = new int[edges];
    b = new int[edges];
    siemens = new double[edges];
    for (int i = 0; i < edges; i++) {
      a[i] = i < nodes - 1 ? i + 1 : random.nextInt(nodes);
      b[i] = a[i] == 0 ? 0 : parent.applyAsInt(a[i]);
      siemens[i] = Math.pow(10, 6 * random.nextDouble() - 3);
    }
  }

  /** A tree with so many edges more, each between any two nodes. */
  static RandomGraph nearTree(Random random, int nodes, int more) {
    return new RandomGraph(random, nodes, more, random::nextInt);
  }

  /** A tree of branches and twigs with so many edges more, each between near neighbours. */
  public static RandomGraph loom(Random random, int nodes, int more) {
    return new RandomGraph(
        random, nodes, more, node -> node - 1 - random.nextInt(Math.min(20, node)));
  }

  public int nodes() {
    return nodes;
  }

  public int edges() {
    return a.length;
  }

  public int a(int edge) {
    return a[edge];
  }

  public int b(int edge) {
    return b[edge];
  }

  public double siemens(int edge) {
    return siemens[edge];
  }

  Factor factor() {
    boolean[] grounded = new boolean[nodes];
    grounded[0] = true;
    return Structure.of(nodes, a, b, grounded).factor(siemens).orElseThrow();
  }

  /** The conductance matrix without the row and column of the ground. */
  double[][] matrix() {
    double[][] matrix = new double[nodes - 1][nodes - 1];
    for (int i = 0; i < a.length; i++) {
      add(matrix, a[i], a[i], siemens[i]);
      add(matrix, b[i], b[i], siemens[i]);
      add(matrix, a[i], b[i], -siemens[i]);
      add(matrix, b[i], a[i], -siemens[i]);
    }
    return matrix;
  }

  private static void add(double[][] matrix, int row, int column, double value) {
    if (row > 0 && column > 0) {
      matrix[row - 1][column - 1] += value;
    }
  }

  /** The resistance between two nodes, by the second algorithm. */
  double denseOhms(int one, int other) {
    double[] amps = new double[nodes];
    amps[one] += 1;
    amps[other] -= 1;
    double[] volts = Dense.solve(matrix(), Arrays.copyOfRange(amps, 1, nodes));
    if (volts == null) {
      throw new AssertionError("singular");
    }
    return (one == 0 ? 0 : volts[one - 1]) - (other == 0 ? 0 : volts[other - 1]);
  }
}
