package org.tugtest.facts;

import java.util.Map;
import java.util.Set;

/**
 * What the waivers did in this check, for the rules that judge waivers.
 *
 * @param covered how many findings each waiver covers, by its id; waivers that cover none are left
 *     out
 * @param ran ids of the rules that ran
 */
public record WaiverUse(Map<String, Integer> covered, Set<String> ran) {
  /** Nothing has been checked yet. */
  public static final WaiverUse NONE = new WaiverUse(Map.of(), Set.of());

  public WaiverUse {
    covered = Map.copyOf(covered);
    ran = Set.copyOf(ran);
  }
}
