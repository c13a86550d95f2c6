package org.tugtest.model;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a team sets for one rule.
 *
 * @param level {@code error}, {@code warning}, {@code note}, {@code off}; null: the rule's own
 * @param settings the rule's settings that the team changes: a number, text or true / false
 * @param places the same for single places
 */
public record RuleLimits(
    String rule,
    @Nullable String level,
    Map<String, Object> settings,
    Map<String, AtPlace> places) {

  public RuleLimits {
    settings = Ordered.copyOf(settings);
    places = Ordered.copyOf(places);
  }

  /** What holds at one place. */
  public record AtPlace(@Nullable String level, Map<String, Object> settings) {
    public AtPlace {
      settings = Ordered.copyOf(settings);
    }
  }
}
