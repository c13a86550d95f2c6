package org.tugtest.solve;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Joined;

/**
 * The circuit simulator ngspice, as an independent second answer; for tests. Many networks go into
 * one process as one netlist, side by side on the same ground.
 */
public final class Spice {
  private static final int MOST_SECONDS = 600;
  private final List<Solution> solutions = new ArrayList<>();
  private final StringBuilder netlist = new StringBuilder("* linear networks side by side\n");
  private int elements;
  private int compared;

  /** Whether the simulator is on the path. */
  public static boolean isThere() {
    try {
      Process process =
          new ProcessBuilder("ngspice", "--version").redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor(MOST_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException absent) {
      return false;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Adds the last linear network of a solution. */
  public void add(Solution solution) {
    int number = solutions.size();
    solutions.add(solution);
    Linear linear = solution.linear().orElseThrow();
    Joined metal = metal(linear);
    boolean[] reference = new boolean[linear.nodes()];
    for (int node = 0; node < linear.nodes(); node++) {
      reference[metal.find(node)] |= solution.isReference(node);
    }
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.metal(i) || solution.volts(linear.a(i)).isEmpty()) {
        continue;
      }
      String a = name(number, metal.find(linear.a(i)), reference);
      String b = name(number, metal.find(linear.b(i)), reference);
      if (!a.equals(b)) {
        branch(linear, i, a, b);
      }
    }
  }

  private void branch(Linear linear, int i, String a, String b) {
    double siemens = linear.siemens(i);
    String id = Integer.toString(elements++);
    if (siemens > 0 && linear.emf(i) == 0) {
      line("R" + id, a, b, 1 / siemens);
    } else if (siemens > 0) {
      line("V" + id, a, "m" + id, linear.emf(i));
      line("R" + id, "m" + id, b, 1 / siemens);
    } else if (siemens < 0) {
      netlist.append(
          String.format(Locale.ROOT, "G%s %s %s %s %s %.17g%n", id, a, b, a, b, siemens));
    }
    if (linear.amps(i) != 0) {
      line("I" + id, a, b, linear.amps(i));
    }
  }

  private void line(String name, String a, String b, double value) {
    netlist.append(String.format(Locale.ROOT, "%s %s %s %.17g%n", name, a, b, value));
  }

  private static String name(int number, int node, boolean[] reference) {
    return reference[node] ? "0" : "n" + number + "_" + node;
  }

  private static Joined metal(Linear linear) {
    Joined metal = new Joined(linear.nodes());
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.metal(i)) {
        metal.join(linear.a(i), linear.b(i));
      }
    }
    return metal;
  }

  /** The netlist as the simulator reads it. */
  public String netlist() {
    return netlist
        + """
        .options gmin=1e-18 reltol=1e-9
        .control
        set numdgt=16
        set width=200
        op
        print all
        quit
        .endc
        .end
        """;
  }

  /** For each network the greatest difference of a node's volts, as a share of its greatest EMF. */
  public double[] differences() throws IOException, InterruptedException {
    Map<String, Double> volts = run();
    double[] worst = new double[solutions.size()];
    for (int number = 0; number < worst.length; number++) {
      Solution solution = solutions.get(number);
      Linear linear = solution.linear().orElseThrow();
      Joined metal = metal(linear);
      double greatest = 0;
      for (int i = 0; i < linear.branches(); i++) {
        greatest = Math.max(greatest, Math.abs(linear.emf(i)));
      }
      for (int node = 0; node < linear.nodes(); node++) {
        Double theirs = volts.get("n" + number + "_" + metal.find(node));
        if (solution.volts(node).isEmpty() || solution.isReference(node)) {
          continue;
        }
        if (theirs == null) {
          throw new IOException("no volts of node " + node + " of network " + number);
        }
        double ours = solution.volts(node).getAsDouble();
        worst[number] = Math.max(worst[number], Math.abs(ours - theirs) / greatest);
        compared++;
      }
    }
    return worst;
  }

  /** How many volts were compared. */
  public int compared() {
    return compared;
  }

  /** Volts by node name. */
  private Map<String, Double> run() throws IOException, InterruptedException {
    Path file = Files.createTempFile("networks", ".cir");
    Path out = Files.createTempFile("networks", ".txt");
    try {
      Files.writeString(file, netlist());
      Process process =
          new ProcessBuilder("ngspice", "-b", file.toString())
              .redirectErrorStream(true)
              .redirectOutput(out.toFile())
              .start();
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IOException("ngspice did not end");
      }
      Map<String, Double> volts = new HashMap<>();
      for (String text : Files.readString(out, StandardCharsets.UTF_8).split("\n", -1)) {
        int equal = text.indexOf(" = ");
        Double value = equal < 0 ? null : number(text.substring(equal + 3).strip());
        if (value != null) {
          volts.put(text.substring(0, equal).strip(), value);
        }
      }
      if (volts.isEmpty()) {
        throw new IOException("ngspice printed no volts: " + Files.readString(out));
      }
      return volts;
    } finally {
      Files.delete(file);
      Files.delete(out);
    }
  }

  private static @Nullable Double number(String text) {
    try {
      return Double.valueOf(text);
    } catch (NumberFormatException words) {
      return null;
    }
  }
}
