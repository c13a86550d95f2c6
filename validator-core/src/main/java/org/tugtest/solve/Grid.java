package org.tugtest.solve;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The structure of a linear network: made once for a set of open and closed branches, then solved
 * with any conductances.
 */
final class Grid {
  private static final int REFINEMENTS = 2;
  private final Islands islands;
  private final int[] conducting;
  private final int[] from;
  private final int[] to;
  private @Nullable Structure structure;
  private @Nullable Bars bars;

  private Grid(Linear linear) {
    islands = Islands.of(linear);
    int[] kept = new int[linear.branches()];
    int count = 0;
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.joins(i) && !linear.metal(i)) {
        kept[count++] = i;
      }
    }
    conducting = Arrays.copyOf(kept, count);
    from = new int[count];
    to = new int[count];
    for (int i = 0; i < count; i++) {
      from[i] = islands.clusterOf(linear.a(conducting[i]));
      to[i] = islands.clusterOf(linear.b(conducting[i]));
    }
  }

  /** The structure of these branches as they are open, closed or conducting. */
  static Grid of(Linear linear) {
    return new Grid(linear);
  }

  Islands islands() {
    return islands;
  }

  private synchronized Structure structure() {
    Structure made = structure;
    if (made == null) {
      made = Structure.of(islands.clusters(), from, to, islands.grounds());
      structure = made;
    }
    return made;
  }

  /**
   * The metal of a network of this structure.
   *
   * @param linear one
   */
  synchronized Bars bars(Linear linear) {
    Bars made = bars;
    if (made == null) {
      made = new Bars(linear, islands);
      bars = made;
    }
    return made;
  }

  /** The factor of a network of this structure; empty when it is not positive definite. */
  Optional<Factor> factor(Linear linear) {
    double[] siemens = new double[conducting.length];
    for (int i = 0; i < siemens.length; i++) {
      siemens[i] = linear.siemens(conducting[i]);
    }
    return structure().factor(siemens);
  }

  /**
   * Solves the network with other figures on the same branches.
   *
   * @return empty when the matrix is not positive definite
   */
  Optional<Flow> solve(Linear linear) {
    return rough(linear).map(this::refined);
  }

  /** Volts as the factor gives them at once, without any currents. */
  Optional<Flow> rough(Linear linear) {
    return factor(linear)
        .map(
            factor -> {
              double[] amps = linear.allAmps();
              for (int i : conducting) {
                amps[i] -= linear.siemens(i) * linear.emf(i);
              }
              double[] volts = factor.solve(missing(linear, amps));
              return new Flow(linear, this, factor, volts, new double[volts.length], null);
            });
  }

  /** Volts to all their digits, with currents. */
  Flow refined(Flow rough) {
    if (rough.hasAmps()) {
      return rough;
    }
    Linear linear = rough.linear();
    Factor factor = rough.factor();
    double[] amps = linear.allAmps();
    double[] high = rough.high();
    double[] low = new double[high.length];
    for (int round = 0; round < REFINEMENTS; round++) {
      currents(linear, high, low, amps);
      double[] more = factor.solve(missing(linear, amps));
      for (int i = 0; i < low.length; i++) {
        low[i] += more[i];
      }
    }
    currents(linear, high, low, amps);
    return new Flow(linear, this, factor, high, low, amps);
  }

  /** What has to be put into each cluster so that its currents sum to zero. */
  private double[] missing(Linear linear, double[] amps) {
    double[] sums = new double[islands.clusters()];
    for (int i = 0; i < linear.branches(); i++) {
      if (amps[i] != 0) {
        sums[islands.clusterOf(linear.a(i))] -= amps[i];
        sums[islands.clusterOf(linear.b(i))] += amps[i];
      }
    }
    return sums;
  }

  /**
   * The currents at these volts. The volts are sums of a great and a small part, and their
   * difference is taken part by part: a milliohm with a milliampere keeps all its digits.
   */
  private void currents(Linear linear, double[] high, double[] low, double[] amps) {
    for (int i = 0; i < conducting.length; i++) {
      int branch = conducting[i];
      double across = high[from[i]] - high[to[i]] - linear.emf(branch);
      double rest = low[from[i]] - low[to[i]];
      amps[branch] = linear.siemens(branch) * (across + rest) + linear.amps(branch);
    }
  }
}
