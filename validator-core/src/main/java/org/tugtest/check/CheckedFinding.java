package org.tugtest.check;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Finding;
import org.tugtest.model.Waiver;

/**
 * A finding and the waiver that covers it.
 *
 * @param waiver null when none does
 */
public record CheckedFinding(Finding finding, @Nullable Waiver waiver) {
  /** Whether the team accepts it. */
  public boolean waived() {
    return waiver != null;
  }
}
