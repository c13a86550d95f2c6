package org.tugtest.route;

import org.tugtest.finding.Basis;

/**
 * What a wire needs at an end beyond its way along the segments.
 *
 * @param at the contact or splice, as the files write it
 * @param mm its length, 0 or more
 * @param source where the figure comes from: {@code stripMm of terminal t2.8-s}, {@code serviceMm
 *     of the format}
 */
public record Allowance(Kind kind, String at, double mm, String source, Basis basis) {

  /** What it is for. */
  public enum Kind {
    /** From the node to the connector or stud. */
    BREAKOUT("breakout"),
    /** Spare for new terminals. */
    SERVICE("spare"),
    /** What is stripped and crimped. */
    STRIP("strip");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in sentences. */
    public String word() {
      return word;
    }
  }
}
