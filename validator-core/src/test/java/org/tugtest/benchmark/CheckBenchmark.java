package org.tugtest.benchmark;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * How long reading and checking take, as ratios to one plain token pass of Jackson over the same
 * bytes in the same run: medians of several runs after a warm-up, how they grow per doubling, and
 * the memory still in use after a full check. Arguments: the sizes in wires.
 */
public final class CheckBenchmark {
  private static final long SEED = 20261125;
  private static final int[] SIZES = {
    100, 500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000, 100_000
  };
  private static final int SMALL = 20_000;
  private static final double MEBI = 1 << 20;

  private CheckBenchmark() {}

  /** Measures and prints one line a size. */
  public static void main(String[] args) {
    int[] sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    System.out.println(
        " wires      MB  pass ms  read x  check x  whole x  growth per doubling  live MiB  findings");
    double lastWhole = 0;
    int lastSize = 0;
    for (int size : sizes) {
      String text = GeneratedHarness.of(size, SEED);
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      int runs = size > SMALL ? 5 : 15;
      double pass = median(runs, () -> tokens(bytes));
      double read = median(runs, () -> read(text));
      double whole = median(runs, () -> check(read(text)));
      double growth =
          lastSize == 0
              ? Double.NaN
              : Math.pow(whole / lastWhole, Math.log(2) / Math.log((double) size / lastSize));
      ReadHarness kept = read(text);
      CheckResult result = check(kept);
      System.out.printf(
          Locale.ROOT,
          "%6d  %6.2f  %7.2f  %6.1f  %7.1f  %7.1f  %19.2f  %8.0f  %8d%n",
          kept.harness().wires().size(),
          bytes.length / 1e6,
          pass,
          read / pass,
          (whole - read) / pass,
          whole / pass,
          growth,
          liveMebibytes(),
          result.findings().size());
      lastWhole = whole;
      lastSize = size;
    }
  }

  private static int tokens(byte[] bytes) {
    int count = 0;
    try (JsonParser parser =
        JsonFactory.builder().build().createParser(ObjectReadContext.empty(), bytes)) {
      while (parser.nextToken() != null) {
        count++;
      }
    }
    return count;
  }

  private static ReadHarness read(String text) {
    return new HarnessReader(MemoryFiles.of("car.harness.json", text), ReadLimits.STANDARD)
        .read("car.harness.json");
  }

  private static CheckResult check(ReadHarness read) {
    RuleCatalog catalog = RuleCatalog.standard();
    Facts facts = Facts.of(read, LocalDate.of(2026, 11, 25), catalog.known());
    return new Checker(catalog, Selection.ALL).check(facts);
  }

  private static double median(int runs, Supplier<Object> work) {
    int warmUps = Math.max(3, runs / 2);
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

  private static double liveMebibytes() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / MEBI;
  }
}
