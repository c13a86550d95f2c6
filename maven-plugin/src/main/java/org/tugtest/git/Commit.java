package org.tugtest.git;

import java.time.LocalDate;

/**
 * A commit.
 *
 * @param id in full
 * @param day when it was committed, in the committer's own time zone
 */
public record Commit(String id, LocalDate day) {}
