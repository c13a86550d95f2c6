package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/** A goal that reads harness files. */
abstract class HarnessGoal extends TugtestGoal {
  /**
   * Folder of the harness files; each <code>*.harness.json</code> in it or below is a root. A
   * relative path is meant from the project's folder, or from the present one without a POM.
   */
  @Parameter(property = "tugtest.harnessDirectory", defaultValue = "src/main/harness")
  private String harnessDirectory;

  /**
   * Folders of shared parts that harness files may use besides those of the harness folder. They
   * are only read. Where git is used they lie inside the work tree.
   */
  @Parameter(property = "tugtest.libraryDirectories")
  private @Nullable List<String> libraryDirectories;

  /**
   * Patterns of the files below the harness folder that are looked at, such as <code>
   * night*.harness.json</code>; all when left out. <code>*</code> is any part of a name, <code>**
   * </code> any folders. A file that another one uses is read whether it fits or not.
   */
  @Parameter(property = "tugtest.includes")
  private @Nullable List<String> includes;

  /** Patterns of files that are not looked at, written like the includes. */
  @Parameter(property = "tugtest.excludes")
  private @Nullable List<String> excludes;

  /** Folder of the reports; <code>tugtest</code> in the build folder when left out. */
  @Parameter(property = "tugtest.outputDirectory")
  private @Nullable String outputDirectory;

  @Override
  final void run(Surroundings around) throws MojoExecutionException, MojoFailureException {
    run(
        around,
        Workplace.of(
            around, harnessDirectory, libraryDirectories, includes, excludes, outputDirectory));
  }

  /** Does what the goal is for. */
  abstract void run(Surroundings around, Workplace place)
      throws MojoExecutionException, MojoFailureException;
}
