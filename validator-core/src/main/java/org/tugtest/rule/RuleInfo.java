package org.tugtest.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.finding.Level;

/**
 * All about a rule. Its page is made from this, reports print it, and a test runs its examples.
 *
 * @param id kebab-case name of the class
 * @param level usual level
 * @param gravest level of its gravest findings while a team sets none; the usual one or graver
 * @param summary the bad state it finds, one sentence without a full stop at the end
 * @param subjects what it judges, in the plural: {@code cavities with wires}
 * @param looksFor what exactly makes it fire
 * @param why why that matters
 * @param remedy how to put it right
 * @param basis the source of its threshold, or that it follows from the format
 * @param causes what its findings are that others follow from; in the order of {@link Cause}
 * @param follows what its findings may follow from; in the order of {@link Cause}
 * @param settings figures a team may change
 * @param failing examples in which it fires, each as {@link Example} reads them
 * @param passing examples in which it judges something and does not fire
 */
public record RuleInfo(
    String id,
    Heading heading,
    Stage stage,
    Level level,
    Level gravest,
    String summary,
    String subjects,
    String looksFor,
    String why,
    String remedy,
    String basis,
    Set<Cause> causes,
    Set<Cause> follows,
    List<Setting> settings,
    List<String> failing,
    List<String> passing) {

  public RuleInfo {
    if (!gravest.atLeast(level)) {
      throw new IllegalArgumentException(
          id + ": " + gravest.word() + " is less grave than its usual level");
    }
    causes = Collections.unmodifiableSet(ordered(causes));
    follows = Collections.unmodifiableSet(ordered(follows));
    settings = List.copyOf(settings);
    failing = List.copyOf(failing);
    passing = List.copyOf(passing);
  }

  private static Set<Cause> ordered(Set<Cause> these) {
    Set<Cause> all = EnumSet.noneOf(Cause.class);
    all.addAll(these);
    return all;
  }

  /** Begins the description of a rule. */
  public static Builder of(String id, Heading heading, Level level) {
    return new Builder(id, heading, level);
  }

  /** The setting of that name. */
  public Optional<Setting> setting(String name) {
    for (Setting setting : settings) {
      if (setting.name().equals(name)) {
        return Optional.of(setting);
      }
    }
    return Optional.empty();
  }

  /** Collects what there is to say of a rule. */
  public static final class Builder {
    private final String id;
    private final Heading heading;
    private final Level level;
    private Level gravest;
    private final Set<Cause> causes = EnumSet.noneOf(Cause.class);
    private final Set<Cause> follows = EnumSet.noneOf(Cause.class);
    private final List<Setting> settings = new ArrayList<>();
    private final List<String> failing = new ArrayList<>();
    private final List<String> passing = new ArrayList<>();
    private Stage stage = Stage.HARNESS;
    private String summary = "";
    private String subjects = "";
    private String looksFor = "";
    private String why = "";
    private String remedy = "";
    private String basis = "";

    private Builder(String id, Heading heading, Level level) {
      this.id = id;
      this.heading = heading;
      this.level = level;
      this.gravest = level;
    }

    /** When it runs; with the harness when not said. */
    public Builder stage(Stage when) {
      stage = when;
      return this;
    }

    /** The level of its gravest findings, where some are graver than usual. */
    public Builder gravest(Level most) {
      gravest = most;
      return this;
    }

    /** The bad state it finds. */
    public Builder summary(String sentence) {
      summary = sentence;
      return this;
    }

    /** What it judges, in the plural. */
    public Builder subjects(String plural) {
      subjects = plural;
      return this;
    }

    /** What exactly makes it fire. */
    public Builder looksFor(String text) {
      looksFor = text.strip();
      return this;
    }

    /** Why that matters. */
    public Builder why(String text) {
      why = text.strip();
      return this;
    }

    /** How to put it right. */
    public Builder remedy(String text) {
      remedy = text.strip();
      return this;
    }

    /** The source of its threshold. */
    public Builder basis(String text) {
      basis = text.strip();
      return this;
    }

    /** What its findings are that findings of other rules follow from. */
    public Builder causes(Cause... these) {
      causes.addAll(List.of(these));
      return this;
    }

    /** What its findings may follow from. */
    public Builder follows(Cause... these) {
      follows.addAll(List.of(these));
      return this;
    }

    /** A figure that a team may change. */
    public Builder setting(Setting setting) {
      settings.add(setting);
      return this;
    }

    /** An example in which it fires. */
    public Builder failing(String example) {
      failing.add(example);
      return this;
    }

    /** An example in which it judges something and does not fire. */
    public Builder passing(String example) {
      passing.add(example);
      return this;
    }

    /** The finished description. */
    public RuleInfo build() {
      return new RuleInfo(
          id, heading, stage, level, gravest, summary, subjects, looksFor, why, remedy, basis,
          causes, follows, settings, failing, passing);
    }
  }
}
