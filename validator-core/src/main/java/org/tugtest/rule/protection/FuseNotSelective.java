package org.tugtest.rule.protection;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Sides;
import org.tugtest.protect.Faults;
import org.tugtest.protect.FuseBands;
import org.tugtest.protect.ShortCircuit;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.table.FuseBand;
import org.tugtest.table.OpeningCurve;

/** Of two fuses in a row the one nearer to the source may open first. */
public final class FuseNotSelective implements Rule {
  private static final String BOTH_SIDES =
      "current can come to it from either side, so that no fuse is surely before it";
  private static final MathContext THREE = new MathContext(3);

  private static final RuleInfo INFO =
      RuleInfo.of("fuse-not-selective", Heading.PROTECTION, Level.NOTE)
          .gravest(Level.WARNING)
          .summary("of two fuses in a row the one nearer to the source may open first")
          .subjects("fuses behind another fuse")
          .looksFor(
              """
              A fuse behind another one where, at some current, the other may open sooner than this
              one must: the least time of the other's band is under the greatest time of this one's.
              Looked at is every current from the least at which this fuse is sure to open to the
              greatest that a short directly behind it draws, each fuse at its share of it. Past the
              last point of a curve the time is extrapolated, and the finding says so. It is a
              warning where the other fuse feeds a load that is "critical" and that does not hang on
              this one. Fuses without opening times are not judged, nor those that carry current
              either way, such as the fuses of two batteries side by side.
              """)
          .why(
              """
              When the main fuse goes for a short in the horn, the fuel pump and the lamps go with
              it, and the fault is looked for in the wrong place.
              """)
          .remedy(
              """
              Take a smaller fuse here or a larger or slower one before it, as far as the wires
              behind it stand that; or feed the critical load from before the common fuse.
              """)
          .basis(
              """
              The bands of ISO 8820-3 and 8820-5 types as makers' data quoted in public documents
              print them, in part from memory; give the parts' own "times" to replace them.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6, "ohms": 0.02}}},
                 "FM": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 15,
                                           "style": "blade-mini"}}},
                 "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10,
                                           "style": "blade-mini"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FM:in", "areaMm2": 2.5, "cutMm": 300},
                         "W2": {"from": "FM:1", "to": "FB:in", "areaMm2": 2.5, "cutMm": 300}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6, "ohms": 0.02}}},
                 "FM": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 100,
                                           "style": "bolt-m8"}}},
                 "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10,
                                           "style": "blade-mini"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FM:in", "areaMm2": 16, "cutMm": 300},
                         "W2": {"from": "FM:1", "to": "FB:in", "areaMm2": 16, "cutMm": 300}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** Where two fuses come closest: at a current the one may open while the other still holds. */
  private record Clash(
      Edge.OfElement upstream,
      double amps,
      double holdsS,
      double opensS,
      boolean extrapolated,
      Basis basis) {
    double ratio() {
      return holdsS / opensS;
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Faults faults = facts.faults();
    Map<String, String> critical = critical(faults);
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse && Sides.isFuse(edge) && fuse.fitted()) {
        faults
            .afterFuse(fuse)
            .flatMap(at -> faults.greatest(new Faults.Spot(null, at, null)))
            .filter(behind -> behind.fuses().size() > 1)
            .ifPresent(behind -> judge(faults, fuse, behind, critical, ledger));
      }
    }
  }

  private static void judge(
      Faults faults,
      Edge.OfElement fuse,
      ShortCircuit behind,
      Map<String, String> critical,
      Ledger ledger) {
    if (isFedFromBothSides(faults, fuse)) {
      ledger.notJudged(fuse.subject(), BOTH_SIDES);
      return;
    }
    FuseBands bands = faults.bands();
    Optional<FuseBand> own = bands.of(fuse).filter(band -> !band.greatest().isEmpty());
    double through = through(behind, fuse);
    List<Clash> clashes = new ArrayList<>();
    boolean unknown = own.isEmpty();
    for (ShortCircuit.Through other : behind.fuses()) {
      Optional<FuseBand> band = bands.of(other.fuse()).filter(known -> !known.least().isEmpty());
      if (other.fuse().equals(fuse)) {
        continue;
      }
      unknown |= band.isEmpty();
      if (own.isPresent() && band.isPresent() && through > 0) {
        closest(own.get(), band.get(), through, other).ifPresent(clashes::add);
      }
    }
    if (!clashes.isEmpty()) {
      ledger.finding(finding(bands, fuse, clashes, behind, critical));
    } else if (unknown) {
      ledger.notJudged(fuse.subject(), "opening times of it or of a fuse before it are not known");
    } else if (through < own.get().surelyOpensA()) {
      ledger.notJudged(fuse.subject(), "no short behind it is sure to open it");
    } else {
      ledger.fine();
    }
  }

  /** Whether a short on either side of a fuse draws current through it. */
  private static boolean isFedFromBothSides(Faults faults, Edge.OfElement fuse) {
    return faults
        .beforeFuse(fuse)
        .flatMap(at -> faults.greatest(new Faults.Spot(null, at, null)))
        .filter(before -> through(before, fuse) > 0)
        .isPresent();
  }

  private static double through(ShortCircuit behind, Edge.OfElement fuse) {
    for (ShortCircuit.Through one : behind.fuses()) {
      if (one.fuse().equals(fuse)) {
        return one.amps();
      }
    }
    return 0;
  }

  /** Both are straight on logarithmic axes between their points, so only those need looking at. */
  private static Optional<Clash> closest(
      FuseBand own, FuseBand other, double most, ShortCircuit.Through upstream) {
    double share = upstream.amps() / most;
    double from = own.surelyOpensA();
    TreeSet<Double> currents = new TreeSet<>(List.of(from, most));
    own.greatest().points().forEach(point -> currents.add(point.amps()));
    other.least().points().forEach(point -> currents.add(point.amps() / share));
    Clash worst = null;
    for (double amps : currents) {
      if (amps >= from && amps <= most) {
        OpeningCurve least = other.least();
        Clash here =
            new Clash(
                upstream.fuse(),
                amps,
                own.greatest().seconds(amps),
                least.seconds(amps * share),
                own.greatest().extrapolated(amps) || least.extrapolated(amps * share),
                own.greatest().basis(amps).weaker(least.basis(amps * share)));
        worst = worst == null || here.ratio() > worst.ratio() ? here : worst;
      }
    }
    return Optional.ofNullable(worst).filter(clash -> clash.ratio() > 1);
  }

  private static Finding.Draft finding(
      FuseBands bands,
      Edge.OfElement fuse,
      List<Clash> clashes,
      ShortCircuit behind,
      Map<String, String> critical) {
    clashes.sort((one, other) -> Double.compare(other.ratio(), one.ratio()));
    Clash worst = clashes.get(0);
    Finding.Draft draft =
        Finding.on(fuse.subject())
            .message(
                "at "
                    + shown(worst.amps())
                    + " A fuse "
                    + bands.text(worst.upstream())
                    + ", nearer to the source, may open after "
                    + shown(worst.opensS())
                    + " s, while "
                    + bands.text(fuse)
                    + " may take "
                    + shown(worst.holdsS())
                    + " s"
                    + (worst.extrapolated() ? " (extrapolated)" : ""))
            .remedy(
                "take a smaller fuse for "
                    + fuse.text()
                    + ", or a larger or slower one for "
                    + worst.upstream().text()
                    + " if the wires behind it stand that")
            .measured(Measured.over(worst.holdsS(), worst.opensS(), "s"))
            .basis(behind.basis().weaker(worst.basis()));
    for (Clash clash : clashes) {
      draft.and(clash.upstream().subject());
      String loads = critical.get(clash.upstream().text());
      if (loads != null && !loads.equals(critical.get(fuse.text()))) {
        draft.level(Level.WARNING);
        draft.detail(clash.upstream().text() + " also feeds what is critical: " + loads);
      }
    }
    return draft;
  }

  /** The critical loads behind each fuse. */
  private static Map<String, String> critical(Faults faults) {
    Map<String, String> critical = new LinkedHashMap<>();
    for (Faults.Spot spot : faults.inLoads()) {
      Edge.OfElement load = spot.load();
      if (load != null && load.element() instanceof Element.Load what && what.critical()) {
        faults
            .greatest(spot)
            .ifPresent(
                fault ->
                    fault
                        .fuses()
                        .forEach(
                            one ->
                                critical.merge(
                                    one.fuse().text(),
                                    load.text(),
                                    (before, more) ->
                                        before.equals(more) ? before : before + ", " + more)));
      }
    }
    return critical;
  }

  private static String shown(double value) {
    return Figures.shown(BigDecimal.valueOf(value).round(THREE).doubleValue());
  }
}
