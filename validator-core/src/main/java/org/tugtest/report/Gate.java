package org.tugtest.report;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Level;

/**
 * From which level on a finding blocks.
 *
 * @param from null: never
 */
public record Gate(@Nullable Level from) {
  private static final String NEVER = "never";

  /** The gate of that word: a level or {@code never}. */
  public static Optional<Gate> of(String word) {
    return word.equals(NEVER) ? Optional.of(new Gate(null)) : Level.of(word).map(Gate::new);
  }

  /** The word in parameters and reports. */
  public String word() {
    return from == null ? NEVER : from.word();
  }

  /** Whether a finding blocks; a waived one never does. */
  public boolean blocks(CheckedFinding checked) {
    return from != null && !checked.waived() && checked.finding().level().atLeast(from);
  }
}
