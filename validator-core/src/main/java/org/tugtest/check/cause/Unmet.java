package org.tugtest.check.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.expect.Expectations;
import org.tugtest.expect.Lacking;
import org.tugtest.expect.Verdict;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.model.Expectation;
import org.tugtest.rule.Cause;

/** What the team expects of the volts of a load follows from what is said of the load. */
final class Unmet {
  private static final String SECTION = "expectations";
  private static final Set<Expectation.That> OF_THE_LOOM =
      Set.of(Expectation.That.ROUTES_APART, Expectation.That.LIGHTER_THAN);
  private final Facts facts;
  private final Causes causes;

  Unmet(Facts facts, Causes causes) {
    this.facts = facts;
    this.causes = causes;
  }

  /** What the expectation of a finding lacks. */
  static Optional<Lacking> of(Facts facts, Finding finding) {
    return Expectations.judge(facts).stream()
        .filter(verdict -> verdict.id().equals(finding.firstSubject().id()))
        .findFirst()
        .map(Verdict::lacking);
  }

  /** Whether a finding is of an expectation that no current has to do with. */
  static boolean isOfTheLoom(Facts facts, Finding finding) {
    Expectation expectation =
        finding.firstSubject().section().equals(SECTION)
            ? facts.harness().expectations().get(finding.firstSubject().id())
            : null;
    Expectation.That that = expectation == null ? null : expectation.that();
    return that != null && OF_THE_LOOM.contains(that);
  }

  /** Whether the state wants the load, so that what is said of the load is said of this state. */
  private boolean isWanted(Lacking.Volts volts) {
    return facts
        .operating()
        .in(volts.state())
        .filter(state -> state.wanted(volts.load()))
        .isPresent();
  }

  void link() {
    Map<String, List<Finding>> starved = new HashMap<>();
    for (Finding finding : causes.causing(Cause.LOAD_STARVED)) {
      finding
          .subjects()
          .forEach(
              each ->
                  starved.computeIfAbsent(each.place(), none -> new ArrayList<>(1)).add(finding));
    }
    if (starved.isEmpty()) {
      return;
    }
    for (Finding finding : causes.following(Cause.LOAD_STARVED)) {
      if (of(facts, finding).orElse(null) instanceof Lacking.Volts volts && isWanted(volts)) {
        starved.getOrDefault(volts.load().subject().place(), List.of()).stream()
            .filter(cause -> causes.may(finding, Cause.LOAD_STARVED, cause))
            .min(Comparator.comparing(cause -> cause.cause() != null))
            .ifPresent(cause -> causes.link(finding, cause));
      }
    }
  }
}
