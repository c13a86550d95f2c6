package org.tugtest.goal;

import org.apache.maven.plugins.annotations.Parameter;

/** A goal whose findings may fail the build. */
abstract class GatedGoal extends HarnessGoal {
  /**
   * From which level on a finding fails the build: <code>error</code>, <code>warning</code>, <code>
   * note</code> or <code>never</code>.
   */
  @Parameter(property = "tugtest.failOn", defaultValue = "error")
  private String failOn;

  /** The level as it is written. */
  final String failOn() {
    return failOn;
  }
}
