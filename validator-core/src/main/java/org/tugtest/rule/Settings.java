package org.tugtest.rule;

import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.RuleLimits;

/** The settings of one rule: its own figures, with what the team changed under {@code limits}. */
public final class Settings {
  private static final String OFF = "off";
  private final RuleInfo info;
  private final @Nullable RuleLimits limits;

  /**
   * The settings of a rule.
   *
   * @param limits what the team wrote for it; null: nothing
   */
  public Settings(RuleInfo info, @Nullable RuleLimits limits) {
    this.info = info;
    this.limits = limits;
  }

  /** A figure, for everything. A value that is no number or out of range counts as not written. */
  public double number(String name) {
    Setting setting = setting(name);
    return limits == null
        ? setting.standard()
        : inRange(setting, limits.settings().get(name)).orElse(setting.standard());
  }

  /** A figure at one place: what is written for the place, else for everything. */
  public double number(String name, Subject at) {
    RuleLimits.AtPlace here = limits == null ? null : limits.places().get(at.place());
    return here == null
        ? number(name)
        : inRange(setting(name), here.settings().get(name)).orElseGet(() -> number(name));
  }

  /**
   * What the team wrote for a figure: for the first of these places for which it wrote one, else
   * for everything; empty when it wrote none that is in range.
   */
  public Optional<Double> written(String name, Subject... at) {
    if (limits == null) {
      return Optional.empty();
    }
    Setting setting = setting(name);
    for (Subject place : at) {
      RuleLimits.AtPlace here = limits.places().get(place.place());
      Optional<Double> there =
          here == null ? Optional.empty() : inRange(setting, here.settings().get(name));
      if (there.isPresent()) {
        return there;
      }
    }
    return inRange(setting, limits.settings().get(name));
  }

  /** Whether the team switched the rule off. */
  public boolean off() {
    return limits != null && OFF.equals(limits.level());
  }

  /** Whether the team switched the rule off at a place. */
  public boolean offAt(Subject at) {
    RuleLimits.AtPlace here = limits == null ? null : limits.places().get(at.place());
    return here != null && OFF.equals(here.level());
  }

  /** The level of a finding: the team's for the place or the rule, else the one asked for. */
  public Level levelAt(Subject at, @Nullable Level asked) {
    RuleLimits.AtPlace here = limits == null ? null : limits.places().get(at.place());
    Optional<Level> written = here == null ? Optional.empty() : level(here.level());
    return written
        .or(() -> limits == null ? Optional.empty() : level(limits.level()))
        .orElse(asked == null ? info.level() : asked);
  }

  /** The gravest level that a finding of the rule can have, with what the team wrote for it. */
  public Level gravest() {
    if (limits == null) {
      return info.gravest();
    }
    Level everywhere = level(limits.level()).orElse(info.gravest());
    return limits.places().values().stream()
        .flatMap(here -> level(here.level()).stream())
        .filter(there -> there.atLeast(everywhere))
        .min(Comparator.naturalOrder())
        .orElse(everywhere);
  }

  private static Optional<Level> level(@Nullable String word) {
    return word == null ? Optional.empty() : Level.of(word);
  }

  private Setting setting(String name) {
    return info.setting(name)
        .orElseThrow(() -> new IllegalArgumentException(info.id() + " has no setting " + name));
  }

  private static Optional<Double> inRange(Setting setting, @Nullable Object written) {
    if (!(written instanceof Number number)) {
      return Optional.empty();
    }
    double value = number.doubleValue();
    return value >= setting.least() && value <= setting.greatest()
        ? Optional.of(value)
        : Optional.empty();
  }
}
