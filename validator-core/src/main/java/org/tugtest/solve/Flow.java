package org.tugtest.solve;

import java.util.Arrays;
import java.util.Optional;

/** Volts and currents of a linear network. */
final class Flow {
  private static final int REFINEMENTS = 2;
  private final Linear linear;
  private final Islands islands;
  private final Factor factor;
  private final double[] high;
  private final double[] low;
  private final double[] amps;

  /** Currents through metal are not filled in yet. */
  Flow(Linear linear, Islands islands, Factor factor, double[] high, double[] low, double[] amps) {
    this.linear = linear;
    this.islands = islands;
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

  Factor factor() {
    return factor;
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
    return amps[branch];
  }

  double[] allAmps() {
    return amps.clone();
  }

  boolean isFinite() {
    return Arrays.stream(high).allMatch(Double::isFinite)
        && Arrays.stream(low).allMatch(Double::isFinite);
  }

  /**
   * The same with the currents through metal, which are those of equal resistances as these become
   * small: a second network of the metal alone, into which the other currents flow.
   */
  Flow withMetal() {
    int[] metal = new int[linear.branches()];
    int count = 0;
    double[] into = new double[linear.nodes()];
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.metal(i)) {
        metal[count++] = i;
      } else {
        into[linear.a(i)] -= amps[i];
        into[linear.b(i)] += amps[i];
      }
    }
    if (count == 0) {
      return this;
    }
    int[] from = new int[count];
    int[] to = new int[count];
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    for (int i = 0; i < count; i++) {
      from[i] = linear.a(metal[i]);
      to[i] = linear.b(metal[i]);
    }
    boolean[] grounded = new boolean[linear.nodes()];
    boolean[] seen = new boolean[islands.clusters()];
    for (int node = 0; node < linear.nodes(); node++) {
      grounded[node] = !seen[islands.clusterOf(node)];
      seen[islands.clusterOf(node)] = true;
    }
    Optional<Factor> bars = Structure.of(linear.nodes(), from, to, grounded).factor(ones);
    if (bars.isEmpty()) {
      return this;
    }
    double[] high = bars.get().solve(into);
    double[] through = new double[count];
    double[] low = new double[high.length];
    for (int round = 0; ; round++) {
      double[] missing = into.clone();
      for (int i = 0; i < count; i++) {
        through[i] = high[from[i]] - high[to[i]] + (low[from[i]] - low[to[i]]);
        missing[from[i]] -= through[i];
        missing[to[i]] += through[i];
      }
      if (round == REFINEMENTS) {
        break;
      }
      double[] more = bars.get().solve(missing);
      for (int i = 0; i < low.length; i++) {
        low[i] += more[i];
      }
    }
    double[] all = amps.clone();
    for (int i = 0; i < count; i++) {
      all[metal[i]] = through[i];
    }
    return new Flow(linear, islands, factor, this.high, this.low, all);
  }
}
