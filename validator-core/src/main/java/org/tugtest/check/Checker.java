package org.tugtest.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.expect.Expectations;
import org.tugtest.facts.Facts;
import org.tugtest.facts.WaiverUse;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;

/** Runs the rules on one harness, stage by stage. A rule that breaks does not stop the others. */
public final class Checker {
  private static final int STACK_LINES = 8;
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
    List<Rule> rules = new ArrayList<>(catalog.rules());
    rules.sort(Comparator.comparing(rule -> rule.info().stage()));
    for (Rule rule : rules) {
      run.run(rule);
    }
    return run.result(catalog);
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

    void run(Rule rule) {
      RuleInfo info = rule.info();
      Settings settings = new Settings(info, facts.harness().limits().get(info.id()));
      Optional<String> why = whyNot(info, settings);
      if (why.isPresent()) {
        notRun.put(info.id(), new NotRun(info.id(), why.get()));
        return;
      }
      Ledger ledger = new Ledger(info, settings, facts.places());
      try {
        rule.judge(view(info), settings, ledger);
      } catch (RuntimeException | StackOverflowError | LinkageError | AssertionError broken) {
        crashes.add(crash(info.id(), broken));
        return;
      }
      coverage.put(info.id(), ledger.coverage());
      ledger.findings().forEach(this::add);
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
          .whyNot(info.id())
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

    CheckResult result(RuleCatalog order) {
      List<String> ids = order.infos().stream().map(RuleInfo::id).toList();
      findings.sort(Comparator.comparing(CheckedFinding::finding, Finding.ORDER));
      return new CheckResult(
          facts.harness().root(),
          findings,
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
