package org.tugtest.rule;

import org.tugtest.facts.Facts;

/**
 * One check of a harness. A rule is a final class without state; everything about it, its page
 * included, stands in its file. Rules run side by side on several threads. It says of every subject
 * that it is fine, that there is a finding, or that it could not be judged and why.
 */
public interface Rule {
  /** What it is called, looks for and rests on. */
  RuleInfo info();

  /**
   * Judges a harness.
   *
   * @param facts what is read and computed
   * @param settings its settings, with what the team changed
   * @param ledger where it says what it found of each subject
   */
  void judge(Facts facts, Settings settings, Ledger ledger);
}
