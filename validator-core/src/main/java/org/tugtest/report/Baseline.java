package org.tugtest.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.AgedFinding;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;

/**
 * What a root is held against: its base, and for a merge also the other parents. A finding is known
 * when one of them has it.
 */
public final class Baseline {
  private final Comparison comparison;
  private final List<Comparison> further;
  private final Announced announced;
  private final Map<CheckedFinding, Age> ages = new HashMap<>();

  /**
   * Holds a root against these.
   *
   * @param comparison with the base
   * @param further comparisons of the same root with the other parents of a merge
   * @param announced the changes of circuits held against those announced
   */
  public Baseline(Comparison comparison, List<Comparison> further, Announced announced) {
    this.comparison = comparison;
    this.further = List.copyOf(further);
    this.announced = announced;
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

  /** The comparison with the base. */
  public Comparison comparison() {
    return comparison;
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
