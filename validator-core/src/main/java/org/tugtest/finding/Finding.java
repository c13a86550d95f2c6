package org.tugtest.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;
import org.tugtest.text.Places;

/**
 * One bad state of the harness.
 *
 * @param rule id of the rule
 * @param level after the team's settings and the cap of its basis
 * @param kind tells findings of one rule on the same subjects apart; empty when it need not
 * @param subjects all that are involved; the first is where a person would edit
 * @param message what is wrong, one sentence with the ids in it
 * @param remedy what would put it right
 * @param measured the figure and its limit, when there is one
 * @param basis of its weakest figure
 * @param cause identity of the finding that this one follows from
 * @param state operating state it was found in (the worst), or null
 * @param details further lines, such as a path or the other members of a list
 * @param at places, the first being where a person would edit; never empty
 */
public record Finding(
    String rule,
    Level level,
    String kind,
    List<Subject> subjects,
    String message,
    String remedy,
    @Nullable Measured measured,
    Basis basis,
    @Nullable String cause,
    @Nullable String state,
    List<String> details,
    List<Place> at) {

  /** The order of every report: place, then rule, then subjects. */
  public static final Comparator<Finding> ORDER =
      Comparator.<Finding, Place>comparing(finding -> finding.at().get(0))
          .thenComparing(Finding::rule)
          .thenComparing(Finding::identity)
          .thenComparing(Finding::message);

  public Finding {
    subjects = List.copyOf(subjects);
    details = List.copyOf(details);
    at = List.copyOf(at);
    if (subjects.isEmpty() || at.isEmpty()) {
      throw new IllegalArgumentException(rule + ": a finding needs a subject and a place");
    }
  }

  /**
   * What stays the same when lines move, files are split or a level changes: rule, kind and sorted
   * subjects.
   */
  public String identity() {
    return rule
        + (kind.isEmpty() ? "" : "#" + kind)
        + subjects.stream()
            .sorted()
            .distinct()
            .map(Subject::place)
            .collect(Collectors.joining(",", "(", ")"));
  }

  /** What a waiver's {@code at} is held against. */
  public Subject firstSubject() {
    return subjects.get(0);
  }

  /** The same finding, as one that follows from another. */
  public Finding because(String identity) {
    return new Finding(
        rule, level, kind, subjects, message, remedy, measured, basis, identity, state, details,
        at);
  }

  /** The same finding with further lines. */
  public Finding with(List<String> lines) {
    List<String> all = new ArrayList<>(details);
    all.addAll(lines);
    return new Finding(
        rule, level, kind, subjects, message, remedy, measured, basis, cause, state, all, at);
  }

  /** Begins a finding on these subjects, the first being where a person would edit. */
  public static Draft on(Subject first, Subject... others) {
    return new Draft(first, others);
  }

  /** A finding while its rule writes it; the rule's id, level and places are filled in later. */
  public static final class Draft {
    private final List<Subject> subjects = new ArrayList<>();
    private final List<String> details = new ArrayList<>();
    private final List<Place> at = new ArrayList<>();
    private String kind = "";
    private String message = "";
    private String remedy = "";
    private @Nullable Level level;
    private @Nullable Measured measured;
    private Basis basis = Basis.GIVEN;
    private @Nullable String cause;
    private @Nullable String state;

    private Draft(Subject first, Subject... others) {
      subjects.add(first);
      subjects.addAll(List.of(others));
    }

    /** One more subject; one that is there already counts once. */
    public Draft and(Subject subject) {
      subjects.add(subject);
      return this;
    }

    /** Tells this apart from other findings of the rule on the same subjects. */
    public Draft kind(String word) {
      kind = word;
      return this;
    }

    /** What is wrong. */
    public Draft message(String sentence) {
      message = sentence;
      return this;
    }

    /** What would put it right. */
    public Draft remedy(String sentence) {
      remedy = sentence;
      return this;
    }

    /** Another level than the rule's usual one. */
    public Draft level(Level other) {
      level = other;
      return this;
    }

    /** The figure and its limit. */
    public Draft measured(Measured figure) {
      measured = figure;
      return this;
    }

    /** What the weakest figure rests on; what the files give, when not said. */
    public Draft basis(Basis weakest) {
      basis = weakest;
      return this;
    }

    /** The identity of the finding that this one follows from. */
    public Draft cause(@Nullable String identity) {
      cause = identity;
      return this;
    }

    /** The operating state it was found in. */
    public Draft state(@Nullable String name) {
      state = name;
      return this;
    }

    /** A further line. */
    public Draft detail(String line) {
      details.add(line);
      return this;
    }

    /** Where; without any, the places of the subjects are taken. */
    public Draft at(Place place) {
      at.add(place);
      return this;
    }

    /** The subject that a waiver's {@code at} is held against. */
    public Subject firstSubject() {
      return subjects.get(0);
    }

    /** The level this finding asks for, when it is not the rule's usual one. */
    public @Nullable Level ownLevel() {
      return level;
    }

    /** What the weakest figure rests on. */
    public Basis ownBasis() {
      return basis;
    }

    /** The finding, at the level decided for it. */
    public Finding finish(String rule, Level decided, Places places) {
      List<Place> where =
          at.isEmpty()
              ? subjects.stream().map(subject -> places.of(subject.place())).distinct().toList()
              : at;
      List<Subject> each = subjects.stream().distinct().toList();
      return new Finding(
          rule, decided, kind, each, message, remedy, measured, basis, cause, state, details,
          where);
    }
  }
}
