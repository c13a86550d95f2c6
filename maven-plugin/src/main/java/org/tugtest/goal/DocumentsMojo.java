package org.tugtest.goal;

import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Writes what people take to bench and track: lists and sheets that print on A4, with their tables
 * as CSV, into the folder <code>documents</code> of the reports. Open <code>index.html</code>
 * there.
 */
@Mojo(name = "documents", requiresProject = false, threadSafe = true)
public final class DocumentsMojo extends HarnessGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.documents.skip", defaultValue = "false")
  private boolean skipDocuments;

  /** The git revision that the documents are made of; the files on disk when left out. */
  @Parameter(property = "tugtest.head")
  private @Nullable String head;

  /**
   * The day that stands on the documents, such as <code>2027-03-31</code>. When left out it is the
   * date of the commit, or outside git the date of the clock.
   */
  @Parameter(property = "tugtest.today")
  private @Nullable String today;

  @Override
  boolean skippedAlone() {
    return skipDocuments;
  }

  @Override
  void run(Surroundings around, Workplace place) throws MojoExecutionException {
    new DocumentsRun(around, place, new BaseOrder(false, head, null, false, false), getLog())
        .run(today == null ? null : Words.day("tugtest.today", today));
  }
}
