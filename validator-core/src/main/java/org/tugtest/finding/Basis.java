package org.tugtest.finding;

import java.util.Locale;

/** What the weakest figure of a finding rests on; the first constant is the surest. */
public enum Basis {
  /** Written in the harness files, or follows from them alone. */
  GIVEN,
  /** A published source that was read. */
  SOURCE,
  /** A published source as restated elsewhere. */
  SECONDARY,
  /** Computed from figures of the other kinds. */
  DERIVED,
  /** The trade does it; no document. */
  COMMON_PRACTICE,
  /** Remembered, not read: at most a warning. */
  MEMORY;

  /** The word in reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The gravest level that a finding on this basis may have. */
  public Level gravest() {
    return this == MEMORY ? Level.WARNING : Level.ERROR;
  }

  /** The weaker of the two. */
  public Basis weaker(Basis other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
