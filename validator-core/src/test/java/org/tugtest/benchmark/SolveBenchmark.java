package org.tugtest.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Factor;
import org.tugtest.solve.RandomGraph;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;
import org.tugtest.solve.Spice;
import org.tugtest.solve.Structure;

/**
 * How long a network like a loom takes to solve, against ngspice on the same netlist in the same
 * run: medians of several runs after a warm-up. Ordering, factor and one solution alone; the whole
 * of a solved circuit with its loads; resistances at all nodes; and the whole process of the
 * simulator. Arguments: the sizes in nodes.
 */
public final class SolveBenchmark {
  private static final long SEED = 20261128;
  private static final int[] SIZES = {1_000, 10_000, 100_000};
  private static final int SMALL = 20_000;
  private static final int MOST_MINUTES = 5;

  private SolveBenchmark() {}

  /** Measures and prints one line a size. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int[] sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    boolean simulator = Spice.isThere();
    System.out.println(
        "  nodes  fill a node  order+factor+solve ms  whole circuit ms  rounds  ohms at all ms"
            + "  ngspice ms  ngspice / ours");
    for (int size : sizes) {
      RandomGraph graph = RandomGraph.loom(new Random(SEED), size, size / 20);
      int runs = size > SMALL ? 5 : 15;
      double[] amps = new Random(SEED).doubles(size, -1, 1).toArray();
      double once = median(runs, () -> factor(graph).solve(amps));
      Circuit circuit = circuit(graph);
      double whole = median(runs, () -> Solver.solve(circuit));
      Factor factor = factor(graph);
      double all = median(runs, factor::drivingPoints);
      Solution solution = Solver.solve(circuit);
      double theirs = simulator ? simulator(solution, size > SMALL ? 3 : 7) : Double.NaN;
      System.out.printf(
          Locale.ROOT,
          "%7d  %11.2f  %21.2f  %16.2f  %6d  %14.2f  %10.1f  %14.1f%n",
          size,
          factor.entries() / (double) size,
          once,
          whole,
          solution.rounds(),
          all,
          theirs,
          theirs / once);
    }
    if (!simulator) {
      System.out.println("ngspice is not on the path: nothing to compare with");
    }
  }

  private static Factor factor(RandomGraph graph) {
    int[] a = new int[graph.edges()];
    int[] b = new int[graph.edges()];
    double[] siemens = new double[graph.edges()];
    for (int i = 0; i < a.length; i++) {
      a[i] = graph.a(i);
      b[i] = graph.b(i);
      siemens[i] = graph.siemens(i);
    }
    boolean[] grounded = new boolean[graph.nodes()];
    grounded[0] = true;
    return Structure.of(graph.nodes(), a, b, grounded).factor(siemens).orElseThrow();
  }

  /** The graph as wires of 1 milliohm upwards, a battery, and a load at every tenth node. */
  private static Circuit circuit(RandomGraph graph) {
    List<Branch> branches = new ArrayList<>();
    branches.add(new Branch.Source(1, 0, 12.6, 0.001, 0.02, Double.POSITIVE_INFINITY, false));
    for (int i = 1; i < graph.edges(); i++) {
      branches.add(new Branch.Resistor(graph.a(i), graph.b(i), 1e-8 / graph.siemens(i)));
    }
    for (int node = 10; node < graph.nodes(); node += 10) {
      branches.add(
          node % 20 == 0
              ? new Branch.Load(node, 0, 0.02, true, 6)
              : new Branch.Resistor(node, 0, 7_000));
    }
    return new Circuit(graph.nodes(), branches);
  }

  private static double simulator(Solution solution, int runs)
      throws IOException, InterruptedException {
    Spice spice = new Spice();
    spice.add(solution);
    Path file = Files.createTempFile("loom", ".cir");
    Path out = Files.createTempFile("loom", ".txt");
    try {
      Files.writeString(file, spice.netlist());
      double[] millis = new double[runs];
      for (int i = 0; i < runs; i++) {
        long start = System.nanoTime();
        Process process =
            new ProcessBuilder("ngspice", "-b", file.toString())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES)) {
          process.destroyForcibly();
          return Double.NaN;
        }
        millis[i] = (System.nanoTime() - start) / 1e6;
      }
      Arrays.sort(millis);
      return millis[runs / 2];
    } finally {
      Files.delete(file);
      Files.delete(out);
    }
  }

  private static double median(int runs, Supplier<Object> work) {
    int warmUps = runs > 5 ? 10 * runs : runs;
    double[] millis = new double[runs];
    for (int i = -warmUps; i < runs; i++) {
      long start = System.nanoTime();
      Object result = work.get();
      if (result == null) {
        throw new IllegalStateException("nothing was measured");
      }
      if (i >= 0) {
        millis[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(millis);
    return millis[runs / 2];
  }
}
