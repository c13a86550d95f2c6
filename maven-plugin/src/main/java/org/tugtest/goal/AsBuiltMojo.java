package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Holds a loom as it was built against its plan: bench records (<code>*.record.json</code>),
 * continuity readings (<code>readings/*.csv</code>), or a harness file of the loom as built. Names
 * what deviates and is not accepted, what a meter contradicts, and what would explain it. It writes
 * <code>compare.html</code>, <code>compare.md</code> and <code>compare.json</code>, and for the
 * bench the steps back to the plan as <code>rework.html</code> and <code>rework.csv</code>.
 */
@Mojo(name = "as-built", requiresProject = false, threadSafe = true)
public final class AsBuiltMojo extends ReworkGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.as-built.skip", defaultValue = "false")
  private boolean skipAsBuilt;

  /** Path of the plan, a root in the harness folder; needed where there are several. */
  @Parameter(property = "tugtest.asBuilt.plan")
  private @Nullable String plan;

  /** Path of a root in the harness folder that says how everything was built. */
  @Parameter(property = "tugtest.asBuilt.harness")
  private @Nullable String harness;

  /** Patterns of the records that are taken; all of the plan when left out. */
  @Parameter(property = "tugtest.asBuilt.records")
  private @Nullable List<String> records;

  /** Patterns of the files of readings that are taken; all when left out. */
  @Parameter(property = "tugtest.asBuilt.readings")
  private @Nullable List<String> readings;

  /**
   * Whether the deviations that the records accept are written into the plan as its next revision;
   * the entries go out of the records.
   */
  @Parameter(property = "tugtest.asBuilt.accept", defaultValue = "false")
  private boolean accept;

  /**
   * The day that dates of records are held against, such as <code>2027-03-31</code>. When left out
   * it is the date of the commit that is checked, or outside git the date of the clock.
   */
  @Parameter(property = "tugtest.today")
  private @Nullable String today;

  @Override
  boolean skippedAlone() {
    return skipAsBuilt;
  }

  @Override
  void run(Surroundings around, Workplace place)
      throws MojoExecutionException, MojoFailureException {
    AsBuiltOrder order =
        new AsBuiltOrder(plan, harness, records, readings, accept, failOn(), formats(), today);
    new AsBuiltRun(around, place, order, getLog()).run();
  }
}
