package org.tugtest.compare.cause;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.check.RuleCatalog;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.entry.Leaf;
import org.tugtest.compare.entry.Sections;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;

/**
 * The least set of changes that causes a new finding.
 *
 * @param changes of the comparison, in its order; empty when the files say otherwise what is no
 *     change of its own
 * @param least whether none of them can be left out; false when the trials ran out
 */
public record LeastCause(List<Change> changes, boolean least) {
  private static final BitSet NONE = new BitSet();

  public LeastCause {
    changes = List.copyOf(changes);
  }

  /**
   * The causes of the new findings of a comparison, the gravest findings first. New ids cause
   * nothing: the changes are made to the base by the ids after. What cannot be tried (what is wrong
   * with the files as written, what waivers do) and what the changes alone do not cause is left
   * out.
   *
   * @param most trials over all findings; each builds a harness and asks one rule
   */
  public static Map<Finding, LeastCause> of(Comparison comparison, RuleCatalog catalog, int most) {
    Map<Finding, LeastCause> causes = new LinkedHashMap<>();
    List<Finding> fresh =
        comparison.findings().fresh().stream()
            .sorted(Comparator.comparing(Finding::level))
            .toList();
    if (!comparison.before().present() || fresh.isEmpty()) {
      return causes;
    }
    Map<String, Map<String, Object>> entries =
        comparison.matches().renames().in(Sections.of(comparison.before().harness()));
    Trials trials = new Trials(comparison.before(), entries, comparison.after(), catalog);
    List<Unit> units = Units.of(comparison, entries);
    Dependencies dependencies = new Dependencies(units, entries);
    int left = most;
    for (Finding finding : fresh) {
      int share = Math.max(2, left / Math.max(1, fresh.size() - causes.size()));
      if (left < 2) {
        break;
      }
      if (trials.canTry(finding)) {
        int[] used = {0};
        find(finding, trials, units, dependencies, share, used)
            .ifPresent(cause -> causes.put(finding, cause));
        left -= used[0];
      }
    }
    return causes;
  }

  private static Optional<LeastCause> find(
      Finding finding,
      Trials trials,
      List<Unit> units,
      Dependencies dependencies,
      int most,
      int[] used) {
    Narrowing narrowing =
        new Narrowing(
            dependencies,
            set -> {
              used[0]++;
              return trials.has(trials.with(units, set, List.of(), NONE), finding);
            },
            most);
    BitSet all = all(units);
    BitSet likely = likely(units, finding);
    if (all.isEmpty()) {
      return Optional.empty();
    }
    BitSet least = narrowing.least(all, likely);
    if (least.equals(all) && !trials.has(trials.with(units, all, List.of(), NONE), finding)) {
      return Optional.empty();
    }
    return Optional.of(new LeastCause(changes(units, least), !narrowing.exhausted()));
  }

  static BitSet all(List<Unit> units) {
    BitSet all = new BitSet();
    all.set(0, units.size());
    return all;
  }

  static List<Change> changes(List<Unit> units, BitSet which) {
    List<Change> changes = new ArrayList<>();
    which.stream().forEach(i -> changes.addAll(units.get(i).changes()));
    return changes;
  }

  /** The units that touch what a finding speaks of. */
  static BitSet likely(List<Unit> units, Finding finding) {
    Set<String> places = new HashSet<>();
    for (Subject subject : finding.subjects()) {
      places.add(subject.place());
      places.add(owner(subject.place()));
    }
    BitSet likely = new BitSet();
    for (int i = 0; i < units.size(); i++) {
      for (Leaf leaf : units.get(i).leaves()) {
        if (places.contains(leaf.entry()) || places.contains(owner(leaf.entry()))) {
          likely.set(i);
        }
      }
    }
    return likely;
  }

  /**
   * {@code connectors/R1} of {@code connectors/R1:3}; {@code devices/FB} of {@code fitted/FB.f1}.
   */
  private static String owner(String place) {
    String plain = place.startsWith("fitted/") ? "devices/" + place.substring(7) : place;
    if (!plain.startsWith("connectors/") && !plain.startsWith("devices/")) {
      return plain;
    }
    int colon = plain.indexOf(':');
    int dot = plain.indexOf('.');
    int cut = colon < 0 ? dot : dot < 0 ? colon : Math.min(colon, dot);
    return cut < 0 ? plain : plain.substring(0, cut);
  }
}
