package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;
import org.tugtest.base.Ground;
import org.tugtest.files.Choice;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.read.ReadLimits;

/**
 * The folders a goal works in.
 *
 * @param output folder of the reports
 */
record Workplace(Folders folders, Choice choice, Path output) {

  static Workplace of(
      Surroundings around,
      String harness,
      @Nullable List<String> libraries,
      @Nullable List<String> includes,
      @Nullable List<String> excludes,
      @Nullable String output)
      throws MojoExecutionException {
    Path reports = output == null ? around.target().resolve("tugtest") : around.resolve(output);
    List<Path> shared = given(libraries).stream().map(around::resolve).toList();
    for (Path folder : shared) {
      if (!Files.isDirectory(folder)) {
        throw new MojoExecutionException(
            "tugtest.libraryDirectories names "
                + around.show(folder)
                + ", which is no folder; correct the path or take it out");
      }
    }
    if (reports.equals(around.resolve(harness))) {
      throw new MojoExecutionException(
          "tugtest.outputDirectory is the harness folder "
              + around.show(reports)
              + "; give the reports a folder of their own, where they are not read as harness"
              + " files");
    }
    Folders folders =
        new Folders(around.resolve(harness), shared, List.of(around.target(), reports));
    return new Workplace(folders, Choice.of(given(includes), given(excludes)), reports);
  }

  private static List<String> given(@Nullable List<String> values) {
    return values == null ? List.of() : values.stream().filter(text -> !text.isBlank()).toList();
  }

  /** The files that may belong to a harness. */
  Scope scope() {
    return new Scope(folders, choice, ReadLimits.STANDARD);
  }

  /** Refuses a folder of shared parts that revisions would not have. */
  void refuseOutside(Surroundings around, Ground ground) throws MojoExecutionException {
    Optional<Path> outside = ground.outside(folders);
    if (outside.isPresent()) {
      throw new MojoExecutionException(
          "tugtest.libraryDirectories names "
              + around.show(outside.get())
              + ", which lies outside the git work tree; move it inside, so that every revision has"
              + " its own parts");
    }
  }

  /** Lists the files on disk. */
  DiskFiles files() throws MojoExecutionException {
    try {
      return DiskFiles.of(folders, choice, ReadLimits.STANDARD);
    } catch (IOException failed) {
      throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
    }
  }

  /**
   * Why there is no root in what git holds, in one sentence.
   *
   * @param there the revision or the index, and what to do
   */
  String nothingIn(Surroundings around, String there) {
    return "no file *.harness.json in "
        + around.show(folders.harness())
        + " or below"
        + patterns()
        + " is in "
        + there
        + ", or say where the harness files are with -Dtugtest.harnessDirectory=FOLDER";
  }

  /** Why there is no root, and what to type, in one sentence. */
  String nothingFound(Surroundings around) {
    String folder = around.show(folders.harness());
    if (Files.exists(folders.harness()) && !Files.isDirectory(folders.harness())) {
      return folder
          + " is no folder; say which folder holds the harness files with"
          + " -Dtugtest.harnessDirectory=FOLDER";
    }
    if (!Files.isDirectory(folders.harness())) {
      return "there is no folder "
          + folder
          + (holdsRoots(around.present())
              ? "; the present folder holds harness files: add -Dtugtest.harnessDirectory=."
              : "; make it and put a file named NAME.harness.json there, or say where the harness"
                  + " files are with -Dtugtest.harnessDirectory=FOLDER");
    }
    return "no file *.harness.json in "
        + folder
        + " or below"
        + patterns()
        + "; name the root file NAME.harness.json, or say where it is with"
        + " -Dtugtest.harnessDirectory=FOLDER";
  }

  private String patterns() {
    return choice.equals(Choice.ALL)
        ? ""
        : " that fits includes " + choice.includes() + " and excludes " + choice.excludes();
  }

  private static boolean holdsRoots(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.anyMatch(entry -> entry.toString().endsWith(".harness.json"));
    } catch (IOException notListed) {
      return false;
    }
  }
}
