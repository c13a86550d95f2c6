package org.tugtest.rule.connectors;

/** Why the rules on connectors cannot judge a subject; the same words in all of them. */
final class Unjudged {
  /** It is the doubled cavity that has to be put right; what is left in it is judged then. */
  static final String OVERFILLED = "more wires end there than its terminal takes";

  /** One half of a pair, or both, have no housing that is known. */
  static final String HOUSING = "the housing of one of the halves is not known";

  /** A field of it is written wrongly, so it counts as left out. */
  static final String MISREAD = "a field of it is not written rightly";

  /** The cavities of the halves meet otherwise than by name. */
  static final String ADAPTOR = "an adaptor's pinMap joins other cavities";

  private Unjudged() {}
}
