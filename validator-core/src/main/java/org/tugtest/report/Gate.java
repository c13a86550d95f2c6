package org.tugtest.report;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Coverage;

/**
 * What blocks: findings from a level on, and rules that could judge too little.
 *
 * @param from level from which on a finding blocks; null: never
 * @param coverageMin least share of its subjects that each rule has to judge, per cent; 0: any
 */
public record Gate(@Nullable Level from, int coverageMin) {
  private static final String NEVER = "never";
  private static final int WHOLE = 100;

  public Gate {
    if (coverageMin < 0 || coverageMin > WHOLE) {
      throw new IllegalArgumentException(
          "a least coverage of " + coverageMin + " is not between 0 and 100 per cent");
    }
  }

  /** The gate of that word: a level or {@code never}. */
  public static Optional<Gate> of(String word) {
    return word.equals(NEVER)
        ? Optional.of(new Gate(null, 0))
        : Level.of(word).map(level -> new Gate(level, 0));
  }

  /** The same with a least coverage, 0 to 100 per cent. */
  public Gate withCoverageMin(int percent) {
    return new Gate(from, percent);
  }

  /** The word in parameters and reports. */
  public String word() {
    return from == null ? NEVER : from.word();
  }

  /** Whether a finding blocks; a waived one never does. */
  public boolean blocks(CheckedFinding checked) {
    return from != null && !checked.waived() && checked.finding().level().atLeast(from);
  }

  /** Whether a rule judged too few of its subjects. */
  public boolean blocks(Coverage coverage) {
    return coverage.under(coverageMin);
  }
}
