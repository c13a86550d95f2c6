package org.tugtest.report;

import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.rework.Matching;
import org.tugtest.bench.rework.Order;
import org.tugtest.bench.rework.Rework;
import org.tugtest.compare.Comparison;

/**
 * What a change asks of the bench.
 *
 * @param rework the steps that make the loom of the base into this one, one connector at a time
 * @param retest what is measured and tried again after them: what the change touched, no more
 */
public record BenchWork(Rework rework, Retest retest) {
  /** The work between two revisions; near linear in their size. */
  static BenchWork of(Comparison comparison) {
    Matching matching = Matching.of(comparison.matches());
    var before = comparison.before().facts();
    var after = comparison.after().facts();
    return new BenchWork(
        Rework.of(before, after, matching, Order.BY_CONNECTOR), Retest.of(before, after, matching));
  }
}
