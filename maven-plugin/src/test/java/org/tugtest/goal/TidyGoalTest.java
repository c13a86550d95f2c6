package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TidyGoalTest {
  private static final String SHARED = "src/main/harness/shared.json";
  @TempDir Path folder;

  /** Two roots with one file of waivers; only one of them, {@code night}, needs the waiver. */
  private Stage stage(String night) throws IOException {
    return Stage.in(folder)
        .with(
            SHARED,
            """
            {"format": 1, "waivers": {
              "two-in-one": {"rule": "cavity-doubled", "at": "connectors/X1:1",
                             "reason": "the terminal takes two"}}}
            """)
        .with(
            Stage.ROOT,
            """
            {"format": 1, "sketch": true, "uses": ["shared.json"], "wires": {
              "W1": {"from": "X1:1", "to": "X2:1"}}}
            """)
        .with("src/main/harness/night.harness.json", night);
  }

  private TidyRun run(Stage stage) throws MojoExecutionException {
    return TidyRun.of(stage.around(), stage.place(), stage.log());
  }

  @Test
  void aWaiverThatOneRootNeedsStays()
      throws IOException, MojoExecutionException, MojoFailureException {
    TidyRun run =
        run(
            stage(
                """
                {"format": 1, "sketch": true, "uses": ["shared.json"], "wires": {
                  "W1": {"from": "X1:1", "to": "X2:1"}, "W2": {"from": "X1:1", "to": "X2:2"}}}
                """));
    run.removeIdleWaivers();
    run.finish(false);
    assertThat(folder.resolve(SHARED)).content().contains("two-in-one");
  }

  @Test
  void aWaiverThatNoRootNeedsGoes()
      throws IOException, MojoExecutionException, MojoFailureException {
    TidyRun run = run(stage("{\"format\": 1, \"uses\": [\"shared.json\"]}"));
    run.removeIdleWaivers();
    run.finish(false);
    assertThat(folder.resolve(SHARED)).content().doesNotContain("two-in-one");
  }

  @Test
  void noWaiverGoesWhileARootCannotBeRead() throws IOException, MojoExecutionException {
    TidyRun run = run(stage("{\"format\": 1, \"uses\": [\"shared.json\"],"));
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(run::removeIdleWaivers)
        .withMessageStartingWith("night.harness.json cannot be read, so no waiver was taken out");
    assertThat(folder.resolve(SHARED)).content().contains("two-in-one");
  }
}
