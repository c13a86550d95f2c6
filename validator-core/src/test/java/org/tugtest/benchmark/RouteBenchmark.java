package org.tugtest.benchmark;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;

/**
 * How long routing takes per wire, for a car of many blocks in a row and for wires between random
 * nodes of a mesh, which is the worst a layout can be. Arguments: the sizes in wires.
 */
public final class RouteBenchmark {
  private static final int[] SIZES = {1_000, 10_000, 50_000};
  private static final int RUNS = 5;

  private RouteBenchmark() {}

  /** Measures and prints two lines a size. */
  public static void main(String[] args) {
    int[] sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    System.out.println("  layout   wires  routes ms  us per wire  bundles ms");
    for (int size : sizes) {
      measure("blocks", GeneratedHarness.of(size, 7));
      measure("mesh", mesh(size));
    }
  }

  private static void measure(String name, String text) {
    ReadHarness read =
        new HarnessReader(MemoryFiles.of("car.harness.json", text), ReadLimits.STANDARD)
            .read("car.harness.json");
    double[] routes = new double[RUNS];
    int wires = read.harness().wires().size();
    for (int run = -2; run < RUNS; run++) {
      Facts facts = Facts.of(read, LocalDate.of(2026, 11, 25), KnownRules.NONE);
      facts.fitting();
      long start = System.nanoTime();
      int found = facts.routes().all().size();
      if (found != wires) {
        throw new IllegalStateException(found + " of " + wires + " wires have a route");
      }
      if (run >= 0) {
        routes[run] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(routes);
    double median = routes[RUNS / 2];
    System.out.printf(
        Locale.ROOT, "%8s  %6d  %9.1f  %11.2f%n", name, wires, median, median * 1e3 / wires);
  }

  /** Wires between random nodes of a square mesh with a node for each 25 wires. */
  private static String mesh(int wires) {
    Random random = new Random(7);
    int side = (int) Math.ceil(Math.sqrt(wires / 25.0));
    StringBuilder json = new StringBuilder("{\"format\": 1, \"sketch\": true, \"devices\": {");
    for (int i = 0; i < side * side; i++) {
      json.append(i == 0 ? "" : ",\n").append("\"D%1$d\": {\"at\": \"n%1$d\"}".formatted(i));
    }
    json.append("},\n\"layout\": {\"segments\": {");
    for (int i = 0; i < side * side; i++) {
      for (int step : new int[] {1, side}) {
        if ((step == 1 ? i % side + 1 < side : true) && i + step < side * side) {
          json.append(json.charAt(json.length() - 1) == '{' ? "" : ",\n")
              .append(
                  "\"s%d-%d\": {\"from\": \"n%d\", \"to\": \"n%d\", \"lengthMm\": %d}"
                      .formatted(i, step, i, i + step, 100 * (1 + random.nextInt(3))));
        }
      }
    }
    json.append("}},\n\"wires\": {");
    for (int i = 0; i < wires; i++) {
      json.append(i == 0 ? "" : ",\n")
          .append(
              "\"W%1$d\": {\"from\": \"D%2$d:%1$d\", \"to\": \"D%3$d:%1$d\", \"areaMm2\": 0.5}"
                  .formatted(i, random.nextInt(side * side), random.nextInt(side * side)));
    }
    return json.append("}}").toString();
  }
}
