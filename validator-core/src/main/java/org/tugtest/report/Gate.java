package org.tugtest.report;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.finding.Level;
import org.tugtest.rule.Coverage;

/**
 * What blocks: findings from a level on, rules that could judge too little, and changes of circuits
 * that nothing announces.
 *
 * @param from level from which on a finding blocks; null: never
 * @param coverageMin least share of its subjects that each rule has to judge, per cent; 0: any
 * @param onlyNew findings that were there before do not block. Without a baseline the age of none
 *     is known, and all block; where the baseline lacks the harness, none does
 * @param announcedOnly a change of circuits that {@code changes/} does not announce blocks
 * @param refuseEmpty a root that holds nothing counts as one that could not be checked
 */
public record Gate(
    @Nullable Level from,
    int coverageMin,
    boolean onlyNew,
    boolean announcedOnly,
    boolean refuseEmpty) {
  private static final String NEVER = "never";
  private static final int WHOLE = 100;

  public Gate {
    if (coverageMin < 0 || coverageMin > WHOLE) {
      throw new IllegalArgumentException(
          "a least coverage of " + coverageMin + " is not between 0 and 100 per cent");
    }
  }

  /** A gate that all findings and all changes of circuits meet alike. */
  public Gate(@Nullable Level from, int coverageMin) {
    this(from, coverageMin, false, false, false);
  }

  /** The gate of that word: a level or {@code never}. */
  public static Optional<Gate> of(String word) {
    return word.equals(NEVER)
        ? Optional.of(new Gate(null, 0))
        : Level.of(word).map(level -> new Gate(level, 0));
  }

  /** The same with a least coverage, 0 to 100 per cent. */
  public Gate withCoverageMin(int percent) {
    return new Gate(from, percent, onlyNew, announcedOnly, refuseEmpty);
  }

  /** The same, letting findings pass that were there before. */
  public Gate forNewOnly() {
    return new Gate(from, coverageMin, true, announcedOnly, refuseEmpty);
  }

  /** The same, letting no change of circuits pass that is not announced. */
  public Gate forAnnouncedOnly() {
    return new Gate(from, coverageMin, onlyNew, true, refuseEmpty);
  }

  /** The same, taking a root that holds nothing for one that could not be checked, or not. */
  public Gate refusingEmpty(boolean refused) {
    return new Gate(from, coverageMin, onlyNew, announcedOnly, refused);
  }

  /** The word in parameters and reports. */
  public String word() {
    return from == null ? NEVER : from.word();
  }

  /** Whether a finding of a root blocks; a waived one never does. */
  public boolean blocks(HarnessReport harness, CheckedFinding checked) {
    return from != null
        && !checked.waived()
        && checked.finding().level().atLeast(from)
        && (!onlyNew || counts(harness, checked));
  }

  private static boolean counts(HarnessReport harness, CheckedFinding checked) {
    Baseline baseline = harness.baseline();
    return baseline == null || (baseline.present() && baseline.age(checked) == Age.NEW);
  }

  /** Whether the circuits of a root change in a way that is announced nowhere and has to be. */
  public boolean blocksCircuits(HarnessReport harness) {
    Baseline baseline = harness.baseline();
    return announcedOnly
        && baseline != null
        && baseline.present()
        && !baseline.announced().complete();
  }

  /** Whether a rule judged too few of its subjects. */
  public boolean blocks(Coverage coverage) {
    return coverage.under(coverageMin);
  }
}
