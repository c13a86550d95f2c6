package org.tugtest.check;

/** A rule that did not run, and why. */
public record NotRun(String rule, String why) {
  /** Why the rules on the loom as built do not run where only the plan is checked. */
  public static final String NOTHING_BUILT =
      "no record and no reading of the loom as built is given";

  /** Whether it is as it should be: nothing was asked of the rule. */
  public boolean expected() {
    return why.equals(NOTHING_BUILT);
  }
}
