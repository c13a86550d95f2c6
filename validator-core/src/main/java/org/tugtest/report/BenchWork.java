package org.tugtest.report;

import java.util.List;
import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.rework.Matching;
import org.tugtest.bench.rework.Order;
import org.tugtest.bench.rework.Rework;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;

/**
 * What a change asks of the bench.
 *
 * @param putsBack whether the steps make the loom as built into the planned one, not the loom of
 *     the base into this one
 * @param way what the steps lead from, and what to
 * @param left what stays otherwise than planned since it is accepted, each a sentence
 * @param rework the steps that make the loom of the base into this one, one connector at a time
 * @param retest what is measured and tried again after them: what the change touched, no more
 */
public record BenchWork(
    boolean putsBack, Comparison way, List<String> left, Rework rework, Retest retest) {
  public BenchWork {
    left = List.copyOf(left);
  }

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
        comparison,
        List.of(),
        Rework.of(before, after, matching, Order.BY_CONNECTOR),
        Retest.of(before, after, matching));
  }

  /**
   * The work that puts a loom as built right.
   *
   * @param wanted the plan with what stays as it was built
   * @param left what stays since it is accepted, each a sentence
   */
  static BenchWork back(Snapshot built, Snapshot wanted, List<String> left) {
    Comparison way = Comparison.of(/* before= */ built, /* after= */ wanted);
    Matching matching = Matching.of(way.matches());
    return new BenchWork(
        true,
        way,
        left,
        Rework.back(built.facts(), wanted.facts(), matching, Order.BY_CONNECTOR),
        Retest.of(built.facts(), wanted.facts(), matching));
  }
}
