package org.tugtest.hook;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.tugtest.git.RealGit;
import org.tugtest.git.WorkTree;

/** A repository with a small harness in two files and the guard installed, for tests. */
public final class Guarded {
  static final String ROOT = "src/main/harness/car.harness.json";
  static final String LEFT = "src/main/harness/looms/left.json";
  static final String RIGHT = "src/main/harness/looms/right.json";
  static final String PLUGIN = "org.tugtest:tugtest-maven-plugin:1.2.3";

  private Guarded() {}

  /** A repository with one commit of a sound harness, and the guard in it. */
  static RealGit repository(Path folder) throws IOException {
    RealGit git = RealGit.init(folder);
    git.write(
        ROOT,
        """
        {"format": 1, "sketch": true, "uses": ["looms/left.json", "looms/right.json"]}
        """);
    left(git, "W1 X1:1 X2:1");
    right(git, "W2 X1:2 X3:1");
    git.write("notes.txt", "one\n");
    git.commitAll("sound");
    install(git);
    return git;
  }

  /** Writes a loom of wires, each {@code id from to}. */
  static void left(RealGit git, String... wires) throws IOException {
    git.write(LEFT, loom(wires));
  }

  static void right(RealGit git, String... wires) throws IOException {
    git.write(RIGHT, loom(wires));
  }

  private static String loom(String... wires) {
    return Arrays.stream(wires)
        .map(wire -> wire.split(" ", -1))
        .map(
            wire ->
                "    \"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1.0}"
                    .formatted(wire[0], wire[1], wire[2]))
        .collect(Collectors.joining(",\n", "{\n  \"format\": 1,\n  \"wires\": {\n", "\n  }\n}\n"));
  }

  static GuardOrder order() {
    return order("left to CI");
  }

  /** What a project that says nothing of it asks the guard for. */
  public static GuardOrder order(String later) {
    return new GuardOrder(
        "src/main/harness", List.of(), List.of(), List.of(), "error", "mvn tugtest:", later);
  }

  /**
   * Installs the guard as the goal does, but for the jar, which leads to the classes under test and
   * lies in place already, as if it had been rehearsed.
   */
  static List<String> install(RealGit git) throws IOException {
    return install(git, order());
  }

  /** The same with an order of one's own. */
  public static List<String> install(RealGit git, GuardOrder order) throws IOException {
    try (WorkTree tree = WorkTree.around(git.folder()).orElseThrow()) {
      Path own = Files.createDirectories(tree.hooks().resolve("tugtest"));
      Path jar = own.resolve("guard.jar");
      writeJar(jar);
      Files.writeString(own.resolve("guard.jsa"), "");
      return Installation.of(tree).install(order, PLUGIN, jar, java());
    }
  }

  static List<String> remove(RealGit git) throws IOException {
    try (WorkTree tree = WorkTree.around(git.folder()).orElseThrow()) {
      return Installation.of(tree).remove();
    }
  }

  static Installation.JavaHome java() {
    return new Installation.JavaHome(
        Path.of(System.getProperty("java.home")), Runtime.version().feature());
  }

  /** A jar that holds nothing but the way to the classes under test. */
  static void writeJar(Path jar) throws IOException {
    String classes =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .filter(entry -> !entry.isEmpty())
            .map(entry -> new File(entry).toURI().toString())
            .collect(Collectors.joining(" "));
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, classes);
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream empty = new JarOutputStream(out, manifest)) {
      empty.finish();
    }
  }

  /** Commits what is staged, through the hook. */
  static RealGit.Ended commit(RealGit git, String... options) throws IOException {
    String[] command = new String[options.length + 4];
    System.arraycopy(new String[] {"commit", "-q", "-m", "change"}, 0, command, 0, 4);
    System.arraycopy(options, 0, command, 4, options.length);
    return git.attempt(Map.of(), command);
  }
}
