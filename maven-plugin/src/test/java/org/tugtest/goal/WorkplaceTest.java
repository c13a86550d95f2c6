package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkplaceTest {
  private static final String TEXT = "java.lang.String";
  @TempDir Path folder;

  private Workplace place(List<String> libraries, List<String> includes, String output)
      throws MojoExecutionException {
    return Workplace.of(
        Stage.in(folder).around(), "src/main/harness", libraries, includes, null, output);
  }

  @Test
  void reportsGoIntoTheBuildFolderUnlessTold() throws MojoExecutionException {
    assertThat(place(List.of(), List.of(), null).output())
        .isEqualTo(folder.resolve("target/tugtest"));
    assertThat(place(List.of(), List.of(), "out").output()).isEqualTo(folder.resolve("out"));
  }

  @Test
  void sharedPartsLieInAFolder() throws IOException, MojoExecutionException {
    Files.createDirectories(folder.resolve("shared"));
    assertThat(place(List.of(" ", "shared"), List.of(), null).folders().libraries())
        .containsExactly(folder.resolve("shared"));
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> place(List.of("sharde"), List.of(), null))
        .withMessage(
            "tugtest.libraryDirectories names sharde, which is no folder; correct the path or"
                + " take it out");
  }

  @Test
  void saysWhyThereIsNoRoot() throws IOException, MojoExecutionException {
    Surroundings around = Stage.in(folder).around();
    assertThat(place(List.of(), List.of(), null).nothingFound(around))
        .startsWith("there is no folder src/main/harness; make it and put a file");
    Files.writeString(folder.resolve("car.harness.json"), "{}");
    assertThat(place(List.of(), List.of(), null).nothingFound(around))
        .endsWith("the present folder holds harness files: add -Dtugtest.harnessDirectory=.");
    Files.createDirectories(folder.resolve("src/main/harness"));
    assertThat(place(List.of(), List.of("night*"), null).nothingFound(around))
        .startsWith("no file *.harness.json in src/main/harness or below that fits includes");
  }

  @Test
  void pathsAreShownAsTheyWouldBeTyped() {
    Surroundings around = Stage.in(folder).around();
    assertThat(around.show(folder)).isEqualTo(".");
    assertThat(around.show(folder.resolve("a/b"))).isEqualTo("a/b");
    assertThat(around.show(folder.resolveSibling("x"))).endsWith("/x").startsWith("/");
    assertThat(around.resolve(" a/../b ")).isEqualTo(folder.resolve("b"));
  }

  @Test
  void aMisspeltParameterIsRefusedAndAForeignOneIsNot() throws MojoExecutionException {
    KnownParameters known =
        new KnownParameters(Map.of("tugtest.failOn", TEXT, "tugtest.base", TEXT), Map.of());
    Properties defined = new Properties();
    defined.setProperty("tugtest.version", "1");
    Properties given = new Properties();
    given.setProperty("tugtest.failOn", "error");
    given.setProperty("tugtest.version", "1");
    given.setProperty("maven.failOm", "x");
    known.refuseUnknown(given, defined);
    given.setProperty("tugtest.failon", "error");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> known.refuseUnknown(given, defined))
        .withMessage("there is no parameter tugtest.failon; did you mean tugtest.failOn?");
    given.remove("tugtest.failon");
    given.setProperty("tugtest.quite-another", "");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> known.refuseUnknown(given, defined))
        .withMessageEndingWith("; the goal help lists all of them");
  }

  @Test
  void whatIsNeitherTrueNorFalseIsNotTakenForFalse() throws MojoExecutionException {
    KnownParameters known =
        new KnownParameters(
            Map.of("tugtest.staged", "boolean", "tugtest.failOn", TEXT),
            Map.of("staged", "boolean", "failOn", TEXT));
    Properties none = new Properties();
    Properties given = new Properties();
    for (String meant : List.of("true", "FALSE", " true ", "")) {
      given.setProperty("tugtest.staged", meant);
      known.refuseUnknown(given, none);
      known.refuseUnknownFields(Map.of("staged", meant, "failOn", "x"));
    }
    known.refuseUnknownFields(Map.of("staged", "${in.ci}"));
    given.setProperty("tugtest.staged", "yes");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> known.refuseUnknown(given, none))
        .withMessage("tugtest.staged is \"yes\"; it takes true or false");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> known.refuseUnknown(none, given))
        .withMessage("tugtest.staged is \"yes\"; it takes true or false");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> known.refuseUnknownFields(Map.of("staged", "1")))
        .withMessage("<staged> in the POM is \"1\"; it takes true or false");
  }

  @Test
  void aMisspeltNameInThePomIsRefused() throws MojoExecutionException {
    KnownParameters known = new KnownParameters(Map.of(), Map.of("failOn", TEXT));
    known.refuseUnknownFields(Map.of("failOn", "warning"));
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> known.refuseUnknownFields(Map.of("failon", "warning")))
        .withMessage("there is no parameter <failon> in the POM; did you mean failOn?");
  }

  @Test
  void theReportsAreNotPutAmongTheHarnessFiles() throws MojoExecutionException {
    assertThat(place(List.of(), List.of(), "src/main").output())
        .isEqualTo(folder.resolve("src/main"));
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> place(List.of(), List.of(), "src/main/harness/"))
        .withMessageStartingWith("tugtest.outputDirectory is the harness folder src/main/harness;");
  }

  @Test
  void aFileIsNoHarnessFolder() throws IOException, MojoExecutionException {
    Files.createDirectories(folder.resolve("src/main"));
    Files.writeString(folder.resolve("src/main/harness"), "{}");
    assertThat(place(List.of(), List.of(), null).nothingFound(Stage.in(folder).around()))
        .startsWith("src/main/harness is no folder; say which");
  }
}
