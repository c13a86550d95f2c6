package org.tugtest.bench.ringout;

import org.tugtest.finding.Subject;

/**
 * A fault that the list cannot show.
 *
 * @param what a wire whose break, or a thing whose touching another, stays unseen
 * @param fault which of the two
 * @param why in a few words
 */
public record Blind(Subject what, Fault fault, String why) {

  /** What can be wrong with a net. */
  public enum Fault {
    /** A way is broken. */
    OPEN,
    /** Two nets touch. */
    JOINED
  }
}
