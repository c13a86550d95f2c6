package org.tugtest.compare;

import org.tugtest.check.CheckedFinding;

/** A finding after and whether it was there before. */
public record AgedFinding(CheckedFinding checked, Age age) {
  /** Whether it stands and was not there before. */
  public boolean isNewAndStands() {
    return age == Age.NEW && !checked.waived();
  }
}
