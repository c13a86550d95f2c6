package org.tugtest.check;

import java.util.List;

/**
 * A rule that broke: a fault of the tool, not of the harness.
 *
 * @param what the exception's name and message
 * @param where the first lines of its stack, for a bug report
 */
public record Crash(String rule, String what, List<String> where) {
  public Crash {
    where = List.copyOf(where);
  }
}
