package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Checks every harness in the harness folder: reads the files, runs the rules, writes the reports,
 * and fails the build as told.
 */
@Mojo(
    name = "check",
    defaultPhase = LifecyclePhase.VERIFY,
    requiresProject = false,
    threadSafe = true)
public final class CheckMojo extends HarnessGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.check.skip", defaultValue = "false")
  private boolean skipCheck;

  /**
   * From which level on a finding fails the build: <code>error</code>, <code>warning</code>, <code>
   * note</code> or <code>never</code>.
   */
  @Parameter(property = "tugtest.failOn", defaultValue = "error")
  private String failOn;

  /**
   * Formats of the reports: <code>html</code>, <code>markdown</code>, <code>sarif</code>, <code>
   * junit</code>, <code>gitlab</code>, <code>json</code>; all when left out.
   */
  @Parameter(property = "tugtest.formats")
  private @Nullable List<String> formats;

  /**
   * The day that dates of waivers are held against, such as <code>2027-03-31</code>. When left out
   * it is the date of the commit that is checked, or outside git the date of the clock.
   */
  @Parameter(property = "tugtest.today")
  private @Nullable String today;

  /** Ids of the rules to run; all when left out. */
  @Parameter(property = "tugtest.rules")
  private @Nullable List<String> rules;

  /** Ids of rules that are not run. */
  @Parameter(property = "tugtest.skipRules")
  private @Nullable List<String> skipRules;

  /** Whether a folder without any harness file fails the build. */
  @Parameter(property = "tugtest.failOnNoFiles", defaultValue = "true")
  private boolean failOnNoFiles;

  /**
   * Least share of its subjects that each rule has to judge, in per cent from 0 to 100. A rule that
   * judges less, since figures are missing, fails the build.
   */
  @Parameter(property = "tugtest.coverageMin", defaultValue = "0")
  private String coverageMin;

  /**
   * Whether findings are also told to the CI system: <code>auto</code> (where it is known by its
   * variables), <code>github</code>, <code>gitlab</code> or <code>never</code>.
   */
  @Parameter(property = "tugtest.annotations", defaultValue = "auto")
  private String annotations;

  @Override
  boolean skippedAlone() {
    return skipCheck;
  }

  @Override
  void run(Surroundings around, Workplace place)
      throws MojoExecutionException, MojoFailureException {
    CheckOrder order =
        new CheckOrder(
            failOn, formats, today, rules, skipRules, failOnNoFiles, coverageMin, annotations);
    new CheckRun(around, place, order, getLog()).run();
  }
}
