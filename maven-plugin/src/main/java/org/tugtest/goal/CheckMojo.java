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
public final class CheckMojo extends GatedGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.check.skip", defaultValue = "false")
  private boolean skipCheck;

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

  /**
   * Checks the content of the next commit, as git's index holds it, instead of the files on disk.
   */
  @Parameter(property = "tugtest.staged", defaultValue = "false")
  private boolean staged;

  /**
   * What the harness is held against: a git revision such as <code>main</code> or <code>HEAD~1
   * </code>; <code>auto</code>, the commit where this branch left the one it shall be merged into,
   * as the CI system or the origin names it (<code>auto:BRANCH</code> where neither does); <code>
   * staged</code>, the content of the next commit; or <code>file:PATH</code>, another harness file
   * or a folder of them. Findings are then told as new or known, and changes of circuits are told.
   */
  @Parameter(property = "tugtest.base")
  private @Nullable String base;

  /**
   * Whether findings that the base has too let the build pass. Without a base, <code>auto</code> is
   * meant, or with <code>staged</code> the commit that the next one follows. A base without the
   * harness lets everything pass; where <code>auto</code> finds none, all findings count.
   */
  @Parameter(property = "tugtest.failOnlyNew", defaultValue = "false")
  private boolean failOnlyNew;

  /**
   * Whether a change of circuits against the base fails the build when no file in the folder <code>
   * changes</code> announces it.
   */
  @Parameter(property = "tugtest.failOnUnannounced", defaultValue = "false")
  private boolean failOnUnannounced;

  /**
   * Whether a folder without any harness file fails the build, and a harness that holds no wire, no
   * device and no connector.
   */
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
            failOn(),
            formats,
            today,
            rules,
            skipRules,
            failOnNoFiles,
            new BaseOrder(staged, null, base, failOnlyNew, failOnUnannounced),
            coverageMin,
            annotations);
    new CheckRun(around, place, order, getLog()).run();
  }
}
