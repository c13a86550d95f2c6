package org.tugtest.model;

/** What a fact rests on. */
public enum Evidence implements Word {
  /** Measured with a meter, end to end. */
  RUNG_OUT,
  /** Taken from a drawing. */
  DRAWING,
  /** Believed, not shown. */
  GUESS
}
