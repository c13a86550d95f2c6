package org.tugtest.goal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.report.Report;

/**
 * The word that tells a blocked harness from a check that could not run; Maven ends with 1 for
 * both. From the start on it says that nothing could be checked, until that is no longer true.
 */
final class OutcomeFile {
  private final Path file;

  private OutcomeFile(Path file) {
    this.file = file;
  }

  /** Begins a check. */
  static OutcomeFile begin(Path folder) throws MojoExecutionException {
    OutcomeFile outcome = new OutcomeFile(folder.resolve("outcome.txt"));
    outcome.say(Report.Outcome.CANNOT_CHECK);
    return outcome;
  }

  /** Writes how it ended. */
  void say(Report.Outcome outcome) throws MojoExecutionException {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.write(file, (outcome.word() + "\n").getBytes(StandardCharsets.UTF_8));
    } catch (IOException failed) {
      throw new MojoExecutionException(
          "cannot write " + file + "; make the folder of the reports writable", failed);
    }
  }
}
