package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/** A goal that tells two looms apart and how the bench makes one of the other. */
abstract class ReworkGoal extends GatedGoal {
  /**
   * Formats: <code>html</code>, <code>markdown</code>, <code>json</code>, and <code>rework</code>,
   * the sheet for the bench; all when left out.
   */
  @Parameter(property = "tugtest.formats")
  private @Nullable List<String> formats;

  /** The formats as they are written. */
  final @Nullable List<String> formats() {
    return formats;
  }
}
