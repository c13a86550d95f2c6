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
import org.tugtest.route.Bundle;

/**
 * How long it takes to lay the wires of one segment side by side, for wires of five sizes at
 * random: medians of several runs after a warm-up. Arguments: the numbers of wires.
 */
public final class PackingBenchmark {
  private static final int[] SIZES = {10, 30, 100, 300, 1_000};
  private static final double[] AREAS = {0.35, 0.5, 1, 2.5, 6};
  private static final int RUNS = 9;

  private PackingBenchmark() {}

  /** Measures and prints one line a size. */
  public static void main(String[] args) {
    int[] sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    System.out.println(" wires  packing ms  diameter mm  over 1.2 root of sum of squares");
    for (int size : sizes) {
      measure(size);
    }
  }

  private static void measure(int size) {
    ReadHarness read =
        new HarnessReader(MemoryFiles.of("car.harness.json", segment(size)), ReadLimits.STANDARD)
            .read("car.harness.json");
    double[] millis = new double[RUNS];
    double least = 0;
    double squares = 0;
    for (int run = -RUNS; run < RUNS; run++) {
      Facts facts = Facts.of(read, LocalDate.of(2026, 11, 25), KnownRules.NONE);
      Bundle bundle = facts.bundles().thickest("s").orElseThrow();
      if (bundle.strands().size() != size) {
        throw new IllegalStateException(bundle.strands().size() + " of " + size + " wires");
      }
      long start = System.nanoTime();
      least = bundle.packing().diameterMm();
      if (run >= 0) {
        millis[run] = (System.nanoTime() - start) / 1e6;
      }
      squares = bundle.diametersMm().stream().mapToDouble(each -> each * each).sum();
    }
    Arrays.sort(millis);
    System.out.printf(
        Locale.ROOT,
        "%6d  %10.2f  %11.2f  %31.3f%n",
        size,
        millis[RUNS / 2],
        least,
        least / (1.2 * Math.sqrt(squares)));
  }

  /** So many wires between two nodes. */
  private static String segment(int wires) {
    Random random = new Random(7);
    StringBuilder json =
        new StringBuilder(
            "{\"format\": 1, \"sketch\": true, \"devices\": {\"A\": {\"at\": \"a\"}, \"B\":"
                + " {\"at\": \"b\"}}, \"layout\": {\"segments\": {\"s\": {\"from\": \"a\", \"to\":"
                + " \"b\", \"lengthMm\": 1000}}}, \"wires\": {");
    for (int i = 0; i < wires; i++) {
      json.append(i == 0 ? "" : ",\n")
          .append("\"W%1$d\": {\"from\": \"A:%1$d\", \"to\": \"B:%1$d\", ".formatted(i))
          .append("\"areaMm2\": ")
          .append(AREAS[random.nextInt(AREAS.length)])
          .append('}');
    }
    return json.append("}}\n").toString();
  }
}
