package org.tugtest.report;

import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.rework.Matching;
import org.tugtest.bench.rework.Order;
import org.tugtest.bench.rework.Rework;
import org.tugtest.compare.Comparison;

/**
 * What a change asks of the bench.
 *
 * @param putsBack whether the steps make the loom as built into the planned one, not the loom of
 *     the base into this one
 * @param rework the steps that make the loom of the base into this one, one connector at a time
 * @param retest what is measured and tried again after them: what the change touched, no more
 */
public record BenchWork(boolean putsBack, Rework rework, Retest retest) {
  /** The work between two revisions; near linear in their size. */
  static BenchWork of(Comparison comparison) {
    return of(comparison, Matching.of(comparison.matches()));
  }

  /** The same when it is known what becomes of what. */
  public static BenchWork of(Comparison comparison, Matching matching) {
    var before = comparison.before().facts();
    var after = comparison.after().facts();
    return new BenchWork(
        false,
        Rework.of(before, after, matching, Order.BY_CONNECTOR),
        Retest.of(before, after, matching));
  }

  /** The work that makes a loom as built into the planned one, which is the base. */
  static BenchWork back(Comparison comparison) {
    BenchWork work =
        of(Comparison.of(/* before= */ comparison.after(), /* after= */ comparison.before()));
    return new BenchWork(true, work.rework(), work.retest());
  }
}
