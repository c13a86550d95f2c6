package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.git.RealGit;

class CompareGoalTest {
  @TempDir Path folder;

  private static void compare(Stage stage, Object... parameters)
      throws MojoExecutionException, MojoFailureException {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("failOn", "error");
    all.put("failOnlyNew", true);
    for (int i = 0; i < parameters.length; i += 2) {
      all.put((String) parameters[i], parameters[i + 1]);
    }
    stage.goal(new CompareMojo(), all).run(stage.around(), stage.place());
  }

  @Test
  void theFilesAreHeldAgainstTheLastCommit()
      throws IOException, MojoExecutionException, MojoFailureException {
    RealGit git = RealGit.init(folder);
    Stage stage = Stage.in(folder).sound();
    git.commitAll("sound");
    compare(stage);
    assertThat(stage.log().lines())
        .contains("src/main/harness/car.harness.json against HEAD: nothing changes");
    assertThat(stage.reports())
        .contains("compare.html", "compare.json", "compare.md", "rework.html", "rework.csv");
    stage.doubled();
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> compare(stage, "formats", List.of("markdown")))
        .withMessageStartingWith("blocked: car.harness.json by 1 new error; ");
    compare(stage, "failOn", "never");
  }

  @Test
  void aChangeOfCircuitsWantsToBeAnnouncedWhereThatIsAsked()
      throws IOException, MojoExecutionException, MojoFailureException {
    RealGit git = RealGit.init(folder);
    Stage stage = Stage.in(folder).sound();
    git.commitAll("sound");
    stage.with(
        Stage.ROOT,
        """
        {"format": 1, "sketch": true,
         "devices": {"L": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "wires": {"W1": {"from": "L:1", "to": "X2:1", "areaMm2": 1}}}
        """);
    compare(stage, "failOn", "never");
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> compare(stage, "failOn", "never", "failOnUnannounced", true))
        .withMessageContaining("that changes/ does not announce");
  }

  @Test
  void whatCannotBeComparedIsSaid() throws IOException {
    Stage stage = Stage.in(folder).sound();
    assertThatExceptionOfType(MojoExecutionException.class)
        .as("no git")
        .isThrownBy(() -> compare(stage, "head", "main"));
    RealGit.init(folder).commitAll("sound");
    for (Object[] wrong :
        new Object[][] {
          {"head", "mian", "mian"},
          {"base", "mian", "mian"},
          {"ours", "main", "belong together"},
          {"failOn", "worst", "it takes error, warning, note, never"},
          {"formats", List.of("sarif"), "it takes html, markdown, json, rework"},
          {"today", "1.1.2027", "it takes a day"}
        }) {
      assertThatExceptionOfType(MojoExecutionException.class)
          .as("%s", wrong[0])
          .isThrownBy(() -> compare(stage, wrong[0], wrong[1]))
          .withMessageContaining((String) wrong[2]);
    }
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> compare(stage, "staged", true, "head", "main"))
        .withMessageStartingWith("tugtest.staged and tugtest.head name two things");
  }
}
