package org.tugtest.hook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs another program and waits for it. Only the installer does; no check starts anything. */
final class Program {
  private static final int MOST_SECONDS = 60;

  private Program() {}

  /** How a program ended, and what it printed. */
  record Ended(int code, String printed) {}

  /**
   * Runs a program to its end.
   *
   * @throws IOException when it cannot be started, or does not end within a minute
   */
  static Ended run(Path folder, List<String> command) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      process.getOutputStream().close();
      byte[] printed = process.getInputStream().readAllBytes();
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        throw new IOException(command.get(0) + " does not end");
      }
      return new Ended(process.exitValue(), new String(printed, StandardCharsets.UTF_8));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped while " + command.get(0) + " was running", stopped);
    } finally {
      process.destroy();
    }
  }
}
