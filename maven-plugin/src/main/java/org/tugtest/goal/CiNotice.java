package org.tugtest.goal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.git.Environment;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.github.WorkflowCommands;

/**
 * Tells a CI system of the findings.
 *
 * @param output takes whole lines for the standard output, which Maven must not put a level before
 */
record CiNotice(CiSystem ci, Environment environment, Consumer<String> output, Log log) {
  /** What a runner takes of one step's summary (actions/runner, FileCommandManager.cs). */
  private static final int MOST_SUMMARY_BYTES = 1 << 20;

  /**
   * Tells of a report.
   *
   * @param summary the writer of the summary of a step
   */
  void tell(Report report, Optional<ReportWriter> summary) {
    if (ci == CiSystem.GITHUB) {
      WorkflowCommands.lines(report).forEach(output);
      Optional<String> file = environment.get("GITHUB_STEP_SUMMARY");
      if (file.isPresent() && summary.isPresent()) {
        append(report, summary.get(), file.get());
      }
    }
  }

  private void append(Report report, ReportWriter summary, String file) {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    try {
      summary.write(report, path -> content);
      if (content.size() > MOST_SUMMARY_BYTES) {
        log.warn("the summary is over 1 MiB long, so it is left out of the step's summary");
        return;
      }
      try (OutputStream out =
          Files.newOutputStream(
              Path.of(file), StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
        content.writeTo(out);
      }
    } catch (IOException | InvalidPathException failed) {
      log.warn("the summary of the step cannot be written: " + failed.getMessage());
    }
  }
}
