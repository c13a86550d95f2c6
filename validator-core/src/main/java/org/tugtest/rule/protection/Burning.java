package org.tugtest.rule.protection;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.heat.Ampacity;
import org.tugtest.heat.Cooling;
import org.tugtest.heat.Warming;
import org.tugtest.heat.Warmings;
import org.tugtest.heat.WireForm;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.Sides;
import org.tugtest.protect.BurnRace;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Faults;
import org.tugtest.protect.ShortCircuit;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.OverClassByAir;
import org.tugtest.rule.Settings;
import org.tugtest.table.Cited;
import org.tugtest.table.FuseBand;

/** Races every wire of the feed and return side against the fuses before it. */
final class Burning {
  private static final MathContext THREE = new MathContext(3);
  private static final double CROSS_LINKED_C = 250;
  private static final double SILICONE_C = 350;
  private static final double HIGH_CLASS_C = 200;
  private static final double SOME_A = 0.01;
  private static final String UNKNOWN_TIMES = "opening times of a fuse before it are not known";

  /** A fuse that carries this share of a fault carries all of it. */
  private static final double ALL = 0.99;

  private final Facts facts;
  private final Faults faults;
  private final Settings settings;
  private final Ledger ledger;
  private final Warmings warmings = new Warmings();

  Burning(Facts facts, Settings settings, Ledger ledger) {
    this.facts = facts;
    this.faults = facts.faults();
    this.settings = settings;
    this.ledger = ledger;
  }

  /**
   * A current and the fuses that carry it.
   *
   * @param cut those that alone cut it off, where that is known
   */
  private record Fed(ShortCircuit fault, List<Edge.OfElement> cut) {
    double amps() {
      return fault.amps();
    }
  }

  /** A short in a load. */
  private record InLoad(Faults.Spot spot, ShortCircuit fault) {
    InLoad orGreater(InLoad other) {
      return fault.amps() >= other.fault.amps() ? this : other;
    }
  }

  void judge() {
    Map<String, List<Fed>> feeds = new LinkedHashMap<>();
    Map<String, Edge.OfWire> wires = new LinkedHashMap<>();
    for (Exposure exposure : facts.protection().exposures()) {
      Edge.OfWire wire = exposure.wire();
      nearEnd(wire)
          .filter(fault -> !exposure.unbounded())
          .ifPresent(
              fault -> {
                wires.put(wire.wire().id(), wire);
                add(feeds, wire, new Fed(fault, cut(exposure)));
              });
    }
    Map<String, Map<String, InLoad>> ofLoads = ofLoads();
    for (Exposure exposure : facts.protection().returning()) {
      Edge.OfWire wire = exposure.wire();
      Map<String, InLoad> greatest = new LinkedHashMap<>();
      for (Edge.OfElement load : facts.protection().strongFaultsBehind(wire.wire().id())) {
        ofLoads
            .getOrDefault(load.text(), Map.of())
            .forEach((fuses, in) -> greatest.merge(fuses, in, InLoad::orGreater));
      }
      greatest.values().forEach(in -> add(feeds, wire, new Fed(in.fault(), cut(in))));
      if (!greatest.isEmpty()) {
        wires.put(wire.wire().id(), wire);
      }
    }
    feeds.forEach((id, faulted) -> judge(wires.get(id), faulted));
  }

  private static void add(Map<String, List<Fed>> feeds, Edge.OfWire wire, Fed fed) {
    feeds.computeIfAbsent(wire.wire().id(), none -> new ArrayList<>()).add(fed);
  }

  /** The fuses that bound what a wire can see, when nothing but fuses does. */
  private static List<Edge.OfElement> cut(Exposure exposure) {
    boolean fuses = exposure.cut().stream().allMatch(Sides::isFuse);
    return exposure.limitA().isPresent() && fuses ? exposure.cut() : List.of();
  }

  private List<Edge.OfElement> cut(InLoad in) {
    double most = ALL * in.fault().amps();
    long sharing = in.fault().fuses().stream().filter(through -> through.amps() < most).count();
    return sharing < 2 ? List.of() : faults.endedBy(in.spot());
  }

  /** The greatest short at the end of a wire where more flows; empty when it has no fuse. */
  private Optional<ShortCircuit> nearEnd(Edge.OfWire wire) {
    ShortCircuit most = null;
    for (Point end : List.of(wire.a(), wire.b())) {
      ShortCircuit here = faults.greatest(new Faults.Spot(null, end, null)).orElse(null);
      most = most == null || (here != null && here.amps() > most.amps()) ? here : most;
    }
    return Optional.ofNullable(most).filter(fault -> !fault.fuses().isEmpty());
  }

  /** The greatest short in each load, by the fuses that carry it. */
  private Map<String, Map<String, InLoad>> ofLoads() {
    Map<String, Map<String, InLoad>> all = new HashMap<>();
    for (Faults.Spot spot : faults.inLoads()) {
      Edge.OfElement load = spot.load();
      ShortCircuit fault = faults.greatest(spot).orElse(null);
      if (load != null && fault != null && !fault.fuses().isEmpty()) {
        String fuses =
            String.join(" ", fault.fuses().stream().map(one -> one.fuse().text()).toList());
        all.computeIfAbsent(load.text(), none -> new LinkedHashMap<>())
            .merge(fuses, new InLoad(spot, fault), InLoad::orGreater);
      }
    }
    return all;
  }

  /** A race that was run. */
  private record Run(Fed fed, BurnRace race, BurnRace.Worst worst) {}

  private void judge(Edge.OfWire edge, List<Fed> faulted) {
    Wire wire = edge.wire();
    Optional<WireForm> form = facts.ampacity().forms().of(wire);
    Optional<Cited> area = facts.fitting().sizes().areaMm2(wire);
    Optional<Cooling> cooling = facts.ampacity().cooling(wire);
    if (form.isEmpty() || area.isEmpty() || cooling.isEmpty()) {
      ledger.notJudged(edge.subject(), "its size is not known");
      return;
    }
    Optional<Ampacity> stands = facts.ampacity().of(wire);
    if (stands.isPresent() && OverClassByAir.of(facts, wire, stands.get())) {
      ledger.notJudged(edge.subject(), OverClassByAir.WHY);
      return;
    }
    double over = settings.number(WireBurnsBeforeFuse.KELVIN, edge.subject());
    double classC = form.get().maxC();
    Warming warming = warming(form.get(), area.get(), cooling.get(), classC + over);
    Run worst = null;
    boolean unknown = false;
    boolean raced = false;
    for (Fed fed : faulted) {
      Optional<BurnRace> race = race(fed);
      unknown |= race.isEmpty();
      if (race.isPresent() && fed.amps() >= race.get().surelyEndsA()) {
        raced = true;
        if (race.get().stands(warming, race.get().surelyEndsA(), fed.amps())) {
          continue;
        }
        BurnRace.Worst at = race.get().worst(warming, race.get().surelyEndsA(), fed.amps());
        if (at.burns()
            && (worst == null
                || at.fuseS() / at.wireS() > worst.worst().fuseS() / worst.worst().wireS())) {
          worst = new Run(fed, race.get(), at);
        }
      }
    }
    if (worst != null && unknownFirst(worst)) {
      ledger.notJudged(edge.subject(), UNKNOWN_TIMES);
    } else if (worst != null) {
      boolean certain = worst.fed().fault().known();
      if (certain) {
        double finalC = classC > HIGH_CLASS_C ? SILICONE_C : CROSS_LINKED_C;
        Warming toFinal = warming(form.get(), area.get(), cooling.get(), finalC);
        ledger.finding(finding(edge, worst, classC + over, toFinal, form.get()));
      } else {
        ledger.notJudged(edge.subject(), "a length or an area before it is not known");
      }
    } else if (unknown) {
      ledger.notJudged(edge.subject(), UNKNOWN_TIMES);
    } else if (!raced) {
      ledger.notJudged(edge.subject(), "no short at it is sure to open its fuse");
    } else {
      ledger.fine();
    }
  }

  /** Whether a smaller fuse or trip of which no times are known ends the current by itself. */
  private boolean unknownFirst(Run run) {
    return run.fed().fault().fuses().stream()
        .filter(through -> through.amps() >= ALL * run.fed().amps())
        .anyMatch(through -> faults.bands().mayOpenBefore(through.fuse(), run.worst().fuse()));
  }

  private Warming warming(WireForm form, Cited area, Cooling cooling, double toC) {
    return warmings.of(area.value(), form.insulated().milliohmPerM(), cooling, form.maxC(), toC);
  }

  /** The race against the fuses of a fault; empty when none of them has known times. */
  private Optional<BurnRace> race(Fed fed) {
    List<BurnRace.Runner> runners = new ArrayList<>();
    Map<Edge.OfElement, BurnRace.Runner> known = new HashMap<>();
    for (ShortCircuit.Through through : fed.fault().fuses()) {
      FuseBand band = faults.bands().of(through.fuse()).orElse(null);
      if (band != null && !band.greatest().isEmpty() && through.amps() > SOME_A) {
        double share = Math.min(1, through.amps() / fed.amps());
        BurnRace.Runner runner = new BurnRace.Runner(through.fuse(), band.greatest(), share);
        runners.add(runner);
        if (!fed.cut().isEmpty()) {
          known.put(through.fuse(), runner);
        }
      }
    }
    if (runners.isEmpty()) {
      return Optional.empty();
    }
    boolean whole = !fed.cut().isEmpty() && known.keySet().containsAll(fed.cut());
    return Optional.of(
        whole ? new BurnRace(runners, List.of(among(fed, known))) : new BurnRace(runners));
  }

  /** The fuses of a cut, each with its share of what they carry together. */
  private static List<BurnRace.Runner> among(Fed fed, Map<Edge.OfElement, BurnRace.Runner> known) {
    List<BurnRace.Runner> cut = fed.cut().stream().map(known::get).toList();
    double all = cut.stream().mapToDouble(BurnRace.Runner::share).sum();
    return cut.stream()
        .map(one -> new BurnRace.Runner(one.fuse(), one.greatest(), one.share() / all))
        .toList();
  }

  private Finding.Draft finding(
      Edge.OfWire edge, Run run, double limitC, Warming toFinal, WireForm form) {
    BurnRace.Worst worst = run.worst();
    BurnRace.Worst burnt = run.race().worst(toFinal, run.race().surelyEndsA(), run.fed().amps());
    boolean sure = burnt.burns() && !burnt.extrapolated();
    Basis basis =
        run.fed().fault().basis().weaker(form.basis()).weaker(sure ? burnt.basis() : Basis.MEMORY);
    String fuse = faults.bands().text(worst.fuse());
    Finding.Draft draft =
        Finding.on(edge.subject(), worst.fuse().subject())
            .message(
                "at "
                    + shown(worst.amps())
                    + " A wire "
                    + edge.text()
                    + " is at "
                    + Figures.shown(limitC)
                    + " °C after "
                    + shown(worst.wireS())
                    + " s, while fuse "
                    + fuse
                    + " may take "
                    + shown(worst.fuseS())
                    + " s"
                    + (worst.extrapolated() ? " (extrapolated)" : ""))
            .remedy(
                "take a larger wire for "
                    + edge.text()
                    + ", or a smaller or faster fuse than "
                    + fuse
                    + " if its loads allow it")
            .measured(Measured.under(rounded(worst.wireS()), rounded(worst.fuseS()), "s"))
            .basis(basis)
            .detail(
                "it starts at its class of "
                    + Figures.shown(form.maxC())
                    + " °C; looked at were "
                    + shown(run.race().surelyEndsA())
                    + " to "
                    + shown(run.fed().amps())
                    + " A");
    return sure ? draft : draft.level(Level.WARNING);
  }

  private static double rounded(double value) {
    return BigDecimal.valueOf(value).round(THREE).doubleValue();
  }

  private static String shown(double value) {
    return Figures.shown(rounded(value));
  }
}
