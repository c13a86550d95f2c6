package org.tugtest.solve;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Volts and currents of a linear network. */
final class Flow {
  private final Linear linear;
  private final Grid grid;
  private final Islands islands;
  private final double[] high;
  private final double[] low;
  private final double @Nullable [] amps;
  private volatile @Nullable Factor factor;

  /**
   * Volts and currents.
   *
   * @param factor null: it is made when it is asked for
   * @param high volts of each cluster, but for the small part that is in {@code low}
   * @param amps of each branch; null: not reckoned
   */
  Flow(
      Linear linear,
      Grid grid,
      @Nullable Factor factor,
      double[] high,
      double[] low,
      double @Nullable [] amps) {
    this.linear = linear;
    this.grid = grid;
    this.islands = grid.islands();
    this.factor = factor;
    this.high = high;
    this.low = low;
    this.amps = amps;
  }

  Linear linear() {
    return linear;
  }

  Islands islands() {
    return islands;
  }

  /** The factor of the network; not where {@link #canBeFactored} says no. */
  Factor factor() {
    return made().orElseThrow();
  }

  /** Whether it has a factor, as far as can be computed. */
  boolean canBeFactored() {
    return made().isPresent();
  }

  private Optional<Factor> made() {
    Factor known = factor;
    if (known != null) {
      return Optional.of(known);
    }
    Optional<Factor> found = grid.factor(linear);
    factor = found.orElse(null);
    return found;
  }

  double[] high() {
    return high;
  }

  double[] low() {
    return low;
  }

  boolean hasAmps() {
    return amps != null;
  }

  private double[] reckoned() {
    return Objects.requireNonNull(amps, "currents");
  }

  /** Volts of a node against the ground of its island. */
  double volts(int node) {
    int cluster = islands.clusterOf(node);
    return high[cluster] + low[cluster];
  }

  /** Volts from {@code a} to {@code b} of a branch, both ends in one island. */
  double across(int branch) {
    int a = islands.clusterOf(linear.a(branch));
    int b = islands.clusterOf(linear.b(branch));
    return high[a] - high[b] + (low[a] - low[b]);
  }

  /** Whether both ends of a branch are in one island. */
  boolean inOneIsland(int branch) {
    return islands.islandOf(linear.a(branch)) == islands.islandOf(linear.b(branch));
  }

  boolean powered(int node) {
    return islands.powered(islands.islandOf(node));
  }

  /** The current through a branch, {@code a} to {@code b}. */
  double amps(int branch) {
    return reckoned()[branch];
  }

  double[] allAmps() {
    return reckoned().clone();
  }

  boolean isFinite() {
    for (int i = 0; i < high.length; i++) {
      if (!Double.isFinite(high[i]) || !Double.isFinite(low[i])) {
        return false;
      }
    }
    return true;
  }

  /** The same with the currents through metal. */
  Flow withMetal() {
    double[] all = reckoned().clone();
    return grid.bars(linear).fill(all) ? new Flow(linear, grid, factor, high, low, all) : this;
  }
}
