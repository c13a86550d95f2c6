package org.tugtest.report;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What was checked, in the words of git. An input of the report: reports carry no clock.
 *
 * @param commit full id of the commit; null outside git or before the first one
 * @param dirty the files differ from that commit
 * @param today the day waivers were held against
 * @param todayFrom where that day comes from, in words
 */
public record Revision(@Nullable String commit, boolean dirty, LocalDate today, String todayFrom) {
  private static final int SHORT = 7;

  /** {@code abc1234}, {@code uncommitted, on top of abc1234}, or {@code not in git}. */
  public String shown() {
    if (commit == null) {
      return "not in git";
    }
    String id = commit.length() > SHORT ? commit.substring(0, SHORT) : commit;
    return dirty ? "uncommitted, on top of " + id : id;
  }
}
