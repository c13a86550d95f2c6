package org.tugtest.rule.protection;

/** Reasons that several rules give for not judging something. */
final class Unjudged {
  static final String NO_SOURCE = "no source is described";
  static final String TOO_MANY = "more positions of switches than can be tried";

  private Unjudged() {}
}
