package org.tugtest.base;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.HarnessFiles;
import org.tugtest.git.Commit;

/** What a check is held against. */
public sealed interface Against {

  /**
   * Sides that were found. A finding is known when one of them has it.
   *
   * @param base what changes are counted from
   * @param further parents of a merge besides the base
   * @param fork where the two parents of a merge come from; null when there are not two
   */
  record Sides(Side base, List<Side> further, @Nullable Fork fork) implements Against {
    public Sides {
      further = List.copyOf(further);
    }

    /** One side alone. */
    public Sides(Side base) {
      this(base, List.of(), null);
    }
  }

  /**
   * Two branches and the commit at which they part.
   *
   * @param origin that commit
   */
  record Fork(Side origin, Side ours, Side theirs) {}

  /**
   * Nothing, since there is nothing yet to be held against: everything is new, and passes.
   *
   * @param note why, a sentence without a full stop
   */
  record Nothing(String note) implements Against {}

  /** No base was asked for. */
  record Unasked() implements Against {}

  /**
   * Unknown: all findings count, whatever their age.
   *
   * @param note why, a sentence without a full stop
   */
  record Unfound(String note) implements Against {}

  /**
   * A harness to be held against.
   *
   * @param shown what a person calls it
   * @param commit null when it is no commit
   * @param root path of the one root that is meant; null: all
   */
  record Side(String shown, HarnessFiles files, @Nullable Commit commit, @Nullable String root) {}
}
