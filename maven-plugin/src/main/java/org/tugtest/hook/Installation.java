package org.tugtest.hook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tugtest.git.WorkTree;

/**
 * Puts the guard into a repository and takes it out again. All of it lies beside the hooks, in
 * git's own folder: nothing that git keeps track of is touched.
 */
public final class Installation {
  private static final String JAR = "guard.jar";
  private static final String ARCHIVE = "guard.jsa";

  /** From this version on a JVM renews its archive of classes by itself. */
  private static final int RENEWING = 19;

  private final WorkTree tree;
  private final HookFolder hooks;

  private Installation(WorkTree tree, HookFolder hooks) {
    this.tree = tree;
    this.hooks = hooks;
  }

  /**
   * What is or will be installed in a repository.
   *
   * @throws IOException when git's folder cannot be found out; the message is a whole sentence
   */
  public static Installation of(WorkTree tree) throws IOException {
    Files.createDirectories(tree.hooks());
    return new Installation(tree, new HookFolder(tree.hooks().toRealPath()));
  }

  /**
   * Which Java runs the guard.
   *
   * @param home its folder
   * @param version its feature version, such as 17
   */
  public record JavaHome(Path home, int version) {
    Path program() {
      Path windows = home.resolve("bin").resolve("java.exe");
      return Files.exists(windows) ? windows : home.resolve("bin").resolve("java");
    }
  }

  /**
   * Installs the guard, or brings it up to date.
   *
   * @param plugin {@code group:artifact:version} of this plugin
   * @param jar the stand-alone program
   * @return what was done, each a sentence; empty when all was so already
   * @throws IOException when it cannot be installed; the message is a whole sentence that says what
   *     to do instead
   */
  public List<String> install(GuardOrder order, String plugin, Path jar, JavaHome java)
      throws IOException {
    Optional<String> elsewhere = elsewhere();
    if (elsewhere.isPresent()) {
      throw new IOException(
          "git looks for hooks in "
              + elsewhere.get()
              + " alone (core.hooksPath), a folder that may be shared or belong to another tool, so"
              + " nothing was written; add this line to its pre-commit and pre-merge-commit: mvn -o"
              + " -q -N "
              + plugin
              + ":check -Dtugtest.staged=true -Dtugtest.failOnlyNew=true");
    }
    List<String> done = new ArrayList<>();
    Path own = hooks.own();
    hooks.refuseTwo();
    Files.createDirectories(own);
    boolean renewed = !same(jar, own.resolve(JAR));
    if (renewed) {
      copy(jar, own.resolve(JAR));
      done.add("the guard is copied to " + own);
    }
    if (renewed || !Files.exists(own.resolve(ARCHIVE))) {
      done.add(rehearse(order, own, java));
    }
    HookScript script = new HookScript(order, java.program().toString(), plugin);
    done.addAll(hooks.install(script.text()));
    return done;
  }

  /** The folder of hooks that the configuration names, when it is not git's own. */
  private Optional<String> elsewhere() throws IOException {
    Optional<String> set = hooksPath();
    if (set.isEmpty()) {
      return set;
    }
    try {
      Path folder = tree.top().resolve(set.get());
      if (Files.exists(folder) && Files.isSameFile(folder, hooks.folder())) {
        return Optional.empty();
      }
    } catch (InvalidPathException elsewhere) {
      return set;
    }
    return set;
  }

  /** Asked of git itself, since the person or the machine may have set it for all repositories. */
  private Optional<String> hooksPath() {
    try {
      Program.Ended git =
          Program.run(
              tree.top(), List.of("git", "config", "--type=path", "--get", "core.hooksPath"));
      return Optional.of(git.printed().strip()).filter(path -> git.code() == 0 && !path.isEmpty());
    } catch (IOException noGit) {
      return tree.hooksPath();
    }
  }

  private static boolean same(Path one, Path other) throws IOException {
    return Files.isRegularFile(other) && Files.mismatch(one, other) < 0;
  }

  private static void copy(Path from, Path to) throws IOException {
    Path beside = Files.createTempFile(to.getParent(), "guard", ".part");
    try {
      Files.copy(from, beside, StandardCopyOption.REPLACE_EXISTING);
      Files.move(beside, to, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** Lets the JVM note down the classes of a check, which makes each start quicker. */
  private String rehearse(GuardOrder order, Path own, JavaHome java) throws IOException {
    Path archive = own.resolve(ARCHIVE);
    Files.deleteIfExists(archive);
    List<String> command = new ArrayList<>();
    command.add(java.program().toString());
    command.addAll(
        java.version() < RENEWING
            ? List.of("-XX:ArchiveClassesAtExit=" + archive)
            : List.of("-XX:+AutoCreateSharedArchive", "-XX:SharedArchiveFile=" + archive));
    command.addAll(HookScript.JVM);
    command.addAll(
        List.of("-cp", own.resolve(JAR).toString(), Guard.class.getName(), Guard.REHEARSE));
    command.addAll(order.arguments());
    try {
      Program.Ended ended = Program.run(tree.top(), command);
      if (ended.code() == 0 && Files.exists(archive)) {
        return "its classes are prepared for quick starts";
      }
      return "its classes could not be prepared (" + last(ended.printed()) + "); it starts slower";
    } catch (IOException failed) {
      return "its classes could not be prepared (" + failed.getMessage() + "); it starts slower";
    }
  }

  private static String last(String printed) {
    List<String> lines = printed.lines().filter(line -> !line.isBlank()).toList();
    return lines.isEmpty() ? "no reason given" : lines.get(lines.size() - 1).strip();
  }

  /**
   * Takes the guard out and puts back the hooks that were there before.
   *
   * @return what was done, each a sentence; empty when there was no guard
   */
  public List<String> remove() throws IOException {
    List<String> done = new ArrayList<>(hooks.remove());
    Path own = hooks.own();
    if (Files.isDirectory(own)) {
      try (Stream<Path> all = Files.walk(own)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
      done.add("the guard is taken away from " + own);
    }
    return done;
  }
}
