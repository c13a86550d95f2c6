package org.tugtest.facts;

import java.util.Map;

/**
 * The rules that there are, so that what {@code limits} and {@code waivers} name can be checked.
 *
 * @param settings the settings of each rule with their ranges, by rule id and setting name
 */
public record KnownRules(Map<String, Map<String, Range>> settings) {
  /** No rules are known: nothing can be said of what is named. */
  public static final KnownRules NONE = new KnownRules(Map.of());

  public KnownRules {
    settings = Map.copyOf(settings);
  }

  /** The values a setting may have. */
  public record Range(double least, double greatest, String unit) {}
}
