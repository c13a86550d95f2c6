package org.tugtest.git;

import java.time.LocalDate;

/**
 * A commit.
 *
 * @param id in full
 * @param day when it was committed, in the committer's own time zone
 */
public record Commit(String id, LocalDate day) {
  private static final int SHORT = 7;

  /** The beginning of the id, as people quote it. */
  public String shortId() {
    return id.substring(0, Math.min(SHORT, id.length()));
  }
}
