package org.tugtest.benchmark;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
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
 * the memory still in use after a full check. First a generated harness in one file, short for a
 * wire, with six states; then the sample many times over, with its eight. Arguments: {@code
 * generated} or {@code sample} for one of them, and the sizes in wires.
 */
public final class CheckBenchmark {
  private static final long SEED = 20261125;
  private static final String CAR = "car.harness.json";

  /** Wires of the sample. */
  private static final int WIRES_EACH = 211;

  private static final Kind GENERATED =
      new Kind("generated", CAR, size -> Map.of(CAR, GeneratedHarness.of(size, SEED)));
  private static final Kind SAMPLE =
      new Kind(
          "sample",
          ManySamples.ROOT,
          size -> ManySamples.of(Math.max(1, Math.round((float) size / WIRES_EACH))));
  private static final int[] SIZES = {500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000, 100_000};
  private static final int MIDDLE = 2_000;
  private static final int LARGE = 20_000;
  private static final double MEBI = 1 << 20;

  /** As the goals read, but for the files of many copies. */
  private static final ReadLimits LIMITS =
      new ReadLimits(
          ReadLimits.STANDARD.bytes(),
          ReadLimits.STANDARD.depth(),
          ReadLimits.STANDARD.textLength(),
          100_000);

  private CheckBenchmark() {}

  /**
   * What is checked.
   *
   * @param files of so many wires, about
   */
  private record Kind(String name, String root, IntFunction<Map<String, String>> files) {
    ReadHarness read(Map<String, String> texts) {
      ReadHarness read = new HarnessReader(MemoryFiles.of(texts), LIMITS).read(root);
      if (read.harness().wires().isEmpty()) {
        throw new IllegalStateException("no wire was read");
      }
      return read;
    }
  }

  /** Measures and prints one line a size. */
  public static void main(String[] args) {
    List<String> words = List.of(args);
    int[] given =
        words.stream().filter(word -> word.matches("\\d+")).mapToInt(Integer::parseInt).toArray();
    int[] sizes = given.length == 0 ? SIZES : given;
    for (Kind kind : List.of(GENERATED, SAMPLE)) {
      if (words.contains(kind.name()) || words.size() == given.length) {
        measure(kind, sizes);
      }
    }
  }

  private static void measure(Kind kind, int[] sizes) {
    System.out.println(kind.name());
    System.out.println(
        " wires      MB  pass ms  read x  check x  whole x  growth per doubling  live MiB "
            + " findings");
    double lastWhole = 0;
    int lastSize = 0;
    for (int size : sizes) {
      Map<String, String> files = kind.files().apply(size);
      List<byte[]> bytes =
          files.values().stream().map(text -> text.getBytes(StandardCharsets.UTF_8)).toList();
      int runs = size <= MIDDLE ? 15 : size <= LARGE ? 7 : 3;
      double pass = median(15, () -> tokens(bytes));
      double read = median(runs, () -> kind.read(files));
      double whole = median(runs, () -> check(kind.read(files)));
      ReadHarness kept = kind.read(files);
      int wires = kept.harness().wires().size();
      double growth =
          lastSize == 0
              ? Double.NaN
              : Math.pow(whole / lastWhole, Math.log(2) / Math.log((double) wires / lastSize));
      CheckResult result = check(kept);
      System.out.printf(
          Locale.ROOT,
          "%6d  %6.2f  %7.2f  %6.1f  %7.1f  %7.1f  %19.2f  %8.0f  %8d%n",
          wires,
          bytes.stream().mapToInt(file -> file.length).sum() / 1e6,
          pass,
          read / pass,
          (whole - read) / pass,
          whole / pass,
          growth,
          liveMebibytes(),
          result.findings().size());
      lastWhole = whole;
      lastSize = wires;
    }
  }

  private static int tokens(List<byte[]> files) {
    JsonFactory factory = JsonFactory.builder().build();
    int count = 0;
    for (byte[] bytes : files) {
      try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), bytes)) {
        while (parser.nextToken() != null) {
          count++;
        }
      }
    }
    return count;
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
