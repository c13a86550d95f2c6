package org.tugtest.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.network.Point;
import org.tugtest.rule.load.DeadStretch;

/**
 * Which findings only follow from another, of another rule: a load is dead because a wire names a
 * pin that is not there; a wire is too warm because it carries too much. What a rule itself says of
 * its cause stands. Nothing follows from a finding that is less grave, so that no error is folded
 * under a warning.
 */
final class Causes {
  private static final Set<String> NAMES =
      Set.of("cavity-unknown", "reference-unresolved", "wire-end-open", "connector-unmated");
  private static final String ONE_SIDED = "contact-one-sided";
  private static final String EMPTY = "opposite-empty";

  /** What is too much for a wire, the one that says most first; the next follow from it. */
  private static final List<String> TOO_THIN =
      List.of(
          "gauge-under-load",
          "gauge-under-fuse",
          "return-under-fuse",
          "wire-burns-before-fuse",
          "wire-overheats");

  /** What makes all that is reckoned of the states wrong, the worst first. */
  private static final List<String> WRONG_SUPPLY =
      List.of("voltage-out-of-scope", "supply-shorted", "diode-across-supply");

  /** What is said of solved states: with a wrong supply it says nothing of the thing itself. */
  private static final List<String> OF_STATES =
      List.of(
          "contact-welds-on-inrush",
          "expectation-unmet",
          "fuse-near-rating",
          "fuse-nuisance-inrush",
          "gauge-under-load",
          "load-backfed",
          "load-unfed",
          "load-without-return",
          "material-too-cool",
          "parallel-shares-unevenly",
          "relay-chatters",
          "relay-holds-itself",
          "supply-collapses",
          "switch-overloaded",
          "terminal-overloaded",
          "voltage-drop-excessive",
          "volts-over-most",
          "volts-under-least",
          "wire-overheats");

  /** What else is held against the volts of the sources. */
  private static final List<String> OF_VOLTS =
      List.of("fuse-breaking-capacity-low", "fuse-does-not-clear", "fuse-voltage-low");

  private final Facts facts;
  private final Map<String, List<Finding>> byRule = new HashMap<>();
  private final Map<Finding, Finding> linked = new HashMap<>();

  private Causes(Facts facts, List<Finding> findings) {
    this.facts = facts;
    findings.stream()
        .sorted(Finding.ORDER)
        .forEach(each -> byRule.computeIfAbsent(each.rule(), none -> new ArrayList<>()).add(each));
  }

  /** The findings of one harness, in their order, each with what it follows from. */
  static List<CheckedFinding> linked(Facts facts, List<CheckedFinding> findings) {
    Causes causes = new Causes(facts, findings.stream().map(CheckedFinding::finding).toList());
    Set<Finding> standing =
        findings.stream()
            .filter(each -> !each.waived())
            .map(CheckedFinding::finding)
            .collect(Collectors.toSet());
    causes.slips();
    causes.wrongSupply(standing);
    causes.tooThin(standing);
    return findings.stream()
        .map(each -> new CheckedFinding(causes.of(each.finding()), each.waiver()))
        .toList();
  }

  private Finding of(Finding finding) {
    return linked.getOrDefault(finding, finding);
  }

  private List<Finding> all(String rule) {
    return byRule.getOrDefault(rule, List.of());
  }

  /** Says that a finding follows from another, unless that is said already or it is graver. */
  private void link(Finding finding, Finding cause) {
    if (finding.cause() == null
        && !cause.equals(finding)
        && cause.level().atLeast(finding.level())) {
      linked.putIfAbsent(finding, finding.because(cause.identity()));
    }
  }

  /** A source of far too many volts, or a short: one finding, and not one for every load. */
  private void wrongSupply(Set<Finding> standing) {
    for (String wrong : WRONG_SUPPLY) {
      Finding cause = all(wrong).stream().filter(standing::contains).findFirst().orElse(null);
      if (cause == null || cause.level() != Level.ERROR) {
        continue;
      }
      OF_STATES.forEach(rule -> all(rule).forEach(finding -> link(finding, cause)));
      if (wrong.equals(WRONG_SUPPLY.get(0))) {
        OF_VOLTS.forEach(rule -> all(rule).forEach(finding -> link(finding, cause)));
      }
    }
  }

  private void tooThin(Set<Finding> standing) {
    Map<Subject, List<Finding>> heads = new HashMap<>();
    for (Finding dead : all("supply-shorted")) {
      if (standing.contains(dead)) {
        dead.subjects().forEach(each -> heads.put(each, new ArrayList<>(List.of(dead))));
      }
    }
    for (String rule : TOO_THIN) {
      for (Finding finding : all(rule)) {
        List<Finding> before =
            heads.computeIfAbsent(finding.firstSubject(), none -> new ArrayList<>());
        before.stream()
            .filter(cause -> cause.level().atLeast(finding.level()))
            .findFirst()
            .ifPresent(cause -> link(finding, cause));
        before.add(finding);
      }
    }
  }

  private void slips() {
    List<Finding> loads =
        Stream.of("load-unfed", "load-without-return")
            .flatMap(rule -> all(rule).stream())
            .filter(finding -> finding.cause() == null)
            .toList();
    List<Finding> halves =
        all(ONE_SIDED).stream().filter(finding -> finding.kind().equals(EMPTY)).toList();
    List<Finding> splices = all("splice-underfilled");
    if (loads.isEmpty() && halves.isEmpty() && splices.isEmpty()) {
      return;
    }
    Map<String, List<Finding>> names = new HashMap<>();
    for (String rule : NAMES.stream().sorted().toList()) {
      for (Finding finding : all(rule)) {
        for (Subject subject : finding.subjects()) {
          names.computeIfAbsent(subject.place(), none -> new ArrayList<>(1)).add(finding);
        }
      }
    }
    List<Slips.Slip> slips = names.isEmpty() ? List.of() : new Slips(facts, names).all();
    halves(halves, slips);
    for (Finding splice : splices) {
      slips.stream()
          .filter(slip -> means(slip, splice.firstSubject()))
          .findFirst()
          .ifPresent(slip -> link(splice, slip.finding()));
    }
    for (Finding load : loads) {
      DeadStretch.of(facts, load).flatMap(dead -> cause(dead, slips)).ifPresent(c -> link(load, c));
    }
  }

  private static boolean means(Slips.Slip slip, Subject thing) {
    return slip.meant().stream().anyMatch(owner -> Subject.splice(owner).equals(thing));
  }

  /** Cavities lie empty since a wire names a wrong one, be it there or not. */
  private void halves(List<Finding> halves, List<Slips.Slip> slips) {
    Map<String, Finding> byHalf = new HashMap<>();
    for (Finding half : halves) {
      String other = empty(half).stream().map(Point::owner).findFirst().orElse("");
      int count = empty(half).size();
      List<Slips.Slip> meant = slips.stream().filter(slip -> slip.meant().contains(other)).toList();
      if (meant.size() >= count && !meant.isEmpty()) {
        link(half, meant.get(0).finding());
      }
      Finding across = byHalf.get(other);
      if (across != null && empty(across).size() == count) {
        link(half, across);
      }
      byHalf.put(half.firstSubject().id(), half);
    }
  }

  /** The cavities that a finding of one half says are empty on the other. */
  private List<Point> empty(Finding half) {
    return cavities(half).stream()
        .flatMap(at -> facts.wiring().meets(at).stream())
        .filter(opposite -> facts.wiring().endsAt(opposite).isEmpty())
        .toList();
  }

  /** The cavities among the subjects of a finding that lie in its connector. */
  private List<Point> cavities(Finding half) {
    String connector = half.firstSubject().id();
    Set<Subject> named = new HashSet<>(half.subjects());
    return facts.wiring().cavitiesOf(connector).stream()
        .map(name -> Point.cavity(connector, name))
        .filter(at -> named.contains(at.subject()))
        .toList();
  }

  private Optional<Finding> cause(DeadStretch dead, List<Slips.Slip> slips) {
    return slips.stream()
        .filter(slip -> dead.wouldEndBy(slip.from(), slip.to()))
        .map(Slips.Slip::finding)
        .findFirst()
        .or(
            () ->
                all(ONE_SIDED).stream()
                    .filter(half -> cavities(half).stream().anyMatch(dead::holds))
                    .findFirst());
  }
}
