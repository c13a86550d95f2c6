package org.tugtest.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The metal of a network. The currents through it are those of equal resistances as these become
 * small: a second network of the metal alone, into which the other currents flow.
 */
final class Bars {
  private static final int REFINEMENTS = 2;
  private final int[] a;
  private final int[] b;
  private final int[] metal;
  private final int[] from;
  private final int[] to;
  private final int nodes;
  private final @Nullable Factor factor;

  /** The metal of a network of these islands. */
  Bars(Linear linear, Islands islands) {
    nodes = linear.nodes();
    int branches = linear.branches();
    a = new int[branches];
    b = new int[branches];
    int[] found = new int[branches];
    int count = 0;
    for (int i = 0; i < branches; i++) {
      a[i] = linear.a(i);
      b[i] = linear.b(i);
      if (linear.metal(i)) {
        found[count++] = i;
      }
    }
    metal = Arrays.copyOf(found, count);
    from = new int[count];
    to = new int[count];
    for (int i = 0; i < count; i++) {
      from[i] = a[metal[i]];
      to[i] = b[metal[i]];
    }
    factor = count == 0 ? null : factor(islands);
  }

  private @Nullable Factor factor(Islands islands) {
    boolean[] grounded = new boolean[nodes];
    boolean[] seen = new boolean[islands.clusters()];
    for (int node = 0; node < nodes; node++) {
      grounded[node] = !seen[islands.clusterOf(node)];
      seen[islands.clusterOf(node)] = true;
    }
    double[] ones = new double[metal.length];
    Arrays.fill(ones, 1);
    return Structure.of(nodes, from, to, grounded).factor(ones).orElse(null);
  }

  /**
   * Fills the currents through metal in.
   *
   * @param amps of all branches
   * @return whether there is any, and it can be computed
   */
  boolean fill(double[] amps) {
    Factor bars = factor;
    if (bars == null) {
      return false;
    }
    for (int i : metal) {
      amps[i] = 0;
    }
    double[] into = new double[nodes];
    for (int i = 0; i < amps.length; i++) {
      into[a[i]] -= amps[i];
      into[b[i]] += amps[i];
    }
    double[] high = bars.solve(into);
    double[] through = new double[metal.length];
    double[] low = new double[high.length];
    for (int round = 0; ; round++) {
      double[] missing = into.clone();
      for (int i = 0; i < through.length; i++) {
        through[i] = high[from[i]] - high[to[i]] + (low[from[i]] - low[to[i]]);
        missing[from[i]] -= through[i];
        missing[to[i]] += through[i];
      }
      if (round == REFINEMENTS) {
        break;
      }
      double[] more = bars.solve(missing);
      for (int i = 0; i < low.length; i++) {
        low[i] += more[i];
      }
    }
    for (int i = 0; i < through.length; i++) {
      amps[metal[i]] = through[i];
    }
    return true;
  }
}
