package org.tugtest.solve;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tugtest.network.Joined;

/**
 * A linear network of which some branches follow another line, {@code siemens · volts + amps}: its
 * volts come from the one factor of the network as it was, by an update of the rank of the changes
 * (Sherman, Morrison and Woodbury). A leak of {@value #LEAK} siemens at every node holds what would
 * otherwise hang in the air, so that whatever is opened there is an answer. Not for several
 * threads.
 */
final class Updated {
  /** Conductance from every node to ground. */
  static final double LEAK = 1e-8;

  private static final double SINGULAR = 1e-15;
  private static final int MOST_KEPT = 4_000_000;
  private final int nodes;
  private final int[] a;
  private final int[] b;
  private final double[] siemens;
  private final double[] amps;
  private final Factor factor;
  private final double[] sound;
  private final Map<Integer, double[]> columns;
  private final TreeMap<Integer, double[]> changed = new TreeMap<>();
  private double[] volts;
  private int[] numbers = new int[0];
  private double[][] reached = new double[0][];
  private double[] through = new double[0];

  private Updated(Linear linear, int[] clusterOf, int nodes, Factor factor) {
    int count = linear.branches();
    this.nodes = nodes;
    this.factor = factor;
    a = new int[count];
    b = new int[count];
    siemens = new double[count];
    amps = new double[count];
    double[] into = new double[nodes];
    for (int i = 0; i < count; i++) {
      a[i] = clusterOf[linear.a(i)];
      b[i] = clusterOf[linear.b(i)];
      siemens[i] = linear.metal(i) ? 0 : linear.siemens(i);
      amps[i] = linear.amps(i) - siemens[i] * linear.emf(i);
      into[a[i]] -= amps[i];
      into[b[i]] += amps[i];
    }
    sound = factor.solve(into);
    volts = sound;
    int most = Math.max(64, MOST_KEPT / Math.max(1, nodes));
    columns =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<Integer, double[]> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The network as it is, before any change.
   *
   * @param grounded nodes that are held at 0 V
   * @return empty when it cannot be factored
   */
  static Optional<Updated> of(Linear linear, boolean[] grounded) {
    Joined metal = new Joined(linear.nodes());
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.metal(i)) {
        metal.join(linear.a(i), linear.b(i));
      }
    }
    int[] clusterOf = metal.numbered();
    int clusters = Arrays.stream(clusterOf).max().orElse(-1) + 1;
    int count = linear.branches() + clusters;
    int[] from = new int[count];
    int[] to = new int[count];
    double[] conductances = new double[count];
    for (int i = 0; i < linear.branches(); i++) {
      from[i] = clusterOf[linear.a(i)];
      to[i] = clusterOf[linear.b(i)];
      boolean none = linear.metal(i) || !linear.joins(i);
      conductances[i] = none ? 0 : linear.siemens(i);
      to[i] = none ? from[i] : to[i];
    }
    for (int i = 0; i < clusters; i++) {
      from[linear.branches() + i] = i;
      to[linear.branches() + i] = clusters;
      conductances[linear.branches() + i] = LEAK;
    }
    boolean[] grounds = new boolean[clusters + 1];
    grounds[clusters] = true;
    for (int node = 0; node < grounded.length; node++) {
      grounds[clusterOf[node]] |= grounded[node];
    }
    return Structure.of(clusters + 1, from, to, grounds)
        .factor(conductances)
        .map(factor -> new Updated(linear, clusterOf, clusters + 1, factor));
  }

  /** Takes all changes back. */
  void reset() {
    changed.clear();
    volts = sound;
  }

  /** Lets a branch follow another line. */
  void set(int branch, double conductance, double current) {
    double more = conductance - siemens[branch];
    double rest = current - amps[branch];
    if (a[branch] == b[branch] || (more == 0 && rest == 0)) {
      changed.remove(branch);
    } else {
      changed.put(branch, new double[] {more, rest});
    }
  }

  /**
   * Draws some current besides what the lines say; what was drawn before is forgotten.
   *
   * @param branches from their first ends to their other ends
   */
  void draw(int[] branches, double[] currents) {
    double[] into = new double[nodes];
    for (int i = 0; i < branches.length; i++) {
      into[a[branches[i]]] -= currents[i];
      into[b[branches[i]]] += currents[i];
    }
    double[] more = factor.solve(into);
    volts = sound.clone();
    for (int i = 0; i < nodes; i++) {
      volts[i] += more[i];
    }
  }

  /** Solves the network with its changes; false when it cannot be. */
  boolean solve() {
    int count = changed.size();
    numbers = new int[count];
    reached = new double[count][];
    through = new double[count];
    double[][] matrix = new double[count][count];
    int at = 0;
    for (int branch : changed.keySet()) {
      numbers[at] = branch;
      reached[at++] = columns.computeIfAbsent(branch, this::column);
    }
    for (int i = 0; i < count; i++) {
      double[] line = changed.get(numbers[i]);
      int from = a[numbers[i]];
      int to = b[numbers[i]];
      for (int k = 0; k < count; k++) {
        matrix[i][k] = line[0] * (reached[k][from] - reached[k][to]) + (i == k ? 1 : 0);
      }
      through[i] = line[0] * (volts[from] - volts[to]) + line[1];
    }
    return Elimination.solve(matrix, through, SINGULAR)
        && Arrays.stream(through).allMatch(Double::isFinite);
  }

  /** Volts from the first to the other end of a branch, as last solved. */
  double across(int branch) {
    int from = a[branch];
    int to = b[branch];
    double across = volts[from] - volts[to];
    for (int k = 0; k < numbers.length; k++) {
      across -= through[k] * (reached[k][from] - reached[k][to]);
    }
    return across;
  }

  private double[] column(int branch) {
    double[] unit = new double[nodes];
    unit[a[branch]] += 1;
    unit[b[branch]] -= 1;
    return factor.solve(unit);
  }
}
