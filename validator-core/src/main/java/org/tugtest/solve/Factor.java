package org.tugtest.solve;

/**
 * The factor L·D·Lᵀ of the conductance matrix of a grounded network: volts for any currents, and
 * the resistance seen at any node, without factoring again. Immutable; may be used by several
 * threads.
 */
public final class Factor {
  private static final int NONE = -1;
  private final int[] positionOf;
  private final int[] nodeAt;
  private final int[] columns;
  private final int[] rows;
  private final double[] values;

  /**
   * A factor.
   *
   * @param positionOf the column of each node; negative for one that is grounded
   * @param nodeAt the node of each column
   * @param columns where each begins
   * @param rows of its entries, ascending, that of the diagonal first
   * @param values of D on the diagonal and of L below
   */
  Factor(int[] positionOf, int[] nodeAt, int[] columns, int[] rows, double[] values) {
    this.positionOf = positionOf;
    this.nodeAt = nodeAt;
    this.columns = columns;
    this.rows = rows;
    this.values = values;
  }

  /** How many nodes the network has, grounded ones included. */
  public int nodes() {
    return positionOf.length;
  }

  /** How many entries the factor has; a measure of the fill. */
  public int entries() {
    return values.length;
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
    for (int column = 0; column < x.length; column++) {
      double there = x[column];
      if (there != 0) {
        for (int i = columns[column] + 1; i < columns[column + 1]; i++) {
          x[rows[i]] -= values[i] * there;
        }
      }
    }
    for (int column = x.length - 1; column >= 0; column--) {
      double there = x[column] / values[columns[column]];
      for (int i = columns[column] + 1; i < columns[column + 1]; i++) {
        there -= values[i] * x[rows[i]];
      }
      x[column] = there;
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
    return new DrivingPoints(positionOf, columns, rows, values);
  }

  static boolean isGround(int position) {
    return position == NONE;
  }
}
