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

class CheckGoalTest {
  @TempDir Path folder;

  /** Runs it with what Maven gives by default and these parameters. */
  private static void check(Stage stage, Object... parameters)
      throws MojoExecutionException, MojoFailureException {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("failOn", "error");
    all.put("failOnNoFiles", true);
    all.put("coverageMin", "0");
    all.put("annotations", "auto");
    all.put("today", "2026-11-28");
    for (int i = 0; i < parameters.length; i += 2) {
      all.put((String) parameters[i], parameters[i + 1]);
    }
    stage.goal(new CheckMojo(), all).run(stage.around(), stage.place());
  }

  @Test
  void aSoundHarnessPassesAndLeavesEveryReport()
      throws IOException, MojoExecutionException, MojoFailureException {
    Stage stage = Stage.in(folder).sound();
    check(stage);
    assertThat(stage.outcome()).isEqualTo("clean\n");
    assertThat(stage.reports())
        .containsExactly(
            "outcome.txt",
            "report.gitlab.json",
            "report.html",
            "report.json",
            "report.junit.xml",
            "report.md",
            "report.sarif");
    assertThat(stage.log().lines())
        .contains("passes: car.harness.json", "report: target/tugtest/report.html");
    assertThat(stage.log().errors()).isEmpty();
  }

  @Test
  void aFindingBreaksTheBuildInOneSentence() throws IOException {
    Stage stage = Stage.in(folder).doubled();
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> check(stage, "formats", List.of("json")))
        .withMessage(
            "blocked: car.harness.json by 1 error; report: target/tugtest/report.json; next: mvn"
                + " tugtest:explain -Dtugtest.rule=cavity-doubled");
    assertThat(stage.outcome()).isEqualTo("findings\n");
    assertThat(stage.reports()).containsExactly("outcome.txt", "report.json");
    assertThat(stage.log().errors()).anyMatch(line -> line.contains("cavity-doubled X1:1 holds"));
  }

  @Test
  void aHeapThatIsTooSmallIsToldInOneSentence() {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(
            () ->
                TugtestGoal.inMemory(
                    () -> {
                      throw new OutOfMemoryError("Java heap space");
                    }))
        .withMessageContaining("is too small for this; give it more, as with MAVEN_OPTS=-Xmx");
  }

  @Test
  void withNeverFindingsAreOnlyTold()
      throws IOException, MojoExecutionException, MojoFailureException {
    Stage stage = Stage.in(folder).doubled();
    check(stage, "failOn", "never");
    assertThat(stage.outcome()).isEqualTo("clean\n");
    assertThat(stage.log().errors()).isNotEmpty();
  }

  @Test
  void rulesAreChosenAndLeftOut() throws IOException, MojoExecutionException, MojoFailureException {
    Stage stage = Stage.in(folder).doubled();
    check(stage, "skipRules", List.of("cavity-doubled"));
    check(stage, "rules", List.of("wire-end-open"));
    assertThat(stage.outcome()).isEqualTo("clean\n");
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> check(stage, "rules", List.of("cavity-doubled")));
  }

  @Test
  void whatIsAskedForWronglyIsRefusedAndNothingIsChecked() throws IOException {
    Stage stage = Stage.in(folder).sound();
    for (Object[] wrong :
        new Object[][] {
          {"failOn", "eror", "did you mean error?"},
          {"formats", List.of("html5"), "did you mean html?"},
          {"rules", List.of("cavity-dubled"), "did you mean cavity-doubled?"},
          {"skipRules", List.of("cavity-dubled"), "did you mean cavity-doubled?"},
          {"today", "tomorrow", "it takes a day"},
          {"coverageMin", "half", "it takes a whole number"},
          {"annotations", "jenkins", "it takes auto, github, gitlab, never"}
        }) {
      assertThatExceptionOfType(MojoExecutionException.class)
          .as("%s", wrong[0])
          .isThrownBy(() -> check(stage, wrong[0], wrong[1]))
          .withMessageStartingWith("tugtest." + wrong[0] + " is \"")
          .withMessageContaining((String) wrong[2]);
      assertThat(stage.outcome()).isEqualTo("cannot-check\n");
    }
    assertThat(stage.reports()).containsExactly("outcome.txt");
  }

  @Test
  void aFolderWithoutFilesIsAnErrorUnlessAllowed()
      throws IOException, MojoExecutionException, MojoFailureException {
    Stage stage = Stage.in(folder);
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> check(stage))
        .withMessageStartingWith("there is no folder src/main/harness");
    assertThat(stage.outcome()).isEqualTo("cannot-check\n");
    check(stage, "failOnNoFiles", false);
    assertThat(stage.outcome()).isEqualTo("clean\n");
    assertThat(stage.log().lines()).anyMatch(line -> line.startsWith("nothing to check: "));
  }

  @Test
  void tooLittleCoverageBreaksTheBuild() throws IOException {
    Stage stage = Stage.in(folder).sound();
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> check(stage, "coverageMin", "100"))
        .withMessageContaining("under the least coverage of 100 %");
    assertThat(stage.outcome()).isEqualTo("findings\n");
  }

  @Test
  void stagedContentNeedsGit() throws IOException {
    Stage stage = Stage.in(folder).sound();
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> check(stage, "staged", true))
        .withMessageContaining("tugtest.staged");
    assertThat(stage.outcome()).isEqualTo("cannot-check\n");
  }

  @Test
  void whatTheBaseHadPassesWhereOnlyNewFindingsFail()
      throws IOException, MojoExecutionException, MojoFailureException {
    RealGit git = RealGit.init(folder);
    Stage stage = Stage.in(folder).doubled();
    git.commitAll("doubled");
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> check(stage, "base", "HEAD"));
    check(stage, "base", "HEAD", "failOnlyNew", true);
    assertThat(stage.outcome()).isEqualTo("clean\n");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> check(stage, "base", "mian"))
        .withMessageContaining("mian");
    assertThat(stage.outcome()).isEqualTo("cannot-check\n");
  }

  @Test
  void aFileThatTheBaseDidNotUseEitherIsKnown()
      throws IOException, MojoExecutionException, MojoFailureException {
    RealGit git = RealGit.init(folder);
    Stage stage = Stage.in(folder).sound().with("src/main/harness/spare.json", "{\"format\": 1}");
    git.commitAll("spare");
    Object[] parameters = {
      "formats",
      List.of("json"),
      "rules",
      List.of("file-unused"),
      "failOn",
      "warning",
      "base",
      "HEAD",
      "failOnlyNew",
      true
    };
    check(stage, parameters);
    assertThat(stage.outcome()).isEqualTo("clean\n");
    stage.with("src/main/harness/more.json", "{\"format\": 1}");
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> check(stage, parameters))
        .withMessageStartingWith("blocked: car.harness.json by 1 new warning");
  }

  @Test
  void aHarnessThatHoldsNothingDoesNotPassUnseen()
      throws IOException, MojoExecutionException, MojoFailureException {
    String said = "holds no wire, no device and no connector";
    Stage empty = Stage.in(folder).with(Stage.ROOT, "{\"format\": 1}");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> check(empty, "formats", List.of("json")))
        .withMessageStartingWith(
            "cannot check: there is nothing to check in src/main/harness/car.harness.json, which"
                + " holds no wire");
    assertThat(empty.outcome()).isEqualTo("cannot-check\n");
    assertThat(empty.log().lines())
        .anyMatch(
            line ->
                line.startsWith("src/main/harness/car.harness.json " + said)
                    && line.endsWith("; where that is meant, take tugtest.failOnNoFiles=false"));
    Stage sound = Stage.in(folder).sound();
    check(sound, "formats", List.of("json"));
    assertThat(sound.log().lines()).noneMatch(line -> line.contains(said));
    Stage meant = Stage.in(folder).with(Stage.ROOT, "{\"format\": 1}");
    check(meant, "failOnNoFiles", false);
    assertThat(meant.outcome()).isEqualTo("clean\n");
    assertThat(meant.log().lines()).anyMatch(line -> line.endsWith("nothing to check in it"));
    Stage unread = Stage.in(folder).with(Stage.ROOT, "{");
    assertThatExceptionOfType(MojoFailureException.class)
        .isThrownBy(() -> check(unread, "formats", List.of("json")));
    assertThat(unread.log().lines()).noneMatch(line -> line.contains(said));
  }
}
