package org.tugtest.check;

import java.util.Optional;
import java.util.Set;

/**
 * Which rules shall run.
 *
 * @param only ids of the rules to run; empty: all
 * @param skip ids of rules not to run
 */
public record Selection(Set<String> only, Set<String> skip) {
  /** All rules. */
  public static final Selection ALL = new Selection(Set.of(), Set.of());

  public Selection {
    only = Set.copyOf(only);
    skip = Set.copyOf(skip);
  }

  /** Why a rule shall not run, if it shall not. */
  Optional<String> whyNot(String rule) {
    if (skip.contains(rule)) {
      return Optional.of("skipped by tugtest.skipRules");
    }
    return only.isEmpty() || only.contains(rule)
        ? Optional.empty()
        : Optional.of("not among tugtest.rules");
  }
}
