package org.tugtest.check;

/** A rule that did not run, and why. */
public record NotRun(String rule, String why) {
  /** Why the rules on the loom as built do not run where only the plan is checked. */
  public static final String NOTHING_BUILT =
      "no record and no reading of the loom as built is given";

  /** Why a rule does not run that cannot find anything as grave as was asked for. */
  public static final String NOT_SO_GRAVE = "it finds nothing as grave as was asked for";

  /** Whether it is as it should be: nothing was asked of the rule. */
  public boolean expected() {
    return why.equals(NOTHING_BUILT) || why.equals(NOT_SO_GRAVE);
  }
}
