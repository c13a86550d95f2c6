package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.compare.entry.Renames;
import org.tugtest.text.NaturalOrder;

/** The things of one section while they are matched: each at most once on each side. */
final class SectionMatch {
  private final String section;
  private final Map<String, Match> byBefore = new HashMap<>();
  private final Map<String, Match> byAfter = new HashMap<>();
  private final Set<String> before = new LinkedHashSet<>();
  private final Set<String> after = new LinkedHashSet<>();

  /** Nothing is matched yet; the ids come in natural order. */
  SectionMatch(String section, Collection<String> before, Collection<String> after) {
    this.section = section;
    this.before.addAll(before);
    this.after.addAll(after);
  }

  /** Matches two things that are not matched yet. */
  void match(String one, String other, String why) {
    if (!before.remove(one) || !after.remove(other)) {
      throw new IllegalStateException(section + ": " + one + " or " + other + " is matched twice");
    }
    Match match = new Match(section, one, other, why);
    byBefore.put(one, match);
    byAfter.put(other, match);
  }

  boolean isFree(String one, String other) {
    return before.contains(one) && after.contains(other);
  }

  boolean isFreeBefore(String id) {
    return before.contains(id);
  }

  boolean isFreeAfter(String id) {
    return after.contains(id);
  }

  /** What is not matched, a copy, in natural order. */
  List<String> freeBefore() {
    return new ArrayList<>(before);
  }

  List<String> freeAfter() {
    return new ArrayList<>(after);
  }

  /** Ids that are free on both sides. */
  List<String> freeOnBoth() {
    return before.stream().filter(after::contains).toList();
  }

  Optional<Match> ofBefore(String id) {
    return Optional.ofNullable(byBefore.get(id));
  }

  Optional<Match> ofAfter(String id) {
    return Optional.ofNullable(byAfter.get(id));
  }

  /** In natural order of the ids before. */
  List<Match> matches() {
    List<Match> matches = new ArrayList<>(byBefore.values());
    matches.sort(Comparator.comparing(Match::before, NaturalOrder.NATURAL));
    return matches;
  }

  /**
   * The other id of each thing that has one; what is gone while its id lives on has one that no
   * thing can have.
   */
  Map<String, String> forward() {
    Map<String, String> ids = new HashMap<>();
    for (Match match : byBefore.values()) {
      if (match.renamed()) {
        ids.put(match.before(), match.after());
      }
    }
    for (String id : before) {
      if (byAfter.containsKey(id) || after.contains(id)) {
        ids.put(id, Renames.gone(id));
      }
    }
    return ids;
  }
}
