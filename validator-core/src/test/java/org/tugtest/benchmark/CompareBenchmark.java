package org.tugtest.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tugtest.check.CheckResult;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;

/**
 * How long it takes to compare two revisions of a generated harness, one wire in a hundred being
 * altered, or every wire and connector being called anew: medians of processor time after a
 * warm-up, without reading and without rules, and how they grow per doubling. Arguments: the sizes
 * in wires.
 */
public final class CompareBenchmark {
  private static final long SEED = 20261128;
  private static final int[] SIZES = {1_000, 2_000, 5_000, 10_000, 20_000, 50_000};
  private static final int RUNS = 9;
  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();
  private static final Pattern WIRE =
      Pattern.compile("(\"W\\d{6}\": \\{\"from\": )\"([^\"]*)\"(.*\"colour\": )\"([^\"]*)\"");

  private CompareBenchmark() {}

  /** Measures and prints one line a size. */
  public static void main(String[] args) {
    int[] sizes =
        args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    System.out.println(
        " wires  revision   compare ms  growth per doubling  changes  same circuits");
    for (String revision : List.of("same", "edited", "renamed")) {
      double last = 0;
      int lastSize = 0;
      for (int size : sizes) {
        String text = GeneratedHarness.of(size, SEED);
        ReadHarness before = read(text);
        ReadHarness after = read(altered(text, revision));
        double[] millis = new double[RUNS];
        Comparison comparison = null;
        for (int i = -4; i < RUNS; i++) {
          Snapshot one = snapshot(before);
          Snapshot other = snapshot(after);
          long start = CPU.getCurrentThreadCpuTime();
          comparison = Comparison.of(one, other);
          if (i >= 0) {
            millis[i] = (CPU.getCurrentThreadCpuTime() - start) / 1e6;
          }
        }
        Arrays.sort(millis);
        double median = millis[RUNS / 2];
        System.out.printf(
            Locale.ROOT,
            "%6d  %-8s  %11.1f  %19.2f  %7d  %s%n",
            before.harness().wires().size(),
            revision,
            median,
            lastSize == 0
                ? Double.NaN
                : Math.pow(median / last, Math.log(2) / Math.log((double) size / lastSize)),
            comparison == null ? 0 : comparison.changes().size(),
            comparison != null && comparison.circuits().same());
        last = median;
        lastSize = size;
      }
    }
  }

  private static String altered(String text, String revision) {
    if (revision.equals("same")) {
      return text;
    }
    if (revision.equals("renamed")) {
      return text.replaceAll("\"W(\\d{6})\"", "\"V$1\"")
          .replaceAll("\"(F|XA|XB|L)(\\d+)(\"|:)", "\"$1-$2$3")
          .replace("w1\"", "wire1\"");
    }
    Random random = new Random(SEED);
    Matcher wires = WIRE.matcher(text);
    return wires.replaceAll(
        found ->
            switch (random.nextInt(200)) {
              case 0 -> Matcher.quoteReplacement(found.group().replace(found.group(4), "SR"));
              case 1 ->
                  Matcher.quoteReplacement(
                      found.group().replace("\"" + found.group(2) + "\"", "\"BUS:in\""));
              default -> Matcher.quoteReplacement(found.group());
            });
  }

  private static ReadHarness read(String text) {
    return new HarnessReader(MemoryFiles.of("car.harness.json", text), ReadLimits.STANDARD)
        .read("car.harness.json");
  }

  private static Snapshot snapshot(ReadHarness read) {
    Facts facts = Facts.of(read, LocalDate.of(2026, 11, 28), KnownRules.NONE);
    return Snapshot.of(
        "benchmark",
        facts,
        new CheckResult("car.harness.json", List.of(), List.of(), List.of(), List.of(), List.of()));
  }
}
