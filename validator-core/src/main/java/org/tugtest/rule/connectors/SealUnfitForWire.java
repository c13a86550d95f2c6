package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Housing;
import org.tugtest.model.Seal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** A wire whose insulation its seal does not grip. */
public final class SealUnfitForWire implements Rule {
  private static final int NAMED = 8;
  private static final RuleInfo INFO =
      RuleInfo.of("seal-unfit-for-wire", Heading.CONNECTORS, Level.ERROR)
          .summary("a wire's insulation is outside the range of the seal in its cavity")
          .subjects("wired cavities of sealed housings")
          .looksFor(
              """
              In a sealed housing, or where a seal is named: the outside diameter of the wire is
              outside "insulationMinMm" to "insulationMaxMm" of the seal (the bounds are allowed),
              or the seal is of another family than the cavity. Two wires in one seal are a
              warning where the terminal takes both. Diameters come from the wire part, else from
              a table of outside diameters; a remembered row of it can only warn. Wires that one
              seal does not grip in one connector are one finding.
              """)
          .why(
              """
              A loose seal lets water run along the wire into the plug; a tight one tears or pushes
              the terminal out of its lock.
              """)
          .remedy("Name a seal whose range holds the wire, or a wire with another insulation.")
          .basis(
              """
              The range is the seal's own, as written. A seal grips one wire: common practice.
              Outside diameters from ISO 6722-1 (a trade catalogue where it could be read, else
              from memory) and a maker's data sheet of SAE J1128 GXL.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w1": {"areaMm2": 1.0, "maxC": 125, "outerMm": 2.1}},
                         "housings": {"h1": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                                             "sealed": true, "seals": ["blue"]}},
                         "seals": {"blue": {"family": "t1.5", "insulationMinMm": 1.2,
                                            "insulationMaxMm": 1.9}}},
               "connectors": {"R1": {"housing": "h1"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "part": "w1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w1": {"areaMm2": 1.0, "maxC": 125, "outerMm": 1.9}},
                         "housings": {"h1": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                                             "sealed": true, "seals": ["blue"]}},
                         "seals": {"blue": {"family": "t1.5", "insulationMinMm": 1.2,
                                            "insulationMaxMm": 1.9}}},
               "connectors": {"R1": {"housing": "h1"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "part": "w1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** A wire that a seal does not grip. */
  private record Loose(Point cavity, Seal seal, List<WireEnd> ends, Fitting.Misfit misfit) {
    /** What is one finding: one seal in one connector, past the same bound, as sure. */
    String lot() {
      return cavity.owner() + " " + seal.id() + " " + misfit.over() + " " + misfit.actual().basis();
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, List<Loose>> lots = new LinkedHashMap<>();
    for (Point cavity : Cavities.wired(facts)) {
      Housing housing = facts.wiring().mating().housingOf(cavity.owner()).orElse(null);
      Fitting.Choice<Seal> choice = facts.fitting().seal(cavity);
      boolean sealed = housing != null && housing.sealed();
      if (!sealed && choice.named().isEmpty()) {
        continue;
      }
      Seal seal = choice.part();
      if (seal == null) {
        ledger.notJudged(
            cavity.subject(),
            choice.named().isEmpty() ? "no seal is named" : "the seal is not known");
      } else if (facts.fitting().overfilled(cavity)) {
        ledger.notJudged(cavity.subject(), Unjudged.OVERFILLED);
      } else {
        judge(facts, cavity, housing, seal, lots, ledger);
      }
    }
    lots.values().forEach(lot -> report(facts, lot, ledger));
  }

  private static void judge(
      Facts facts,
      Point cavity,
      @Nullable Housing housing,
      Seal seal,
      Map<String, List<Loose>> lots,
      Ledger ledger) {
    List<WireEnd> ends = facts.wiring().endsAt(cavity);
    String family = housing == null ? null : housing.familyOf(cavity.name());
    if (seal.family() != null && family != null && !seal.family().equals(family)) {
      ledger.finding(
          draft(facts, cavity, seal, ends)
              .kind("family")
              .message(
                  "seal "
                      + seal.id()
                      + " (family "
                      + seal.family()
                      + ") does not fit "
                      + cavity.text()
                      + " (family "
                      + family
                      + ")")
              .remedy("name a seal of family " + family + " for " + cavity.text()));
      return;
    }
    Optional<Fitting.Misfit> misfit =
        facts.fitting().insulationProblem(seal.insulationMinMm(), seal.insulationMaxMm(), ends);
    boolean unknown =
        ends.stream().anyMatch(end -> facts.fitting().sizes().outerMm(end.wire()).isEmpty());
    if (misfit.isPresent()) {
      if (!ledger.switchedOff(cavity.subject())) {
        Loose loose = new Loose(cavity, seal, ends, misfit.get());
        lots.computeIfAbsent(loose.lot(), key -> new ArrayList<>()).add(loose);
      }
    } else if (ends.size() > 1) {
      ledger.finding(
          draft(facts, cavity, seal, ends)
              .kind("several wires")
              .level(Level.WARNING)
              .basis(Basis.COMMON_PRACTICE)
              .message(
                  "seal "
                      + seal.id()
                      + " at "
                      + cavity.text()
                      + " would have to close round "
                      + ends.size()
                      + " wires ("
                      + Cavities.wires(ends)
                      + "); a seal grips one")
              .remedy("join the wires in a splice and bring one wire to " + cavity.text())
              .measured(Measured.over(ends.size(), 1, "")));
    } else if (unknown) {
      ledger.notJudged(cavity.subject(), "the outside diameter of the wire is not known");
    } else {
      ledger.fine();
    }
  }

  private static void report(Facts facts, List<Loose> lot, Ledger ledger) {
    Loose worst = lot.get(0);
    Loose mildest = lot.get(0);
    for (Loose one : lot) {
      boolean over = one.misfit().over();
      double here = one.misfit().actual().value();
      double most = worst.misfit().actual().value();
      double least = mildest.misfit().actual().value();
      worst = over ? (here > most ? one : worst) : (here < most ? one : worst);
      mildest = over ? (here < least ? one : mildest) : (here > least ? one : mildest);
    }
    Point first = lot.get(0).cavity();
    Seal seal = worst.seal();
    boolean several = lot.size() > 1;
    boolean alike = mildest.misfit().actual().value() == worst.misfit().actual().value();
    String from = alike ? "" : Cavities.measured(mildest.misfit(), "mm").actualShown() + " to ";
    List<String> names = lot.stream().map(one -> one.cavity().name()).toList();
    List<WireEnd> ends = lot.stream().flatMap(one -> one.ends().stream()).toList();
    String where = several ? Cavities.listed(names) + " of " + first.owner() : first.text();
    Finding.Draft draft = draft(facts, first, seal, ends);
    lot.stream().skip(1).forEach(one -> draft.and(one.cavity().subject()));
    ledger.finding(
        draft
            .kind("insulation")
            .message(
                (ends.size() > 1 ? "wires " : "wire ")
                    + (several
                        ? Series.and(ends.stream().map(end -> end.wire().id()).toList(), NAMED)
                        : Cavities.wires(ends))
                    + (ends.size() > 1 ? " do" : " does")
                    + " not suit seal "
                    + seal.id()
                    + (several ? " in " : " at ")
                    + where
                    + ": outside diameter "
                    + from
                    + Cavities.sentence(worst.misfit(), "mm"))
            .remedy(
                several
                    ? "name a seal for "
                        + first.owner()
                        + " whose range holds the wires, or correct the range of seal "
                        + seal.id()
                    : "name a seal at " + first.text() + " whose range holds the wire")
            .measured(Cavities.measured(worst.misfit(), "mm"))
            .basis(worst.misfit().actual().basis()),
        lot.stream().map(one -> one.cavity().subject()).toList());
  }

  private static Finding.Draft draft(Facts facts, Point cavity, Seal seal, List<WireEnd> ends) {
    Finding.Draft draft = Finding.on(cavity.subject());
    for (WireEnd end : ends) {
      draft.and(Subject.wire(end.wire().id()));
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
    }
    return draft.at(facts.places().of("parts/seals/" + seal.id()));
  }
}
