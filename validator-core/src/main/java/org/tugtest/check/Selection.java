package org.tugtest.check;

import java.util.Optional;
import java.util.Set;
import org.tugtest.finding.Level;

/**
 * Which rules shall run.
 *
 * @param only ids of the rules to run; empty: all
 * @param skip ids of rules not to run
 * @param from rules all of whose findings would be less grave than this do not run
 */
public record Selection(Set<String> only, Set<String> skip, Level from) {
  /** All rules. */
  public static final Selection ALL = new Selection(Set.of(), Set.of());

  /** Rules of all levels. */
  public Selection(Set<String> only, Set<String> skip) {
    this(only, skip, Level.NOTE);
  }

  public Selection {
    only = Set.copyOf(only);
    skip = Set.copyOf(skip);
  }

  /** The same without the rules that cannot find anything so grave. */
  public Selection from(Level least) {
    return new Selection(only, skip, least);
  }

  /**
   * Why a rule shall not run, if it shall not.
   *
   * @param gravest the gravest level that its findings can have
   */
  Optional<String> whyNot(String rule, Level gravest) {
    if (skip.contains(rule)) {
      return Optional.of("skipped by tugtest.skipRules");
    }
    if (!only.isEmpty() && !only.contains(rule)) {
      return Optional.of("not among tugtest.rules");
    }
    return gravest.atLeast(from) ? Optional.empty() : Optional.of(NotRun.NOT_SO_GRAVE);
  }
}
