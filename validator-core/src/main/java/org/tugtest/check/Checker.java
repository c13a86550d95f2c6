package org.tugtest.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.tugtest.check.cause.Causes;
import org.tugtest.expect.Expectations;
import org.tugtest.facts.Facts;
import org.tugtest.facts.WaiverUse;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.threads.ManyHands;

/**
 * Runs the rules on one harness: those about waivers one by one after all others, which run side by
 * side. A rule that breaks does not stop the others.
 */
public final class Checker {
  private static final int STACK_LINES = 8;

  /** Headings whose rules mostly read what is written come before those that need solved states. */
  private static final List<Heading> TURNS =
      List.of(
          Heading.CONNECTORS,
          Heading.BODY,
          Heading.PROTECTION,
          Heading.BUILT,
          Heading.WRITTEN,
          Heading.LOAD);

  private final RuleCatalog catalog;
  private final Selection selection;

  /** A checker for the selected rules of a catalogue. */
  public Checker(RuleCatalog catalog, Selection selection) {
    this.catalog = catalog;
    this.selection = selection;
  }

  /** Checks one harness. */
  public CheckResult check(Facts facts) {
    Run run = new Run(facts);
    run.all(catalog.rules().stream().filter(rule -> !isLast(rule)).toList());
    catalog.rules().stream().filter(Checker::isLast).forEach(rule -> run.all(List.of(rule)));
    return run.result(catalog);
  }

  private static boolean isLast(Rule rule) {
    return rule.info().stage() == Stage.WAIVERS;
  }

  /**
   * The order in which rules are begun: one that solves the circuits, which takes longest, then
   * those that do not wait for it.
   */
  private static List<Rule> begun(List<Rule> rules) {
    List<Rule> order = new ArrayList<>(rules);
    order.sort(Comparator.comparingInt(rule -> TURNS.indexOf(rule.info().heading())));
    Optional<Rule> first =
        rules.stream().filter(rule -> rule.info().heading() == Heading.LOAD).findFirst();
    first.ifPresent(
        rule -> {
          order.remove(rule);
          order.add(0, rule);
        });
    return order;
  }

  /** What came of a rule. */
  private sealed interface Outcome {
    /** It was left out. */
    record Left(NotRun why) implements Outcome {}

    /** It broke. */
    record Broke(Crash crash) implements Outcome {}

    /** It judged. */
    record Judged(Ledger ledger) implements Outcome {}
  }

  private final class Run {
    private final Facts facts;
    private final Waivers waivers;
    private final List<CheckedFinding> findings = new ArrayList<>();
    private final Map<String, Coverage> coverage = new HashMap<>();
    private final Map<String, NotRun> notRun = new HashMap<>();
    private final List<Crash> crashes = new ArrayList<>();
    private final Map<String, Integer> covered = new HashMap<>();

    Run(Facts facts) {
      this.facts = facts;
      this.waivers = Waivers.of(facts.harness().waivers().values(), facts.today());
    }

    /** Runs rules side by side and takes in what came of them in their own order. */
    void all(List<Rule> rules) {
      Map<Rule, Outcome> outcomes = new ConcurrentHashMap<>();
      ManyHands.all(
          begun(rules).stream()
              .map(rule -> (Runnable) () -> outcomes.put(rule, outcome(rule)))
              .toList());
      for (Rule rule : rules) {
        String id = rule.info().id();
        Outcome outcome = Objects.requireNonNull(outcomes.get(rule));
        if (outcome instanceof Outcome.Left left) {
          notRun.put(id, left.why());
        } else if (outcome instanceof Outcome.Broke broke) {
          crashes.add(broke.crash());
        } else if (outcome instanceof Outcome.Judged judged) {
          coverage.put(id, judged.ledger().coverage());
          judged.ledger().findings().forEach(this::add);
        }
      }
    }

    private Outcome outcome(Rule rule) {
      RuleInfo info = rule.info();
      Settings settings = new Settings(info, facts.harness().limits().get(info.id()));
      Optional<String> why = whyNot(info, settings);
      if (why.isPresent()) {
        return new Outcome.Left(new NotRun(info.id(), why.get()));
      }
      Ledger ledger = new Ledger(info, settings, facts.places());
      try {
        rule.judge(view(info), settings, ledger);
      } catch (RuntimeException | StackOverflowError | LinkageError | AssertionError broken) {
        return new Outcome.Broke(crash(info.id(), broken));
      }
      return new Outcome.Judged(ledger);
    }

    private Optional<String> whyNot(RuleInfo info, Settings settings) {
      if (info.stage() != Stage.READING && facts.unread().contains(facts.harness().root())) {
        return Optional.of("the root file could not be read");
      }
      if (settings.off()) {
        return Optional.of("switched off under limits");
      }
      boolean untold = info.stage() == Stage.BUILT && facts.asBuilt().isEmpty();
      return selection
          .whyNot(info.id(), settings.gravest())
          .or(() -> untold ? Optional.of(NotRun.NOTHING_BUILT) : Optional.empty());
    }

    private Facts view(RuleInfo info) {
      if (info.stage() != Stage.WAIVERS) {
        return facts;
      }
      Map<String, List<Subject>> found = new HashMap<>();
      for (CheckedFinding checked : findings) {
        found
            .computeIfAbsent(checked.finding().rule(), rule -> new ArrayList<>())
            .add(checked.finding().firstSubject());
      }
      Set<String> unjudged = new HashSet<>();
      for (Waiver waiver : facts.harness().waivers().values()) {
        Coverage its = waiver.rule() == null ? null : coverage.get(waiver.rule());
        if (its != null && waiver.at() != null && its.lacks(new Subject(waiver.at()))) {
          unjudged.add(waiver.id());
        }
      }
      Set<String> ran = new HashSet<>(coverage.keySet());
      return facts.with(new WaiverUse(covered, ran, unjudged, found));
    }

    private void add(Finding finding) {
      Optional<Waiver> waiver = waivers.covering(finding);
      waiver.ifPresent(found -> covered.merge(found.id(), 1, Integer::sum));
      findings.add(new CheckedFinding(finding, waiver.orElse(null)));
    }

    /** The findings, each with what it follows from. */
    private List<CheckedFinding> linked(List<RuleInfo> rules) {
      Set<Finding> standing =
          findings.stream()
              .filter(each -> !each.waived())
              .map(CheckedFinding::finding)
              .collect(Collectors.toSet());
      List<Finding> all = findings.stream().map(CheckedFinding::finding).toList();
      Causes causes = Causes.of(facts, all, standing, rules);
      return findings.stream()
          .map(each -> new CheckedFinding(causes.told(each.finding()), each.waiver()))
          .toList();
    }

    CheckResult result(RuleCatalog order) {
      List<String> ids = order.infos().stream().map(RuleInfo::id).toList();
      findings.sort(Comparator.comparing(CheckedFinding::finding, Finding.ORDER));
      List<CheckedFinding> linked = linked(order.infos());
      return new CheckResult(
          facts.harness().root(),
          selection.equals(Selection.ALL) ? Offers.tried(facts, linked, order) : linked,
          ids.stream().filter(coverage::containsKey).map(coverage::get).toList(),
          ids.stream().filter(notRun::containsKey).map(notRun::get).toList(),
          crashes,
          Expectations.judge(facts));
    }
  }

  private static Crash crash(String rule, Throwable broken) {
    List<String> where =
        Arrays.stream(broken.getStackTrace())
            .limit(STACK_LINES)
            .map(StackTraceElement::toString)
            .toList();
    String message = broken.getMessage();
    String what = broken.getClass().getSimpleName() + (message == null ? "" : ": " + message);
    return new Crash(rule, what, where);
  }
}
