package org.tugtest.facts;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.BuildRecord;
import org.tugtest.text.Place;

/**
 * One thing that was built otherwise than planned.
 *
 * @param kind what it bears on
 * @param subject what of the plan; for something added its place to be
 * @param what the deviation in a clause: {@code wire W1 was built into R1:7 instead of R1:3}
 * @param planned figure of the plan: mm2 of a size, mm of a length; null when it is not known
 * @param built the same as built
 * @param reason why it was built so; empty when nothing says
 * @param accepted the team accepts it
 * @param until last day it is accepted; null: for good
 * @param safe whether the vehicle may run with it; null: not said
 * @param told where it is told of, in words: {@code entry 3 of built/41.record.json}
 * @param at where it is told of
 */
public record Deviation(
    Kind kind,
    Subject subject,
    String what,
    @Nullable Double planned,
    @Nullable Double built,
    String reason,
    boolean accepted,
    @Nullable LocalDate until,
    BuildRecord.@Nullable Safe safe,
    String told,
    Place at) {

  /** What a deviation bears on. */
  public enum Kind {
    /** What is joined to what. */
    CONNECTION,
    /** Where something is. */
    POSITION,
    /** The size of a conductor. */
    SIZE,
    /** Any other part. */
    PART,
    /** A colour. */
    COLOUR,
    /** The length of a wire. */
    LENGTH
  }

  /** Whether both are told in the same place and bear on the same thing in the same way. */
  public boolean isThatOf(Deviation other) {
    return kind == other.kind && subject.equals(other.subject) && told.equals(other.told);
  }
}
