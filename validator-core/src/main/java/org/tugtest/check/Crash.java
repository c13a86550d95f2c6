package org.tugtest.check;

/**
 * A rule that broke: a fault of the tool, not of the harness.
 *
 * @param what the exception's name and message
 * @param where the first lines of its stack, for a bug report
 */
public record Crash(String rule, String what, java.util.List<String> where) {
  public Crash {
    where = java.util.List.copyOf(where);
  }
}
