package org.tugtest.compare;

import java.util.List;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.Changes;
import org.tugtest.compare.circuit.Circuits;
import org.tugtest.compare.match.Matches;

/**
 * What a change to a harness means: which thing is which, whether the circuits are the same, every
 * change, and the age of every finding. Immutable, and the same for the same two revisions.
 */
public final class Comparison {
  private final Snapshot before;
  private final Snapshot after;
  private final Matches matches;
  private final Circuits circuits;
  private final List<Change> changes;
  private final FindingAges findings;

  private Comparison(Snapshot before, Snapshot after) {
    this.before = before;
    this.after = after;
    this.matches = Matches.of(before.facts(), after.facts());
    this.circuits = Circuits.of(before.facts(), after.facts(), matches);
    this.changes = Changes.of(before.facts(), after.facts(), matches);
    this.findings = FindingAges.of(before.result(), after.result(), matches.renames());
  }

  /** Compares two revisions of a root; near linear in their size. */
  public static Comparison of(Snapshot before, Snapshot after) {
    return new Comparison(before, after);
  }

  /** The revision that is held against. */
  public Snapshot before() {
    return before;
  }

  /** The revision that is looked at. */
  public Snapshot after() {
    return after;
  }

  /** Which thing is which. */
  public Matches matches() {
    return matches;
  }

  /** The verdict on circuits. */
  public Circuits circuits() {
    return circuits;
  }

  /** Every change, policy first, then by connector. */
  public List<Change> changes() {
    return changes;
  }

  /** What is demanded otherwise than before. */
  public List<Change> policy() {
    return changes.stream().filter(change -> change.kind().isPolicy()).toList();
  }

  /** The age of each finding. */
  public FindingAges findings() {
    return findings;
  }
}
