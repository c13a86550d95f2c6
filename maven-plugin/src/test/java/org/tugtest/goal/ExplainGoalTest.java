package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainGoalTest {
  @TempDir Path folder;

  private Stage explain(String name) throws MojoExecutionException {
    Stage stage = Stage.in(folder);
    stage.goal(new ExplainMojo(), Map.of("rule", name)).run(stage.around());
    return stage;
  }

  private void refused(String name, String end) {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> explain(name))
        .withMessageStartingWith("there is no rule and no property of the format called " + name)
        .withMessageEndingWith(end);
  }

  @Test
  void aNameThatIsThereIsExplained() throws MojoExecutionException {
    assertThat(explain("cavity-doubled").log().lines()).anyMatch(line -> line.contains("cavity"));
    assertThat(explain("wires.cutMm").log().lines()).contains("wires.cutMm");
  }

  @Test
  void aNearMissAPartOfANameAndAStrangeOneAreAnswered() {
    refused("cavity-doubeld", "; did you mean cavity-doubled?");
    refused(
        "cavity",
        "; it is part of cavity-doubled, cavity-unknown, terminal-unfit-for-cavity,"
            + " cavity-unsealed");
    refused(
        "ratingA",
        "; it is part of parts.fuses.ratingA, parts.deviceTypes.elements.ratingA,"
            + " devices.elements.ratingA");
    refused("zzzzzz", "; without tugtest.rule this goal lists all of them");
  }
}
