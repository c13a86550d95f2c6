package org.tugtest.hook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Runs another program and waits for it. Only the installer does; no check starts anything. */
final class Program {
  private static final Duration LONGEST = Duration.ofSeconds(60);

  private Program() {}

  /** How a program ended, and what it printed. */
  record Ended(int code, String printed) {}

  /**
   * Runs a program to its end.
   *
   * @throws IOException when it cannot be started, or does not end within a minute
   */
  static Ended run(Path folder, List<String> command) throws IOException {
    return run(folder, command, LONGEST);
  }

  /** The same with another bound, which holds for what it prints too. */
  static Ended run(Path folder, List<String> command, Duration longest) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    // Something that it started may hold the output open after it has ended itself.
    FutureTask<byte[]> printed = new FutureTask<>(process.getInputStream()::readAllBytes);
    Thread reader = new Thread(printed, "tugtest output of " + command.get(0));
    reader.setDaemon(true);
    reader.start();
    long began = System.nanoTime();
    try {
      process.getOutputStream().close();
      byte[] bytes = printed.get(longest.toNanos(), TimeUnit.NANOSECONDS);
      long left = longest.toNanos() - (System.nanoTime() - began);
      if (!process.waitFor(left, TimeUnit.NANOSECONDS)) {
        throw new IOException(command.get(0) + " does not end");
      }
      return new Ended(process.exitValue(), new String(bytes, StandardCharsets.UTF_8));
    } catch (TimeoutException late) {
      throw new IOException(command.get(0) + " does not end", late);
    } catch (ExecutionException failed) {
      throw new IOException("what " + command.get(0) + " prints cannot be read", failed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped while " + command.get(0) + " was running", stopped);
    } finally {
      process.descendants().forEach(ProcessHandle::destroy);
      process.destroy();
    }
  }
}
