package org.tugtest.hook;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tugtest.git.RealGit;
import org.tugtest.git.WorkTree;

/**
 * How long the commit guard keeps a person waiting: medians of wall time over runs that take turns,
 * as ratios to the bare start of a JVM in the same turns. Arguments: the stand-alone jar, the
 * number of wires (500), the number of runs (15).
 */
public final class GuardBenchmark {
  private static final int WIRES = 500;
  private static final int RUNS = 15;
  private static final int WARM_UP = 2;

  private GuardBenchmark() {}

  /** Measures and prints one line a case. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path jar = Path.of(args[0]).toAbsolutePath();
    int wires = args.length > 1 ? Integer.parseInt(args[1]) : WIRES;
    int runs = args.length > 2 ? Integer.parseInt(args[2]) : RUNS;
    Path folder = Files.createTempDirectory("guard");
    try {
      measure(folder, jar, wires, runs);
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
    }
  }

  private static void measure(Path folder, Path jar, int wires, int runs)
      throws IOException, InterruptedException {
    String sound = BenchmarkHarness.of(wires);
    String colour = sound.replaceFirst("\"GN\"", "\"BU\"");
    String doubled = sound.replaceFirst("\"to\": \"XA0:2\"", "\"to\": \"XA0:1\"");
    RealGit git = RealGit.init(folder.resolve("car"));
    git.write(Guarded.ROOT, sound);
    git.write("notes.txt", "one\n");
    git.commitAll("sound");
    Path hook = git.folder().resolve(".git/hooks/pre-commit");
    long[] nothing = new long[runs];
    long[] bare = new long[runs];
    long[] unrelated = new long[runs];
    long[] passing = new long[runs];
    long[] blocking = new long[runs];
    try (WorkTree tree = WorkTree.around(git.folder()).orElseThrow()) {
      Installation.of(tree).install(Guarded.order(), Guarded.PLUGIN, jar, Guarded.java());
    }
    String java = Guarded.java().program().toString();
    for (int run = -WARM_UP; run < runs; run++) {
      int at = Math.max(run, 0);
      nothing[at] = millis(git, 0, "true");
      bare[at] = millis(git, 0, java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-version");
      stage(git, "notes.txt", "run " + run);
      unrelated[at] = millis(git, 0, hook.toString());
      git.run("reset", "-q", "--hard");
      stage(git, Guarded.ROOT, colour);
      passing[at] = millis(git, 0, hook.toString());
      git.run("reset", "-q", "--hard");
      stage(git, Guarded.ROOT, doubled);
      blocking[at] = millis(git, 1, hook.toString());
      git.run("reset", "-q", "--hard");
    }
    double start = median(nothing);
    double jvm = median(bare) - start;
    line("bare JVM, -version", jvm, jvm);
    line("commit that touches no harness", median(unrelated) - start, jvm);
    line("one changed wire of " + wires + ", passes", median(passing) - start, jvm);
    line("one doubled cavity, blocks", median(blocking) - start, jvm);
  }

  private static void stage(RealGit git, String path, String text) throws IOException {
    git.write(path, text);
    git.run("add", path);
  }

  private static void line(String what, double millis, double bare) {
    System.out.printf(Locale.ROOT, "%-40s %8.1f ms  %6.2f times%n", what, millis, millis / bare);
  }

  private static double median(long[] nanos) {
    long[] sorted = nanos.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2] / 1e6;
  }

  private static long millis(RealGit git, int code, String... command)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(command));
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .directory(git.folder().toFile())
            .redirectErrorStream(true)
            .redirectOutput(git.folder().resolve(".git/said").toFile());
    builder.environment().keySet().removeIf(name -> name.startsWith("GIT_"));
    long start = System.nanoTime();
    int ended = builder.start().waitFor();
    long took = System.nanoTime() - start;
    if (ended != code) {
      throw new IllegalStateException(
          words
              + " ended with "
              + ended
              + ": "
              + Files.readString(git.folder().resolve(".git/said")));
    }
    return took;
  }
}
