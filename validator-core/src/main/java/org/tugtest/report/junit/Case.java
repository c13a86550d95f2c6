package org.tugtest.report.junit;

/**
 * One test case.
 *
 * @param root the class it is shown under
 * @param name rule or expectation
 * @param message of the failure, skip or error; empty when it passed
 * @param text of the failure or error; may be empty
 * @param output what else there is to say; may be empty
 */
record Case(String root, String name, Result result, String message, String text, String output) {
  /** How a case ended. */
  enum Result {
    /** Judged, and nothing blocks. */
    PASSED,
    /** Something blocks. */
    FAILED,
    /** Not run, not judged, or waived. */
    SKIPPED,
    /** The rule broke. */
    BROKEN
  }
}
