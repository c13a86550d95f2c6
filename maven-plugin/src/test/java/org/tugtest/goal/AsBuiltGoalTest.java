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

class AsBuiltGoalTest {
  private static final String READINGS = "src/main/harness/readings/car.csv";
  @TempDir Path folder;

  private static void asBuilt(Stage stage, Object... parameters)
      throws MojoExecutionException, MojoFailureException {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("failOn", "error");
    all.put("today", "2026-11-28");
    for (int i = 0; i < parameters.length; i += 2) {
      all.put((String) parameters[i], parameters[i + 1]);
    }
    stage.goal(new AsBuiltMojo(), all).run(stage.around(), stage.place());
  }

  @Test
  void readingsThatAgreePass() throws IOException, MojoExecutionException, MojoFailureException {
    Stage stage = Stage.in(folder).sound().with(READINGS, "from,to,joined\nX1:1,X2:1,yes\n");
    asBuilt(stage);
    assertThat(stage.outcome()).isEqualTo("clean\n");
    assertThat(stage.reports())
        .containsExactly(
            "compare.html",
            "compare.json",
            "compare.md",
            "outcome.txt",
            "rework.csv",
            "rework.html");
  }

  @Test
  void readingsThatContradictAreExplainedAndBreakTheBuild() throws IOException {
    Stage stage = Stage.in(folder).sound().with(READINGS, "from,to,joined\nX1:1,X2:1,no\n");
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> asBuilt(stage, "formats", List.of("json")))
        .withMessageStartingWith("blocked: car.harness.json by 1 error; ");
    assertThat(stage.outcome()).isEqualTo("findings\n");
    assertThat(stage.reports()).containsExactly("compare.json", "outcome.txt");
    assertThat(stage.log().lines())
        .anyMatch(line -> line.startsWith("1 reading contradicts the plan ("));
  }

  @Test
  void aRecordThatIsMiswrittenIsToldInWholeSentences() throws IOException {
    String record =
        """
        {"format": 1,
         "record": {"plan": "car.harness.json", "loom": "front", "revision": "A", "by": "bench 1",
                    "date": "2026-11-20"},
         "entries": {"1": {"kind": "re-pinned", "at": "X1:9", "built": "X1:3", "reason": "worn"}}}
        """;
    String plan =
        """
        {"format": 1, "sketch": true, "loom": {"id": "front", "revision": "A"},
         "wires": {"W1": {"from": "X1:1", "to": "X2:1", "areaMm2": 1.0}}}
        """;
    Stage stage =
        Stage.in(folder)
            .with("src/main/harness/car.harness.json", plan)
            .with("src/main/harness/1.record.json", record);
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> asBuilt(stage))
        .withMessageContaining("does not have the form expected there. A place: section/id");
  }

  @Test
  void whatDoesNotFitThePlanCannotBeChecked() throws IOException {
    Stage stage = Stage.in(folder).sound().with(READINGS, "from,to,joined\nX1:1,X7:1,yes\n");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> asBuilt(stage, "failOn", "never"))
        .withMessageStartingWith("1 thing told of the loom as built does not fit the plan; first: ")
        .withMessageContaining("X7:1");
    assertThat(stage.outcome()).isEqualTo("cannot-check\n");
    assertThat(stage.log().errors()).anyMatch(line -> line.contains("error as-built line 2"));
  }

  @Test
  void whatIsAskedForWronglyIsRefused() throws IOException {
    Stage nothing = Stage.in(folder.resolve("nothing"));
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> asBuilt(nothing))
        .withMessageStartingWith("there is no folder src/main/harness");
    Stage stage = Stage.in(folder).sound();
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> asBuilt(stage))
        .withMessageStartingWith("nothing is told of a loom as built");
    stage.with(READINGS, "from,to,joined\nX1:1,X2:1,yes\n");
    for (Object[] wrong :
        new Object[][] {
          {"failOn", "eror", "did you mean error?"},
          {"formats", List.of("junit"), "it takes html, markdown, json, rework"},
          {"today", "soon", "it takes a day"},
          {"plan", "cars.harness.json", "did you mean car.harness.json?"},
          {"harness", "built.harness.json", "car.harness.json"},
          {"readings", List.of("none*"), "which fits no file; there are readings/car.csv"}
        }) {
      assertThatExceptionOfType(MojoExecutionException.class)
          .as("%s", wrong[0])
          .isThrownBy(() -> asBuilt(stage, wrong[0], wrong[1]))
          .withMessageContaining((String) wrong[2]);
      assertThat(stage.outcome()).isEqualTo("cannot-check\n");
    }
  }
}
