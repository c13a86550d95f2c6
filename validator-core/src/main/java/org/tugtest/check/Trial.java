package org.tugtest.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.read.ReadHarness;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.threads.ManyHands;

/**
 * What the rules would say of a harness of which some wires were made of other parts. Every rule
 * that judges the harness is run again on it, so that none is forgotten.
 */
public final class Trial {
  /** Rules on the lists of parts, which change with any wire; that is not what is asked. */
  private static final Set<String> LISTS = Set.of("part-unused", "file-unused");

  /** So much of the limit is no difference. */
  private static final double SAME = 1e-3;

  private final Facts facts;
  private final List<Rule> rules;
  private final Map<String, Map<Subject, Finding>> now = new HashMap<>();

  private Trial(Facts facts, List<Finding> found, List<Rule> rules) {
    this.facts = facts;
    this.rules = rules;
    for (Finding finding : found) {
      Map<Subject, Finding> its = now.computeIfAbsent(finding.rule(), none -> new HashMap<>());
      for (Subject subject : finding.subjects()) {
        its.merge(subject, finding, Trial::graver);
      }
    }
  }

  /**
   * A trial of a harness.
   *
   * @param found what the rules say of it as it is, whether waived or not
   * @param catalog the rules; those that are switched off or only advise are left out
   */
  public static Trial of(Facts facts, List<Finding> found, RuleCatalog catalog) {
    List<Rule> rules =
        catalog.rules().stream()
            .filter(rule -> rule.info().stage() == Stage.HARNESS)
            .filter(rule -> !LISTS.contains(rule.info().id()))
            .filter(rule -> !settings(facts, rule).off())
            .filter(rule -> settings(facts, rule).gravest().atLeast(Level.WARNING))
            .toList();
    return new Trial(facts, found, rules);
  }

  private static Settings settings(Facts facts, Rule rule) {
    RuleInfo info = rule.info();
    return new Settings(info, facts.harness().limits().get(info.id()));
  }

  private static Finding graver(Finding one, Finding other) {
    return one.level().atLeast(other.level()) ? one : other;
  }

  /**
   * The errors and warnings with these wires, in the order of the rules; empty when a rule breaks,
   * so that nothing can be said.
   *
   * @param parts the new part by the id of the wire
   */
  public Optional<List<Finding>> with(Map<String, WirePart> parts) {
    Harness harness = facts.harness();
    Map<String, Wire> wires = new LinkedHashMap<>(harness.wires());
    parts.forEach((id, part) -> wires.computeIfPresent(id, (same, wire) -> wire.ofPart(part.id())));
    ReadHarness read =
        new ReadHarness(
            harness.withWires(wires), facts.places(), List.of(), facts.texts(), facts.unread());
    Facts then = Facts.of(read, facts.today(), facts.knownRules());
    Map<Rule, Optional<List<Finding>>> said = new ConcurrentHashMap<>();
    ManyHands.all(
        rules.stream().map(rule -> (Runnable) () -> said.put(rule, said(rule, then))).toList());
    List<Finding> found = new ArrayList<>();
    for (Rule rule : rules) {
      Optional<List<Finding>> its = said.getOrDefault(rule, Optional.empty());
      if (its.isEmpty()) {
        return Optional.empty();
      }
      its.get().stream()
          .filter(finding -> finding.level().atLeast(Level.WARNING))
          .forEach(found::add);
    }
    return Optional.of(found);
  }

  /** What a rule says; empty when it breaks. */
  private static Optional<List<Finding>> said(Rule rule, Facts then) {
    Ledger ledger = new Ledger(rule.info(), settings(then, rule), then.places());
    try {
      rule.judge(then, settings(then, rule), ledger);
    } catch (RuntimeException | StackOverflowError | LinkageError | AssertionError broken) {
      return Optional.empty();
    }
    return Optional.of(ledger.findings());
  }

  /** Whether a finding of the trial is new, or graver than now, or its figure worse. */
  public boolean isWorse(Finding then) {
    Map<Subject, Finding> its = now.getOrDefault(then.rule(), Map.of());
    Finding same = its.get(then.firstSubject());
    if (same == null || !same.level().atLeast(then.level())) {
      return true;
    }
    boolean another =
        then.subjects().stream()
            .anyMatch(each -> each.section().equals("wires") && !its.containsKey(each));
    return another || worse(same.measured(), then.measured());
  }

  /** Whether a finding of the trial is there now, word for word: the other parts left it alone. */
  public boolean isUntouched(Finding then) {
    Finding same = now.getOrDefault(then.rule(), Map.of()).get(then.firstSubject());
    return same != null && same.message().equals(then.message());
  }

  private static boolean worse(@Nullable Measured before, @Nullable Measured after) {
    if (before == null || after == null || !before.unit().equals(after.unit())) {
      return false;
    }
    double more = after.actual() / after.limit() - before.actual() / before.limit();
    return (after.bound() == Measured.Bound.AT_MOST ? more : -more) > SAME;
  }
}
