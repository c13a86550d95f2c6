package org.tugtest.solve;

import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/**
 * The Cholesky factor of the conductance matrix of a grounded network: volts for any currents, and
 * the resistance seen at any node, without factoring again. Immutable; may be used by several
 * threads.
 */
public final class Factor {
  private static final int NONE = -1;
  private final int[] positionOf;
  private final int[] nodeAt;
  private final DMatrixSparseCSC lower;

  Factor(int[] positionOf, int[] nodeAt, DMatrixSparseCSC lower) {
    this.positionOf = positionOf;
    this.nodeAt = nodeAt;
    this.lower = lower;
  }

  /** How many nodes the network has, grounded ones included. */
  public int nodes() {
    return positionOf.length;
  }

  /** How many entries the factor has; a measure of the fill. */
  public int entries() {
    return nodeAt.length == 0 ? 0 : lower.nz_length;
  }

  /**
   * Volts of every node against its ground.
   *
   * @param amps current that is put into each node from outside; at grounded nodes of no effect
   */
  public double[] solve(double[] amps) {
    double[] x = new double[nodeAt.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = amps[nodeAt[i]];
    }
    if (x.length > 0) {
      TriangularSolver_DSCC.solveL(lower, x);
      TriangularSolver_DSCC.solveTranL(lower, x);
    }
    double[] volts = new double[positionOf.length];
    for (int i = 0; i < x.length; i++) {
      volts[nodeAt[i]] = x[i];
    }
    return volts;
  }

  /** The resistance between a node and its ground, in ohms; 0 at a grounded node. */
  public double drivingPointOhms(int node) {
    return ohmsBetween(node, node, true);
  }

  /** The resistance between two nodes of the same island, in ohms. */
  public double ohmsBetween(int a, int b) {
    return a == b ? 0 : ohmsBetween(a, b, false);
  }

  private double ohmsBetween(int a, int b, boolean toGround) {
    double[] amps = new double[positionOf.length];
    amps[a] += 1;
    if (!toGround) {
      amps[b] -= 1;
    }
    double[] volts = solve(amps);
    return toGround ? volts[a] : volts[a] - volts[b];
  }

  /** The resistances at all nodes and across all edges at once; near linear on a near-tree. */
  public DrivingPoints drivingPoints() {
    return new DrivingPoints(positionOf, nodeAt.length, lower);
  }

  static boolean isGround(int position) {
    return position == NONE;
  }
}
