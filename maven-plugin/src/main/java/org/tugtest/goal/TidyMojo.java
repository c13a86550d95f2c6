package org.tugtest.goal;

import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Puts harness files into their tidy form, in place. It changes how a file is laid out, never what
 * it means; shared parts in library folders are left alone.
 */
@Mojo(name = "tidy", requiresProject = false, threadSafe = true)
public final class TidyMojo extends HarnessGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.tidy.skip", defaultValue = "false")
  private boolean skipTidy;

  /** Only tells what would change; nothing is written. */
  @Parameter(property = "tugtest.tidy.dryRun", defaultValue = "false")
  private boolean dryRun;

  /** Also writes out the connectors, cavities, pins and splices that a sketch implies. */
  @Parameter(property = "tugtest.tidy.adopt", defaultValue = "false")
  private boolean adopt;

  /** Also removes waivers that match no finding of a rule that ran. */
  @Parameter(property = "tugtest.tidy.waivers", defaultValue = "false")
  private boolean waivers;

  @Override
  boolean skippedAlone() {
    return skipTidy;
  }

  @Override
  void run(Surroundings around, Workplace place)
      throws MojoExecutionException, MojoFailureException {
    TidyRun run = TidyRun.of(around, place, getLog());
    if (adopt) {
      run.adopt();
    }
    if (waivers) {
      run.removeIdleWaivers();
    }
    run.tidy();
    run.finish(dryRun);
  }
}
