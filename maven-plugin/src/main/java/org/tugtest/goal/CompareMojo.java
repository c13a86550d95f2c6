package org.tugtest.goal;

import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Tells what a change means: which circuits change, what is done to which connector, which findings
 * are new, known and resolved, and what follows from it. It writes <code>compare.html</code>,
 * <code>compare.md</code> and <code>compare.json</code>, and for the bench the steps from the one
 * to the other as <code>rework.html</code> and <code>rework.csv</code>.
 */
@Mojo(name = "compare", requiresProject = false, threadSafe = true)
public final class CompareMojo extends ReworkGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.compare.skip", defaultValue = "false")
  private boolean skipCompare;

  /**
   * What is held against: a git revision, <code>auto</code>, <code>staged</code> or <code>file:PATH
   * </code>, as for the goal <code>check</code>. When left out it is <code>HEAD</code>, or the
   * commit before <code>tugtest.head</code>.
   */
  @Parameter(property = "tugtest.base")
  private @Nullable String base;

  /** The git revision that is looked at; the files on disk when left out. */
  @Parameter(property = "tugtest.head")
  private @Nullable String head;

  /**
   * One side of a merge, a git revision; needs <code>tugtest.theirs</code>. Both are held against
   * the commit at which they part, and every finding that neither has is told with the changes of
   * both that meet. The merge is what <code>tugtest.head</code> or <code>tugtest.staged</code>
   * names, else it is made without touching any file.
   */
  @Parameter(property = "tugtest.ours")
  private @Nullable String ours;

  /** The other side of a merge, a git revision. */
  @Parameter(property = "tugtest.theirs")
  private @Nullable String theirs;

  /** Looks at the content of the next commit, as git's index holds it. */
  @Parameter(property = "tugtest.staged", defaultValue = "false")
  private boolean staged;

  /** Whether findings that the base has too let the build pass. */
  @Parameter(property = "tugtest.failOnlyNew", defaultValue = "true")
  private boolean failOnlyNew;

  /**
   * Whether a change of circuits fails the build when no file in the folder <code>changes</code>
   * announces it.
   */
  @Parameter(property = "tugtest.failOnUnannounced", defaultValue = "false")
  private boolean failOnUnannounced;

  /**
   * The day that dates of waivers are held against, such as <code>2027-03-31</code>. When left out
   * it is the date of the commit that is looked at.
   */
  @Parameter(property = "tugtest.today")
  private @Nullable String today;

  @Override
  boolean skippedAlone() {
    return skipCompare;
  }

  @Override
  void run(Surroundings around, Workplace place)
      throws MojoExecutionException, MojoFailureException {
    BaseOrder order = new BaseOrder(staged, head, base, failOnlyNew, failOnUnannounced);
    new CompareRun(around, place, order, Parents.of(ours, theirs, base), getLog())
        .run(failOn(), formats(), today);
  }
}
