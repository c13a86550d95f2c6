package org.tugtest.rule.body;

/** Why the rules on the body cannot judge a subject; the same words in all of them. */
final class Unjudged {
  /** A field of it is written wrongly, so it counts as left out. */
  static final String MISREAD = "a field of it is not written rightly";

  /** Nothing lies on the segment, as far as routes are known. */
  static final String EMPTY = "no wire is routed along it";

  /** How thick the bundle is cannot be said. */
  static final String UNSIZED = "a wire on it has no diameter";

  /** Its length is not known. */
  static final String NO_LENGTH = "it gives no length";

  /** A part that it names is not defined. */
  static final String NO_PART = "a part that it names is not defined";

  /** More may lie on it than is known. */
  static final String WAYWARD = "a wire without a route may run along it";

  private Unjudged() {}
}
