package org.tugtest.rule.built;

import org.tugtest.model.Harness;
import org.tugtest.network.Point;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/**
 * Where a reading between two points turns from good to bad: the settings of the rules {@code
 * reading-open}, {@code reading-high} and {@code reading-joined} at the first point, in ohms.
 *
 * @param openOhms from here on points that should be joined are open
 * @param high how far over the computed resistance a reading may lie
 * @param joinedOhms under this points that should be apart are joined
 * @param insulationOhms the same for a reading of insulation
 */
public record ReadingBounds(
    double openOhms, ReadingLimit high, double joinedOhms, double insulationOhms) {

  /** The bounds for readings that are written from this point. */
  public static ReadingBounds of(Harness harness, Point from) {
    return new ReadingBounds(
        settings(harness, new ReadingOpen()).number("ohms", from.subject()),
        new ReadingLimit(
            settings(harness, new ReadingHigh()).number("percent", from.subject()),
            settings(harness, new ReadingHigh()).number("ohms", from.subject())),
        settings(harness, new ReadingJoined()).number("ohms", from.subject()),
        settings(harness, new ReadingJoined()).number("insulationOhms", from.subject()));
  }

  private static Settings settings(Harness harness, Rule rule) {
    RuleInfo info = rule.info();
    return new Settings(info, harness.limits().get(info.id()));
  }
}
