package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetGoalTest {
  @TempDir Path folder;

  private static void sheet(Stage stage) throws MojoExecutionException, MojoFailureException {
    stage.goal(new SheetMojo(), Map.of()).run(stage.around(), stage.place());
  }

  @Test
  void theTablesOfASoundHarnessAreWritten()
      throws IOException, MojoExecutionException, MojoFailureException {
    sheet(Stage.in(folder).sound());
    assertThat(folder.resolve("target/tugtest/sheet/wires.csv"))
        .content()
        .contains("W1")
        .contains("W2");
  }

  @Test
  void aHarnessThatCannotBeReadGivesNoEmptyTables() throws IOException {
    Stage stage = Stage.in(folder).with(Stage.ROOT, "{\"format\": 1, \"wires\": {");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> sheet(stage))
        .withMessage(
            "car.harness.json cannot be read, so no table was written; mend what mvn tugtest:check"
                + " says first");
    assertThat(folder.resolve("target/tugtest/sheet")).doesNotExist();
  }
}
