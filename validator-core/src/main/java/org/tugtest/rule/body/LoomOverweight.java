package org.tugtest.rule.body;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Harness;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.route.Totals;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** A loom, or all of them, is heavier than the team's budget. */
public final class LoomOverweight implements Rule {
  private static final String ID = "loom-overweight";
  private static final String GRAMS = "grams";
  private static final double NONE = 1_000_000;
  private static final int NAMED = 4;

  private static final RuleInfo INFO =
      RuleInfo.of(ID, Heading.BODY, Level.WARNING)
          .summary("a loom is heavier than the team's budget")
          .subjects("mass budgets")
          .looksFor(
              """
              The computed mass of everything the looms are made of, over the "grams" that the team
              gives under "limits"; and of a single loom, over the "grams" at its place
              ("looms/front"). Devices and blanks are not counted. Without a budget there is
              nothing to judge; where lengths or masses are missing and what is known is within
              the budget, it is not judged.
              """)
          .why(
              """
              A loom grows by a few grams a week and nobody notices; a budget is noticed in the
              commit that breaks it.
              """)
          .remedy(
              """
              Begin with what weighs most, which the details name: thinner wire where the current
              allows it, a shorter way, a plug less. Or agree on a new budget.
              """)
          .basis("The team's own figure against the sum of lengths and masses as given.")
          .setting(
              new Setting(
                  GRAMS, NONE, 1, NONE, "g", "budget; a million grams stands for no budget at all"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "limits": {"loom-overweight": {"grams": 20}},
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "gramsPerM": 27}}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w", "cutMm": 1000}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "limits": {"loom-overweight": {"grams": 30}},
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "gramsPerM": 27}}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w", "cutMm": 1000}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Totals totals = facts.totals();
    double whole = settings.number(GRAMS);
    if (whole < NONE) {
      judge(facts, Subject.HARNESS, "the looms weigh ", totals.whole(), whole, ledger);
    }
    RuleLimits limits = facts.harness().limits().get(ID);
    for (Map.Entry<String, Totals.Sum> entry : totals.byLoom().entrySet()) {
      Subject subject = Subject.loom(entry.getKey());
      if (limits != null && given(limits, subject)) {
        double grams = settings.number(GRAMS, subject);
        String what = "loom " + entry.getKey() + " weighs ";
        judge(facts, subject, what, entry.getValue(), grams, ledger);
      }
    }
  }

  private static boolean given(RuleLimits limits, Subject subject) {
    RuleLimits.@Nullable AtPlace here = limits.places().get(subject.place());
    return here != null && here.settings().containsKey(GRAMS);
  }

  private static void judge(
      Facts facts, Subject subject, String what, Totals.Sum sum, double budget, Ledger ledger) {
    if (sum.grams() > budget) {
      ledger.finding(finding(facts, subject, what, sum, budget));
    } else if (!sum.complete()) {
      ledger.notJudged(subject, "lengths or masses are missing from its sum");
    } else {
      ledger.fine();
    }
  }

  private static Finding.Draft finding(
      Facts facts, Subject subject, String what, Totals.Sum sum, double budget) {
    Measured measured = Measured.over(sum.grams(), budget, "g");
    Finding.Draft draft =
        Finding.on(subject)
            .message(
                what
                    + (sum.complete() ? "" : "at least ")
                    + measured.actualShown()
                    + " g; the budget is "
                    + measured.limitShown()
                    + " g")
            .remedy(
                "take out "
                    + Quoted.number(Math.ceil(10 * (sum.grams() - budget)) / 10)
                    + " g, or agree on another budget")
            .measured(measured)
            .basis(computed(facts.harness()) ? Basis.MEMORY : Basis.GIVEN);
    List<Totals.Line> heaviest =
        sum.lines().stream()
            .sorted(Comparator.comparingDouble(Totals.Line::grams).reversed())
            .filter(line -> line.grams() > 0)
            .limit(NAMED)
            .toList();
    draft.detail(
        "heaviest: "
            + Series.and(
                heaviest.stream()
                    .map(
                        line ->
                            line.kind().word()
                                + (line.part().isEmpty() ? "" : " " + line.part())
                                + " "
                                + Quoted.number(Math.round(line.grams() * 10) / 10.0)
                                + " g")
                    .toList()));
    sum.lacking().stream().limit(NAMED).forEach(draft::detail);
    return draft;
  }

  /** Whether the mass of some wire is computed from its size. */
  private static boolean computed(Harness harness) {
    for (Wire wire : harness.wires().values()) {
      WirePart part = wire.part() == null ? null : harness.parts().wires().get(wire.part());
      if (part == null || part.gramsPerM() == null) {
        return true;
      }
    }
    return false;
  }
}
