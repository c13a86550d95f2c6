package org.tugtest.benchmark;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import org.tugtest.bench.whatif.WhatIfTable;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;

/**
 * How long the what-if table takes, the states being solved already: of a harness in blocks, all
 * loads on, and of the same with a relay for each block that the block's loads hang on. Arguments:
 * the sizes in wires.
 */
public final class WhatIfBenchmark {
  private static final int[] SIZES = {250, 500, 1_000, 2_000};
  private static final int RUNS = 3;

  private WhatIfBenchmark() {}

  /** Measures and prints a line a size and kind. */
  public static void main(String[] args) {
    int[] sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    System.out.println("    kind   wires  faults that show    ms  us per wire");
    for (int size : sizes) {
      String plain = GeneratedHarness.of(size, 7).replace("\"amps\": 2.5", "\"amps\": 0.1");
      measure("plain", plain);
      measure("relays", withRelays(plain));
    }
  }

  /** The bar to each block becomes a relay contact whose coil hangs on the same bar. */
  private static String withRelays(String text) {
    int from = text.indexOf("\"BUS\"");
    int to = text.indexOf("\"CHASSIS\"");
    String bus =
        text.substring(from, to)
            .replaceAll(
                "\"k(\\d+)\": \\{\"kind\": \"link\", \"a\": \"in\", \"b\": \"p\\1\"\\}",
                "\"c$1\": {\"kind\": \"coil\", \"a\": \"in\", \"b\": \"minus\", \"ohms\": 800},"
                    + " \"k$1\": {\"kind\": \"contact\", \"a\": \"in\", \"b\": \"p$1\","
                    + " \"coil\": \"c$1\"}")
            .replace("\"pins\": {", "\"pins\": {\"minus\": {\"family\": \"stud-m8\"}, ");
    String minus = "\"BUS-MINUS\": {\"from\": \"BUS:minus\", \"to\": \"BAT:-\", \"part\": \"w16\"}";
    return text.substring(0, from)
        + bus
        + text.substring(to).replace("\"BAT-MINUS\":", minus + ",\n    \"BAT-MINUS\":");
  }

  private static void measure(String kind, String text) {
    ReadHarness read =
        new HarnessReader(MemoryFiles.of("car.harness.json", text), ReadLimits.STANDARD)
            .read("car.harness.json");
    Facts facts = Facts.of(read, LocalDate.of(2026, 11, 25), KnownRules.NONE);
    facts.operating();
    facts.sides();
    int wires = read.harness().wires().size();
    double[] times = new double[RUNS];
    long shows = 0;
    for (int run = -1; run < RUNS; run++) {
      long start = System.nanoTime();
      shows = WhatIfTable.of(facts).effects().stream().filter(effect -> effect.shows()).count();
      if (run >= 0) {
        times[run] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(times);
    double median = times[RUNS / 2];
    System.out.printf(
        Locale.ROOT,
        "%8s  %6d  %16d  %6.1f  %11.2f%n",
        kind,
        wires,
        shows,
        median,
        median * 1e3 / wires);
  }
}
