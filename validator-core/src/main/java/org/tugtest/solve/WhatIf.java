package org.tugtest.solve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What happens to a solved network when a few branches change, all else (relays, diodes, the
 * straight pieces of loads) staying as it is: from the factor that is there, by an update of the
 * rank of the changes (Sherman, Morrison and Woodbury), and only where an island falls apart by
 * solving again.
 */
public final class WhatIf {
  private static final double FALLS_APART = 1e-9;
  private final Flow flow;

  WhatIf(Flow flow) {
    this.flow = flow;
  }

  /**
   * A change.
   *
   * @param branch a branch that is taken out; below 0 for a resistance that is put in
   * @param a one end of a resistance that is put in
   * @param b its other end
   * @param ohms of it, above 0
   */
  public record Change(int branch, int a, int b, double ohms) {
    public Change {
      if (branch < 0 && !(ohms > 0)) {
        throw new IllegalArgumentException("a resistance of " + ohms + " ohms");
      }
    }

    /** A branch is opened. */
    public static Change open(int branch) {
      return new Change(branch, 0, 0, 0);
    }

    /** A resistance is put between two nodes. */
    public static Change joined(int a, int b, double ohms) {
      return new Change(-1, a, b, ohms);
    }
  }

  /** Volts after a change. */
  public static final class Answer {
    private final Flow flow;
    private final double[] more;

    private Answer(Flow flow, double[] more) {
      this.flow = flow;
      this.more = more;
    }

    /** Volts of a node against the reference of its island; empty where nothing is live. */
    public OptionalDouble volts(int node) {
      return flow.powered(node)
          ? OptionalDouble.of(flow.volts(node) + more[flow.islands().clusterOf(node)])
          : OptionalDouble.empty();
    }

    /** The current through a branch that was not changed and has some resistance, a to b. */
    public double amps(int branch) {
      Linear linear = flow.linear();
      if (linear.metal(branch) || !linear.joins(branch)) {
        return linear.amps(branch);
      }
      int a = flow.islands().clusterOf(linear.a(branch));
      int b = flow.islands().clusterOf(linear.b(branch));
      return flow.amps(branch) + linear.siemens(branch) * (more[a] - more[b]);
    }
  }

  /**
   * The resistance between two nodes with every source replaced by its inner resistance; empty when
   * nothing joins them.
   */
  public OptionalDouble ohmsBetween(int a, int b) {
    Islands islands = flow.islands();
    return islands.islandOf(a) == islands.islandOf(b)
        ? OptionalDouble.of(flow.factor().ohmsBetween(islands.clusterOf(a), islands.clusterOf(b)))
        : OptionalDouble.empty();
  }

  /** Volts and currents after these changes; empty when they cannot be computed. */
  public Optional<Answer> after(List<Change> changes) {
    Optional<Answer> updated = updated(changes);
    return updated.isPresent() ? updated : solvedAgain(changes);
  }

  private Optional<Answer> updated(List<Change> changes) {
    Islands islands = flow.islands();
    int count = changes.size();
    int[] from = new int[count];
    int[] to = new int[count];
    double[] siemens = new double[count];
    double[] amps = new double[count];
    for (int i = 0; i < count; i++) {
      Change change = changes.get(i);
      boolean opened = change.branch() >= 0;
      if (opened && flow.linear().metal(change.branch())) {
        return Optional.empty();
      }
      int a = opened ? flow.linear().a(change.branch()) : change.a();
      int b = opened ? flow.linear().b(change.branch()) : change.b();
      if (islands.islandOf(a) != islands.islandOf(b)) {
        return Optional.empty();
      }
      from[i] = islands.clusterOf(a);
      to[i] = islands.clusterOf(b);
      siemens[i] = opened ? -flow.linear().siemens(change.branch()) : 1 / change.ohms();
      amps[i] =
          opened
              ? -flow.amps(change.branch())
              : siemens[i] * (flow.volts(change.a()) - flow.volts(change.b()));
    }
    return update(from, to, siemens, amps).map(more -> new Answer(flow, more));
  }

  /**
   * What the volts change by. Changed branch {@code k} carries {@code amps[k]} more than before at
   * the present volts, and {@code siemens[k]} more for each volt that these then change by.
   */
  private Optional<double[]> update(int[] from, int[] to, double[] siemens, double[] amps) {
    int count = from.length;
    double[][] reached = new double[count][];
    double[][] matrix = new double[count][count];
    for (int k = 0; k < count; k++) {
      double[] unit = new double[flow.islands().clusters()];
      unit[from[k]] += 1;
      unit[to[k]] -= 1;
      reached[k] = flow.factor().solve(unit);
    }
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < count; k++) {
        matrix[i][k] = siemens[i] * (reached[k][from[i]] - reached[k][to[i]]) + (i == k ? 1 : 0);
      }
    }
    double[] through = amps.clone();
    if (!Elimination.solve(matrix, through, FALLS_APART)) {
      return Optional.empty();
    }
    double[] more = new double[flow.islands().clusters()];
    for (int k = 0; k < count; k++) {
      for (int i = 0; i < more.length; i++) {
        more[i] -= through[k] * reached[k][i];
      }
    }
    return Optional.of(more);
  }

  private Optional<Answer> solvedAgain(List<Change> changes) {
    Linear linear = flow.linear().with(changes);
    return Grid.of(linear)
        .solve(linear)
        .filter(Flow::isFinite)
        .map(solved -> new Answer(solved, new double[solved.islands().clusters()]));
  }
}
