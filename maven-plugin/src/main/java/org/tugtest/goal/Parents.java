package org.tugtest.goal;

import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/** The two sides of a merge, as they were named. */
record Parents(String ours, String theirs) {

  /** Both or none; with both there is no place for a base, which git knows. */
  static @Nullable Parents of(@Nullable String ours, @Nullable String theirs, @Nullable String base)
      throws MojoExecutionException {
    String mine = ours == null ? "" : ours.strip();
    String other = theirs == null ? "" : theirs.strip();
    if (mine.isEmpty() && other.isEmpty()) {
      return null;
    }
    if (mine.isEmpty() || other.isEmpty()) {
      throw new MojoExecutionException(
          "tugtest.ours and tugtest.theirs belong together; name both sides of the merge");
    }
    if (base != null && !base.isBlank()) {
      throw new MojoExecutionException(
          "tugtest.base has no place beside tugtest.ours and tugtest.theirs: the base of a merge is"
              + " the commit at which they part");
    }
    return new Parents(mine, other);
  }
}
