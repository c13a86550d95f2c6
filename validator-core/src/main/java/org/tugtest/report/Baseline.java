package org.tugtest.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.AgedFinding;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.compare.cause.LeastCause;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.finding.Finding;

/**
 * What a root is held against: its base, and for a merge also the other parents. A finding is known
 * when one of them has it.
 */
public final class Baseline {
  private final Comparison comparison;
  private final List<Comparison> further;
  private final Announced announced;
  private final Map<Finding, LeastCause> causes;
  private final List<Meeting> meetings;
  private final Map<CheckedFinding, Age> ages = new HashMap<>();
  private final @Nullable Target target;
  private @Nullable BenchWork work;

  /**
   * What a loom as built is put right to.
   *
   * @param wanted the plan with what stays as it was built
   * @param accepted what stays since it is accepted, each a sentence
   */
  private record Target(Snapshot wanted, List<String> accepted) {}

  /**
   * Holds a root against these.
   *
   * @param comparison with the base
   * @param further comparisons of the same root with the other parents of a merge
   * @param announced the changes of circuits held against those announced
   */
  public Baseline(Comparison comparison, List<Comparison> further, Announced announced) {
    this(comparison, further, announced, Map.of(), List.of(), null);
  }

  /**
   * Holds a loom as built against its plan.
   *
   * @param wanted what it is put right to: the plan with what stays as it was built
   * @param accepted what stays since it is accepted, each a sentence
   */
  static Baseline plan(Comparison comparison, Snapshot wanted, List<String> accepted) {
    Announced none = Announced.of(comparison, List.of(), List.of());
    Target target = new Target(wanted, List.copyOf(accepted));
    return new Baseline(comparison, List.of(), none, Map.of(), List.of(), target);
  }

  private Baseline(
      Comparison comparison,
      List<Comparison> further,
      Announced announced,
      Map<Finding, LeastCause> causes,
      List<Meeting> meetings,
      @Nullable Target target) {
    this.target = target;
    this.comparison = comparison;
    this.further = List.copyOf(further);
    this.announced = announced;
    this.causes = Map.copyOf(causes);
    this.meetings = List.copyOf(meetings);
    // Of two findings that are equal in all but age, the new one counts.
    for (AgedFinding aged : comparison.findings().after()) {
      ages.merge(aged.checked(), aged.age(), (one, other) -> one == Age.NEW ? one : other);
    }
    for (Comparison parent : further) {
      for (AgedFinding aged : parent.findings().after()) {
        if (aged.age() == Age.KNOWN) {
          ages.put(aged.checked(), Age.KNOWN);
        }
      }
    }
  }

  /**
   * The same with what explains new findings.
   *
   * @param becauseOf the least changes that cause a finding
   * @param met for a merge, where the changes of its parents meet
   */
  public Baseline explained(Map<Finding, LeastCause> becauseOf, List<Meeting> met) {
    return new Baseline(comparison, further, announced, becauseOf, met, target);
  }

  /** The least changes that cause a finding, when they were looked for and found. */
  public Optional<LeastCause> causeOf(Finding finding) {
    return Optional.ofNullable(causes.get(finding));
  }

  /** Findings of a merge that neither parent has, with the changes that meet in them. */
  public List<Meeting> meetings() {
    return meetings;
  }

  /** The comparison with the base. */
  public Comparison comparison() {
    return comparison;
  }

  /** What the change asks of the bench; worked out once, when it is asked for. */
  public synchronized BenchWork work() {
    BenchWork known = work;
    if (known == null) {
      known =
          target == null
              ? BenchWork.of(comparison)
              : BenchWork.back(comparison.after(), target.wanted(), target.accepted());
      work = known;
    }
    return known;
  }

  /** The comparisons with the other parents of a merge. */
  public List<Comparison> further() {
    return further;
  }

  /** The changes of circuits and what is announced. */
  public Announced announced() {
    return announced;
  }

  /** The changes of circuits that nothing announces, each a sentence. */
  public List<String> unannounced() {
    List<String> sentences = new ArrayList<>();
    announced.undeclaredNets().forEach(net -> sentences.add(net.sentence()));
    announced.undeclaredElements().forEach(element -> sentences.add(element.sentence()));
    return sentences;
  }

  /** Whether there is such a harness to be held against; without one everything is new. */
  public boolean present() {
    return comparison.before().present();
  }

  /** What people call the base. */
  public String label() {
    return comparison.before().label();
  }

  /** Whether a finding of the root was there before. */
  public Age age(CheckedFinding finding) {
    return ages.getOrDefault(finding, Age.NEW);
  }
}
