package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentsGoalTest {
  private static final String LOOM =
      """
      {"format": 1, "sketch": true, "loom": {"id": "%s"},
       "wires": {"W1": {"from": "X1:1", "to": "X2:1", "areaMm2": 1}}}
      """;
  @TempDir Path folder;

  private static void documents(Stage stage, String today) throws MojoExecutionException {
    Map<String, Object> parameters = new HashMap<>();
    parameters.put("today", today);
    stage.goal(new DocumentsMojo(), parameters).run(stage.around(), stage.place());
  }

  private Path written(String path) {
    return folder.resolve("target/tugtest/documents").resolve(path);
  }

  @Test
  void writesAllAndSaysWhere() throws IOException, MojoExecutionException {
    Stage stage = Stage.in(folder).with(Stage.ROOT, LOOM.formatted("nose"));
    documents(stage, "2026-11-28");
    assertThat(written("index.html")).content().contains("2026-11-28 (tugtest.today)");
    assertThat(written("loom-nose/wire-list.csv")).exists();
    assertThat(stage.log().lines())
        .anyMatch(line -> line.matches("wrote \\d+ pages and \\d+ tables to target/.*/documents"))
        .contains("open target/tugtest/documents/index.html");
    assertThat(stage.log().warnings()).isEmpty();
  }

  @Test
  void aLoomThatIsNoMoreLeavesNoSheetAndWhatPeoplePutThereStays()
      throws IOException, MojoExecutionException {
    Stage stage = Stage.in(folder).with(Stage.ROOT, LOOM.formatted("nose"));
    documents(stage, "2026-11-28");
    Files.writeString(written("loom-nose/filled.csv"), "mine");
    stage.with(Stage.ROOT, LOOM.formatted("tail"));
    documents(stage, "2026-11-28");
    assertThat(written("loom-nose/wire-list.html")).doesNotExist();
    assertThat(written("loom-nose/filled.csv")).hasContent("mine");
    assertThat(written("loom-tail/wire-list.html")).exists();
    assertThat(stage.log().lines())
        .anyMatch(line -> line.endsWith(" that no longer apply were removed"));
  }

  @Test
  void severalRootsHaveAFolderEach() throws IOException, MojoExecutionException {
    Stage stage =
        Stage.in(folder)
            .with(Stage.ROOT, LOOM.formatted("nose"))
            .with("src/main/harness/wet/car.harness.json", LOOM.formatted("nose"));
    documents(stage, "2026-11-28");
    assertThat(written("index.html"))
        .content()
        .contains("href=\"car/index.html\"")
        .contains("href=\"wet-car/index.html\"");
    assertThat(written("wet-car/loom-nose/wire-list.html"))
        .content()
        .contains("href=\"../index.html\"");
  }

  @Test
  void aRootThatCannotBeReadStopsItAllWithThePlace() throws IOException {
    Stage stage =
        Stage.in(folder)
            .with(Stage.ROOT, LOOM.formatted("nose"))
            .with("src/main/harness/wet.harness.json", "{\"format\": 1,\n \"title\" 3}");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> documents(stage, "2026-11-28"))
        .withMessage("wet.harness.json cannot be read, so no document was written");
    assertThat(stage.log().errors()).anyMatch(line -> line.contains("wet.harness.json:2:"));
    assertThat(folder.resolve("target")).doesNotExist();
  }

  @Test
  void whatIsMissingIsWarnedOf() throws IOException, MojoExecutionException {
    Stage stage =
        Stage.in(folder)
            .with(
                Stage.ROOT,
                """
                {"format": 1, "wires": {"W1": {"from": "X:1", "to": "Y:1", "areaMm2": 1}}}
                """);
    documents(stage, "2026-11-28");
    assertThat(stage.log().warnings())
        .containsExactly("car.harness.json is not complete: 1 reference leads nowhere: wires/W1");
  }

  @Test
  void whatIsAskedForWronglyIsRefused() throws IOException {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> documents(Stage.in(folder.resolve("nothing")), "2026-11-28"))
        .withMessageStartingWith("there is no folder src/main/harness");
    Stage stage = Stage.in(folder).sound();
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> documents(stage, "soon"))
        .withMessageContaining("it takes a day");
  }
}
