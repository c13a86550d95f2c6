package org.tugtest.rule.built;

import org.tugtest.model.Harness;
import org.tugtest.model.RuleLimits;

/**
 * How far a reading may lie over the computed resistance: by so many per cent, and in any case by
 * so many ohms, which is what probes and leads can add.
 *
 * @param percent over the computed resistance, 0 or more
 * @param ohms over the computed resistance, 0 or more
 */
public record ReadingLimit(double percent, double ohms) {
  /**
   * 120 % of the computed resistance (a building wiring specification, as quoted), and never less
   * than 50 milliohm over it (common practice).
   */
  public static final ReadingLimit STANDARD = new ReadingLimit(20, 0.05);

  /** The rule whose settings these are. */
  static final String RULE = "reading-high";

  private static final double HUNDRED = 100;

  /** What a team set for the rule {@code reading-high}, else the standard. */
  public static ReadingLimit of(Harness harness) {
    RuleLimits limits = harness.limits().get(RULE);
    return limits == null
        ? STANDARD
        : new ReadingLimit(
            number(limits, "percent", STANDARD.percent()), number(limits, "ohms", STANDARD.ohms()));
  }

  /** The greatest reading, in ohms, for a computed resistance in ohms. */
  public double greatest(double computed) {
    return computed + Math.max(computed * percent / HUNDRED, ohms);
  }

  private static double number(RuleLimits limits, String name, double standard) {
    return limits.settings().get(name) instanceof Number number && number.doubleValue() >= 0
        ? number.doubleValue()
        : standard;
  }
}
