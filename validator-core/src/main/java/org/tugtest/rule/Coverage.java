package org.tugtest.rule;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.finding.Subject;

/**
 * How many subjects a rule judged, and which it could not judge for which reason.
 *
 * @param rule id of the rule
 * @param noun what it judges, in the plural
 * @param judged subjects that are fine or have a finding
 * @param missing reason to subjects, both sorted
 */
public record Coverage(String rule, String noun, int judged, Map<String, List<Subject>> missing) {

  public Coverage {
    missing = Collections.unmodifiableMap(new TreeMap<>(missing));
  }

  /** All subjects of the rule, judged or not. */
  public int subjects() {
    return judged + notJudged();
  }

  /** Whether a subject is among those that could not be judged. */
  public boolean lacks(Subject subject) {
    return missing.values().stream().anyMatch(subjects -> subjects.contains(subject));
  }

  /** Subjects that could not be judged. */
  public int notJudged() {
    return missing.values().stream().mapToInt(List::size).sum();
  }

  /**
   * Whether less than {@code percent} of the subjects were judged. Subjects at which the team
   * switched the rule off do not count.
   */
  public boolean under(int percent) {
    int off = missing.getOrDefault(Ledger.OFF_HERE, List.of()).size();
    return 100L * judged < (long) percent * (subjects() - off);
  }

  /** The coverage for sets of subjects. */
  static Coverage of(String rule, String noun, int judged, Map<String, Set<Subject>> reasons) {
    Map<String, List<Subject>> lists = new TreeMap<>();
    reasons.forEach((reason, subjects) -> lists.put(reason, subjects.stream().sorted().toList()));
    return new Coverage(rule, noun, judged, lists);
  }
}
