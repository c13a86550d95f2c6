package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.network.Edge;
import org.tugtest.network.Sides;
import org.tugtest.protect.FuseBands;
import org.tugtest.protect.ShortCircuit;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.table.Cited;

/** A short directly behind a fuse draws more than the fuse can break. */
public final class FuseBreakingCapacityLow implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("fuse-breaking-capacity-low", Heading.PROTECTION, Level.ERROR)
          .summary("a short directly behind a fuse draws more than it can break")
          .subjects("fuses on the feed side")
          .looksFor(
              """
              A fuse in whose place a short to the chassis would draw more than its breaking
              capacity: the greatest open volts of any state, all generators turning, conductors at
              20 °C, joints without resistance, and the fuse itself without resistance, as breaking
              capacities are tested. The capacity is the part's, else that of its style. Trips of
              control units are not fuses and are left out. A fuse whose capacity is not known, and
              one before which a wire of unknown length would decide, are not judged. With a source
              that does not give its "ohms" it is a warning.
              """)
          .why(
              """
              A fuse that has to break more than it can does not go out: the arc stays in it, and
              the box burns where the loom starts. Fuses close to a big battery are where it
              happens.
              """)
          .remedy(
              """
              Take a fuse that breaks more (bolted ones do), or put it behind a main fuse with more
              wire before it. Give the battery's "ohms" if they are not written.
              """)
          .basis(
              """
              Breaking capacity of blade fuses: ISO 8820-3:2015 scope (1000 A); of bolted ones from
              memory, which makes a warning only.
              """)
          .follows(Cause.VOLTS_WRONG)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 13, "ohms": 0.006}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10,
                                            "style": "blade-mini"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 16, "cutMm": 200}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 13, "ohms": 0.01}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10,
                                            "style": "blade-mini"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6, "cutMm": 1500}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<List<Object>, List<Case>> together = new LinkedHashMap<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse
          && Sides.isFuse(edge)
          && fuse.fitted()
          && !FuseBands.isTrip(fuse)
          && !ledger.switchedOff(fuse.subject())) {
        judge(facts, fuse, ledger)
            .ifPresent(
                one -> together.computeIfAbsent(one.alike(), none -> new ArrayList<>()).add(one));
      }
    }
    for (List<Case> cases : together.values()) {
      List<Subject> members = cases.stream().map(one -> one.fuse().subject()).toList();
      ledger.finding(finding(facts.faults().bands(), cases), members);
    }
  }

  /** A fuse that has to break too much. */
  private record Case(Edge.OfElement fuse, Cited breaks, ShortCircuit behind) {
    /** Fuses of one box with one feed and one capacity are one finding. */
    List<Object> alike() {
      return List.of(fuse.device(), behind.amps(), breaks.value(), breaks.basis());
    }
  }

  private static Optional<Case> judge(Facts facts, Edge.OfElement fuse, Ledger ledger) {
    FuseBands bands = facts.faults().bands();
    Optional<Cited> breaks = bands.breakingA(fuse);
    Optional<ShortCircuit> behind = facts.faults().behindFuse(fuse);
    if (behind.isEmpty()) {
      ledger.notJudged(fuse.subject(), "it lies on no feed that can be reckoned");
    } else if (breaks.isEmpty()) {
      ledger.notJudged(fuse.subject(), "its breaking capacity is not known");
    } else if (behind.get().amps() <= breaks.get().value()) {
      ledger.fine();
    } else if (!behind.get().known()) {
      ledger.notJudged(fuse.subject(), "a length or an area before it is not known");
    } else {
      return Optional.of(new Case(fuse, breaks.get(), behind.get()));
    }
    return Optional.empty();
  }

  private static Finding.Draft finding(FuseBands bands, List<Case> cases) {
    Case first = cases.get(0);
    ShortCircuit behind = first.behind();
    Measured measured = Measured.over(behind.amps(), first.breaks().value(), "A");
    boolean usual = behind.basis() == Basis.COMMON_PRACTICE;
    String device = first.fuse().device();
    boolean several = cases.size() > 1;
    Finding.Draft draft =
        Finding.on(several ? Subject.device(device) : first.fuse().subject())
            .message(
                "a short directly behind "
                    + (several
                        ? "any of " + cases.size() + " fuses of " + device
                        : "fuse " + bands.text(first.fuse()))
                    + " draws up to "
                    + measured.actualShown()
                    + " A, and "
                    + (several ? "they" : "it")
                    + " can break "
                    + measured.limitShown()
                    + " A")
            .remedy(
                "take "
                    + (several ? "fuses for " + device + " that break" : "a fuse that breaks")
                    + " more, or put more wire before "
                    + (several ? "them" : "it")
                    + (usual
                        ? "; give the \"ohms\" of the sources where they are not written"
                        : ""))
            .measured(measured)
            .basis(behind.basis().weaker(first.breaks().basis()));
    if (several) {
      cases.forEach(one -> draft.detail(bands.text(one.fuse())));
    }
    return usual ? draft.level(Level.WARNING) : draft;
  }
}
