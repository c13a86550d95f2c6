package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The smallest harness of the README, as a newcomer would take it from there. */
class ReadmeExampleTest {
  private static final Path README = Path.of(System.getProperty("basedir", "."), "../README.md");
  @TempDir Path folder;

  private static String example() throws IOException {
    String page = Files.readString(README);
    int from = page.indexOf("```json") + "```json".length();
    return page.substring(from, page.indexOf("```", from));
  }

  private Stage check(String json)
      throws IOException, MojoExecutionException, MojoFailureException {
    Stage stage = Stage.in(folder).with("src/main/harness/lamp.harness.json", json);
    Map<String, Object> standard =
        Map.of(
            "failOn", "error",
            "failOnNoFiles", true,
            "coverageMin", "0",
            "annotations", "never",
            "today", "2026-11-28");
    stage.goal(new CheckMojo(), standard).run(stage.around(), stage.place());
    return stage;
  }

  @Test
  void asWrittenItPassesWithoutAWarning()
      throws IOException, MojoExecutionException, MojoFailureException {
    assertThat(check(example()).log().lines())
        .contains("passes: lamp.harness.json", "0 errors, 0 warnings, 0 notes, 0 waived");
  }

  @Test
  void whatThePageSaysToBreakFails() throws IOException {
    String lamp = example();
    String shorted = lamp.replace("\"to\": \"BAT:-\"", "\"to\": \"SW:2\"");
    String unfused = lamp.replace("\"to\": \"FB:in\"", "\"to\": \"SW:1\"");
    for (String broken : new String[] {shorted, unfused}) {
      assertThat(broken).isNotEqualTo(lamp);
      assertThatExceptionOfType(MojoFailureException.class)
          .isThrownBy(() -> check(broken))
          .withMessageStartingWith("blocked: lamp.harness.json by ");
    }
  }
}
