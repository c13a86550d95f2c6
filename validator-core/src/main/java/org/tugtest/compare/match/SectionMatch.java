package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.text.NaturalOrder;

/** The things of one section while they are matched: each at most once on each side. */
final class SectionMatch {
  private final String section;
  private final Map<String, Match> byBefore = new TreeMap<>(NaturalOrder.NATURAL);
  private final Map<String, Match> byAfter = new TreeMap<>(NaturalOrder.NATURAL);
  private final TreeSet<String> before = new TreeSet<>(NaturalOrder.NATURAL);
  private final TreeSet<String> after = new TreeSet<>(NaturalOrder.NATURAL);

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

  Collection<Match> matches() {
    return Collections.unmodifiableCollection(byBefore.values());
  }

  /** The other id of each thing before; what is gone while its id lives on has none that can be. */
  Map<String, String> forward() {
    Map<String, String> ids = new TreeMap<>(NaturalOrder.NATURAL);
    byBefore.values().forEach(match -> ids.put(match.before(), match.after()));
    for (String id : before) {
      if (byAfter.containsKey(id) || after.contains(id)) {
        ids.put(id, org.tugtest.compare.entry.Renames.gone(id));
      }
    }
    return ids;
  }
}
