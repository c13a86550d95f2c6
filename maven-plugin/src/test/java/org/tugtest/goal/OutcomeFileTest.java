package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.report.Report;

class OutcomeFileTest {
  @TempDir Path folder;

  @Test
  void nothingIsCheckedUntilItIsSaid() throws IOException, MojoExecutionException {
    Path reports = folder.resolve("deep/reports");
    Path file = reports.resolve("outcome.txt");
    OutcomeFile outcome = OutcomeFile.begin(reports);
    assertThat(file).hasContent("cannot-check\n");
    outcome.say(Report.Outcome.FINDINGS);
    assertThat(file).hasContent("findings\n");
    outcome.say(Report.Outcome.CLEAN);
    assertThat(file).hasContent("clean\n");
    OutcomeFile.begin(reports);
    assertThat(file).hasContent("cannot-check\n");
  }

  @Test
  void aFolderThatCannotBeMadeIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("reports"), "a file in the way");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> OutcomeFile.begin(file))
        .withMessageContaining("make the folder of the reports writable");
  }
}
