package org.tugtest.rule.written;

/** Why the rules on what is written cannot judge something. */
final class Unjudged {
  /** What a wire ends on has a finding of its own. */
  static final String UNKNOWN_END = "its end names nothing that is known";

  /** What is wrong has a finding of its own. */
  static final String MISREAD = "a field of it is not written rightly";

  private Unjudged() {}
}
