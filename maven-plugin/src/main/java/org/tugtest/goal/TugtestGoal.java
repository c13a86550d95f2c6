package org.tugtest.goal;

import org.apache.maven.execution.MavenSession;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;
import org.tugtest.fleet.ShortOfMemory;

/** What every goal does first: refuse parameters it does not know, and skip when told to. */
abstract class TugtestGoal extends AbstractMojo {
  @Parameter(defaultValue = "${project}", readonly = true, required = true)
  private MavenProject project;

  @Parameter(defaultValue = "${session}", readonly = true, required = true)
  private MavenSession session;

  @Parameter(defaultValue = "${mojoExecution}", readonly = true, required = true)
  private MojoExecution execution;

  /** Skips every goal of Tugtest. */
  @Parameter(property = "tugtest.skip", defaultValue = "false")
  private boolean skip;

  @Override
  public final void execute() throws MojoExecutionException, MojoFailureException {
    KnownParameters known = KnownParameters.of(execution);
    known.refuseUnknown(session.getUserProperties(), project.getProperties());
    known.refuseUnknownFields(PomFields.of(project, execution));
    String goal = execution.getGoal();
    if (skip || skippedAlone()) {
      getLog().info(goal + " is skipped: tugtest." + (skip ? "" : goal + ".") + "skip is true");
      return;
    }
    Surroundings around = Surroundings.of(session, project, execution);
    inMemory(() -> run(around));
  }

  /** What a goal does. */
  @FunctionalInterface
  interface Work {
    void run() throws MojoExecutionException, MojoFailureException;
  }

  /** Does it; where the heap is too small for it, the failure says what to do. */
  static void inMemory(Work work) throws MojoExecutionException, MojoFailureException {
    try {
      work.run();
    } catch (OutOfMemoryError full) {
      String told = ShortOfMemory.told(full, "MAVEN_OPTS").orElse(null);
      if (told == null) {
        throw full;
      }
      throw new MojoExecutionException(told, full);
    }
  }

  /** Whether the parameter that skips this goal alone is set. */
  abstract boolean skippedAlone();

  /** Does what the goal is for. */
  abstract void run(Surroundings around) throws MojoExecutionException, MojoFailureException;
}
