package org.tugtest.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The git program at work in a folder, away from the configuration of whoever runs the tests. */
public final class RealGit {
  private static final String DATE = "2026-11-20T10:00:00+01:00";
  private final Path folder;

  private RealGit(Path folder) {
    this.folder = folder;
  }

  /** An empty repository with the branch main; the test is skipped where git is not installed. */
  public static RealGit init(Path folder) throws IOException {
    RealGit git = in(folder);
    git.run("init", "-q", "-b", "main", ".");
    return git;
  }

  /** The program in a folder that need not be a repository. */
  public static RealGit in(Path folder) throws IOException {
    Files.createDirectories(folder);
    assumeTrue(installed(), "git is not installed");
    return new RealGit(folder);
  }

  private static boolean installed() {
    try {
      return new ProcessBuilder("git", "--version").redirectErrorStream(true).start().waitFor()
          == 0;
    } catch (IOException notThere) {
      return false;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  public Path folder() {
    return folder;
  }

  /** Runs git and returns what it said; it has to succeed. */
  public String run(String... arguments) throws IOException {
    Ended ended = attempt(Map.of(), arguments);
    assertThat(ended.code()).as("git %s: %s", List.of(arguments), ended.said()).isZero();
    return ended.said().strip();
  }

  /** Runs git with further variables. */
  public Ended attempt(Map<String, String> variables, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of(arguments));
    ProcessBuilder git = new ProcessBuilder(command).directory(folder.toFile());
    git.environment().keySet().removeIf(name -> name.startsWith("GIT_"));
    git.environment()
        .putAll(
            Map.of(
                "GIT_CONFIG_GLOBAL", "/dev/null",
                "GIT_CONFIG_NOSYSTEM", "1",
                "GIT_AUTHOR_NAME", "bench",
                "GIT_AUTHOR_EMAIL", "bench@localhost",
                "GIT_COMMITTER_NAME", "bench",
                "GIT_COMMITTER_EMAIL", "bench@localhost",
                "GIT_AUTHOR_DATE", DATE,
                "GIT_COMMITTER_DATE", DATE,
                "LC_ALL", "C"));
    git.environment().putAll(variables);
    Process running = git.redirectErrorStream(true).start();
    running.getOutputStream().close();
    String said = new String(running.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      return new Ended(running.waitFor(), said);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException(stopped);
    }
  }

  /** How it ended, and what it said on both outputs. */
  public record Ended(int code, String said) {}

  /** Writes a file below the folder. */
  public void write(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** Adds everything and commits it. */
  public String commitAll(String message) throws IOException {
    run("add", "-A");
    run("commit", "-q", "--no-verify", "-m", message);
    return run("rev-parse", "HEAD");
  }

  /** Every file of the repository's own folder, with when it was changed and its length. */
  public List<String> ownFiles() throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve(".git"))) {
      return files
          .sorted()
          .map(file -> file + " " + file.toFile().lastModified() + " " + file.toFile().length())
          .toList();
    }
  }
}
