package org.tugtest.rule.written;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.network.Edge;
import org.tugtest.network.SourceSums;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** A source, or several that add up, give more volts than this tool may judge. */
public final class VoltageOutOfScope implements Rule {
  private static final double MOST_VOLTS = 60;
  private static final double ROUNDING = 1 + 1e-9;
  private static final int SHOWN = 4;
  private static final String UNIT = "V";
  private static final String REMEDY =
      "correct the volts or the joints; parts over 60 V DC are for a qualified person and none of"
          + " these checks covers them";

  private static final RuleInfo INFO =
      RuleInfo.of("voltage-out-of-scope", Heading.WRITTEN, Level.ERROR)
          .summary("more than 60 V DC, which none of the checks covers")
          .subjects("sources")
          .looksFor(
              """
              A source of more than 60 V, by its own "volts" or by those of a state. Several sources
              whose volts, each with its sign, add up to more than 60 V along a way or round a loop
              through wires, plugs, splices, bolted metal, fitted fuses, links and contacts.
              Contacts count as closed; of a change-over every position is tried by itself. Where none
              of these is found, any two points that are more than 60 V apart in a solved state. A
              source without "volts" is not judged.
              """)
          .why(
              """
              Over 60 V DC a fault is a danger to life, and other rules, parts and people are
              needed. The figures of these checks hold for low voltage only.
              """)
          .remedy(
              """
              Correct the volts or the joints. A vehicle that really has more than 60 V keeps those
              parts out of these files.
              """)
          .basis(
              """
              60 V DC is where high voltage begins in UNECE R100 (from its public summary) and the
              greatest nominal voltage outside isolated parts in ADR 2017, 9.2.2.
              """)
          .causes(Cause.VOLTS_WRONG)
          .failing(
              """
              {"format": 1,
               "devices": {
                 "A": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                             "volts": 48}}},
                 "B": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                             "volts": 24}}}},
               "wires": {"W1": {"from": "A:+", "to": "B:-", "areaMm2": 16}}}
              """)
          .failing(
              """
              {"format": 1,
               "devices": {"A": {"elements": {"pack": {"kind": "source", "plus": "+", "minus": "-",
                                                       "volts": 60.1}}}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "A": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                             "volts": 36}}},
                 "B": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                             "volts": 24}}}},
               "wires": {"W1": {"from": "A:+", "to": "B:-", "areaMm2": 16}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Judgement judgement = new Judgement(facts);
    judgement.single(null);
    facts.harness().states().values().forEach(judgement::single);
    if (judgement.over.isEmpty()) {
      judgement.together(null);
      facts.harness().states().values().forEach(judgement::together);
      judgement.solved();
    }
    judgement.report(ledger);
  }

  /** The greatest volts of one source, or of several together. */
  private record Worst(BigDecimal volts, @Nullable String state, List<SourceSums.Step> steps) {}

  /** One run over one harness. */
  private static final class Judgement {
    private final Facts facts;
    private final List<Edge.OfElement> sources;
    private final List<Predicate<Edge.OfElement>> closings;
    private final SourceSums.Metal metal;
    private final Map<Subject, Worst> over = new LinkedHashMap<>();
    private final Map<Subject, Edge.OfElement> known = new LinkedHashMap<>();
    private @Nullable Worst sum;
    private SolvedVolts.@Nullable Apart apart;
    private boolean complete = true;

    Judgement(Facts facts) {
      this.facts = facts;
      this.sources = facts.network().sources();
      this.closings = ChangeOvers.closings(facts.network());
      this.metal = new SourceSums.Metal(facts.network());
    }

    /** The open volts of every source, in a state or as drawn. */
    private Map<Edge.OfElement, Double> volts(@Nullable State state) {
      Map<Edge.OfElement, Double> volts = new LinkedHashMap<>();
      for (Edge.OfElement source : sources) {
        Double own = ((Element.Source) source.element()).volts();
        Double here = state == null ? null : inState(state, source);
        Double given = here == null ? own : here;
        if (given != null) {
          volts.put(source, given);
          known.put(source.subject(), source);
        }
      }
      return volts;
    }

    private static @Nullable Double inState(State state, Edge.OfElement source) {
      Double named = state.volts().get(new Ref(source.device(), null, source.name()));
      return named == null ? state.volts().get(new Ref(source.device(), null, null)) : named;
    }

    void single(@Nullable State state) {
      volts(state)
          .forEach(
              (source, given) -> {
                BigDecimal value = BigDecimal.valueOf(Math.abs(given));
                Worst before = over.get(source.subject());
                boolean worse = before == null || value.compareTo(before.volts()) > 0;
                if (value.doubleValue() > MOST_VOLTS && worse) {
                  over.put(
                      source.subject(),
                      new Worst(value, state == null ? null : state.id(), List.of()));
                }
              });
    }

    void together(@Nullable State state) {
      Map<Edge.OfElement, Double> volts = volts(state);
      if (SourceSums.most(volts).doubleValue() <= MOST_VOLTS
          || (state != null && state.volts().isEmpty())) {
        return;
      }
      for (Predicate<Edge.OfElement> closed : closings) {
        SourceSums.Sum found = metal.greatest(volts, closed);
        complete &= found.complete();
        boolean worse = sum == null || found.volts().compareTo(sum.volts()) > 0;
        if (found.volts().doubleValue() > MOST_VOLTS && worse) {
          sum = new Worst(found.volts(), state == null ? null : state.id(), found.steps());
        }
      }
    }

    /** What no sum of sources tells: volts that only the solved network has. */
    void solved() {
      if (sum == null) {
        apart =
            SolvedVolts.greatest(facts)
                .filter(found -> found.volts() > MOST_VOLTS * ROUNDING)
                .orElse(null);
      }
    }

    void report(Ledger ledger) {
      over.forEach((source, worst) -> ledger.finding(alone(source, worst)));
      List<Subject> together = new ArrayList<>();
      Worst greatest = sum;
      if (greatest != null) {
        greatest.steps().forEach(step -> together.add(step.source().subject()));
        Collections.sort(together);
        ledger.finding(together(greatest, together), together);
      }
      SolvedVolts.Apart found = apart;
      if (found != null) {
        found.sources().forEach(source -> together.add(source.subject()));
        ledger.finding(apart(found), together);
      }
      for (Edge.OfElement source : sources) {
        Subject subject = source.subject();
        if (over.containsKey(subject) || together.contains(subject)) {
          continue;
        }
        if (!known.containsKey(subject)) {
          ledger.notJudged(subject, "it gives no volts");
        } else if (!complete) {
          ledger.notJudged(subject, "more sources are joined than can be tried in every way");
        } else {
          ledger.fine();
        }
      }
    }

    private static Finding.Draft alone(Subject source, Worst worst) {
      Measured measured = Measured.over(worst.volts().doubleValue(), MOST_VOLTS, UNIT);
      return Finding.on(source)
          .message(
              "source "
                  + source.id()
                  + " gives "
                  + measured.actualShown()
                  + " V"
                  + (worst.state() == null ? "" : " in state " + worst.state())
                  + "; these checks cover at most 60 V DC")
          .remedy(REMEDY)
          .measured(measured)
          .basis(Basis.SECONDARY)
          .state(worst.state());
    }

    private static Finding.Draft apart(SolvedVolts.Apart found) {
      Measured measured = Measured.over(found.volts(), MOST_VOLTS, UNIT);
      return Finding.on(found.high().subject())
          .and(found.low().subject())
          .kind("solved")
          .message(
              found.high()
                  + " and "
                  + found.low()
                  + " are "
                  + measured.actualShown()
                  + " V apart in state "
                  + found.state().state()
                  + "; these checks cover at most 60 V DC")
          .remedy(REMEDY)
          .measured(measured)
          .basis(Basis.SECONDARY)
          .state(found.state().state());
    }

    private static Finding.Draft together(Worst worst, List<Subject> subjects) {
      Measured measured = Measured.over(worst.volts().doubleValue(), MOST_VOLTS, UNIT);
      List<String> names = subjects.stream().map(Subject::id).toList();
      Finding.Draft draft =
          Finding.on(subjects.get(0))
              .kind("sum")
              .message(
                  (names.size() == 1 ? "source " : "sources ")
                      + Series.and(names, SHOWN)
                      + (names.size() == 1 ? " is" : " are")
                      + " joined so that "
                      + measured.actualShown()
                      + " V add up"
                      + (worst.state() == null ? "" : " in state " + worst.state())
                      + "; these checks cover at most 60 V DC")
              .remedy(REMEDY)
              .measured(measured)
              .basis(Basis.SECONDARY)
              .state(worst.state());
      subjects.subList(1, subjects.size()).forEach(draft::and);
      for (SourceSums.Step step : worst.steps()) {
        BigDecimal added = step.volts().stripTrailingZeros();
        String sign = added.signum() < 0 ? " " : " +";
        draft.detail(step.source().text() + sign + added.toPlainString() + " V");
      }
      return draft;
    }
  }
}
