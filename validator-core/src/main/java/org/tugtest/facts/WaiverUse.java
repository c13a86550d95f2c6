package org.tugtest.facts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.finding.Subject;

/**
 * What the waivers did in this check, for the rules that judge waivers.
 *
 * @param covered how many findings each waiver covers, by its id; waivers that cover none are left
 *     out
 * @param ran ids of the rules that ran
 * @param unjudged ids of the waivers whose rule ran but could not judge their place
 * @param found the first subjects of what each rule found, by its id
 */
public record WaiverUse(
    Map<String, Integer> covered,
    Set<String> ran,
    Set<String> unjudged,
    Map<String, List<Subject>> found) {
  /** Nothing has been checked yet. */
  public static final WaiverUse NONE = new WaiverUse(Map.of(), Set.of(), Set.of(), Map.of());

  public WaiverUse {
    covered = Map.copyOf(covered);
    ran = Set.copyOf(ran);
    unjudged = Set.copyOf(unjudged);
    Map<String, List<Subject>> lists = new LinkedHashMap<>();
    found.forEach((rule, subjects) -> lists.put(rule, List.copyOf(subjects)));
    found = Map.copyOf(lists);
  }

  /** The first subjects of what a rule found. */
  public List<Subject> foundBy(String rule) {
    return found.getOrDefault(rule, List.of());
  }
}
