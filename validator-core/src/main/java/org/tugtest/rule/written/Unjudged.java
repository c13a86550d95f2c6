package org.tugtest.rule.written;

/** Why the rules on what is written cannot judge something. */
final class Unjudged {
  /** What is not there may stand in that file. */
  static final String UNREAD = "a file of this harness could not be read";

  /** What a wire ends on has a finding of its own. */
  static final String UNKNOWN_END = "its end names nothing that is known";

  /** What is wrong has a finding of its own. */
  static final String MISREAD = "a field of it is not written rightly";

  private Unjudged() {}
}
