package org.tugtest.compare.cause;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.check.RuleCatalog;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.entry.Sections;
import org.tugtest.finding.Finding;

/**
 * A merge against both its parents: what each changed against the base, and every finding that is
 * in the merge and in neither parent, with the two changes that meet. Git merges two new wires into
 * one cavity without a conflict; this does not.
 *
 * @param ours the base against ours
 * @param theirs the base against theirs
 * @param merge the base against the merge
 * @param meetings in the order of reports
 */
public record ThreeWay(
    Comparison ours, Comparison theirs, Comparison merge, List<Meeting> meetings) {
  private static final int NAMED = 4;

  public ThreeWay {
    meetings = List.copyOf(meetings);
  }

  /**
   * Looks at a merge.
   *
   * @param most trials over all findings; each builds a harness and asks one rule
   */
  public static ThreeWay of(
      Snapshot base,
      Snapshot ours,
      Snapshot theirs,
      Snapshot merge,
      RuleCatalog catalog,
      int most) {
    Comparison mine = Comparison.of(base, ours);
    Comparison other = Comparison.of(base, theirs);
    List<Finding> fresh = freshInBoth(ours, theirs, merge);
    List<Meeting> meetings =
        fresh.isEmpty() ? List.of() : new Search(mine, other, merge, catalog, most).of(fresh);
    return new ThreeWay(mine, other, Comparison.of(base, merge), meetings);
  }

  private static List<Finding> freshInBoth(Snapshot ours, Snapshot theirs, Snapshot merge) {
    Set<Finding> mine = new HashSet<>(Comparison.of(ours, merge).findings().fresh());
    return Comparison.of(theirs, merge).findings().fresh().stream().filter(mine::contains).toList();
  }

  private static final class Search {
    private final Trials trials;
    private final List<Unit> mine;
    private final List<Unit> other;
    private final Dependencies mineNeed;
    private final Dependencies otherNeed;
    private final Spots spots;
    private int left;

    Search(Comparison ours, Comparison theirs, Snapshot merge, RuleCatalog catalog, int most) {
      Map<String, Map<String, Object>> entries = Sections.of(ours.before().harness());
      this.trials = new Trials(ours.before(), entries, merge, catalog);
      this.mine = Units.of(ours, entries);
      this.other = Units.of(theirs, entries);
      this.mineNeed = new Dependencies(mine, trials.entries());
      this.otherNeed = new Dependencies(other, trials.entries());
      this.spots = new Spots(merge.facts());
      this.left = most;
    }

    List<Meeting> of(List<Finding> fresh) {
      List<Meeting> meetings = new ArrayList<>();
      for (Finding finding : fresh) {
        int share = Math.max(4, left / Math.max(1, fresh.size() - meetings.size()));
        meetings.add(left >= 4 && trials.canTry(finding) ? met(finding, share) : untried(finding));
      }
      return meetings;
    }

    /**
     * The least of theirs on top of all of ours, then the least of ours on top of all of theirs:
     * since neither parent has the finding, neither is empty.
     */
    private Meeting met(Finding finding, int most) {
      BitSet all = LeastCause.all(mine);
      BitSet allOther = LeastCause.all(other);
      if (!has(finding, all, allOther)) {
        return new Meeting(
            finding,
            List.of(),
            List.of(),
            "",
            "In the merge alone, and not by what either side changed: " + finding.message() + ".");
      }
      BitSet least =
          new Narrowing(otherNeed, set -> has(finding, all, set), most / 2)
              .least(allOther, LeastCause.likely(other, finding));
      BitSet leastMine =
          new Narrowing(mineNeed, set -> has(finding, set, allOther), most / 2)
              .least(all, LeastCause.likely(mine, finding));
      List<Change> ours = LeastCause.changes(mine, leastMine);
      List<Change> theirs = LeastCause.changes(other, least);
      String where = spots.meeting(ours, theirs, finding).orElse("");
      return new Meeting(finding, ours, theirs, where, sentence(finding, ours, theirs, where));
    }

    private boolean has(Finding finding, BitSet ours, BitSet theirs) {
      left--;
      return trials.has(trials.with(other, theirs, mine, ours), finding);
    }

    private static Meeting untried(Finding finding) {
      return new Meeting(
          finding, List.of(), List.of(), "", "In the merge alone: " + finding.message() + ".");
    }
  }

  private static String sentence(
      Finding finding, List<Change> ours, List<Change> theirs, String where) {
    return "In the merge alone: "
        + finding.message()
        + ". Ours: "
        + listed(ours)
        + " Theirs: "
        + listed(theirs)
        + (where.isEmpty() ? "" : " They meet at " + where + ".");
  }

  private static String listed(List<Change> changes) {
    String shown = String.join(" ", changes.stream().limit(NAMED).map(Change::sentence).toList());
    int more = changes.size() - NAMED;
    return more > 0 ? shown + " And " + more + " more." : shown;
  }
}
