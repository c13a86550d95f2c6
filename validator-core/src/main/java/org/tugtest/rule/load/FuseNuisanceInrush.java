package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.table.FuseBand;
import org.tugtest.table.OpeningCurve;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** Loads that start together wear out the fuse that feeds them. */
public final class FuseNuisanceInrush implements Rule {
  private static final String SHARE = "share";
  private static final int NAMED = 6;
  private static final RuleInfo INFO =
      RuleInfo.of("fuse-nuisance-inrush", Heading.LOAD, Level.WARNING)
          .summary("the inrush of what it feeds wears a fuse out")
          .subjects("fuses through which loads with an inrush are fed")
          .looksFor(
              """
              For each fuse the pulse of the loads that start together in a state: inrushA for
              inrushS each, then what they draw, over what flows through it besides; and the charge
              of capacitanceUf through the resistance of its way. Loads that already draw in the
              state it is entered from do not start. Each part of the pulse counts as its time over
              the least time in which the fuse may open at that current, which is its energy over the
              least energy that melts it there; the sum may be the setting at most. A load that gives
              inrushA and no inrushS leaves its fuses unjudged, and so do times that are not known.
              """)
          .why(
              """
              A fuse that is brought near its melting at every start opens one day without a fault.
              """)
          .remedy(
              """
              Fit the next rating or a slower fuse if the wires behind it stand it, give some of its
              loads another way, or start them one after the other.
              """)
          .basis(
              """
              0.22 of the melting energy for 100,000 pulses: chart of a published fuse selection
              guide. The least opening times of vehicle fuses are from memory in part, so give the
              fuse's own. That the inrush stays at its greatest all its time is the careful reading.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(
              new Setting(
                  SHARE,
                  0.22,
                  0.01,
                  1,
                  "",
                  "of the energy that may melt it (a published fuse selection guide)"))
          .failing(example("0.2"))
          .passing(example("0.05"))
          .build();

  private static String example(String seconds) {
    return Example.filled(
        """
        {"format": 1,
         "parts": {"fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5, "inrushA": 16, "inrushS": %s}}}},
         "fitted": {"FB.f1": "f10"},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "FB:1", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}}
        """,
        seconds);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** What starts through a fuse in a state, by the load. */
  private record Start(OperatingPoint state, Map<String, Pulse> pulses) {
    boolean open() {
      return pulses.values().stream().anyMatch(pulse -> Double.isNaN(pulse.seconds()));
    }
  }

  /**
   * What one load adds.
   *
   * @param seconds of its inrush; NaN when not given
   * @param thenA what it draws after that
   * @param charge energy of its capacitor in A²s; 0 without one
   */
  private record Pulse(double amps, double seconds, double thenA, double charge) {}

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Edge.OfElement, List<Start>> starts = new LinkedHashMap<>();
    for (OperatingPoint state : facts.operating().all()) {
      OperatingPoint before = state.from().flatMap(from -> facts.operating().in(from)).orElse(null);
      Map<Edge.OfElement, Start> here = new LinkedHashMap<>();
      for (Edge.OfElement load : Users.loads(facts)) {
        if (load.element() instanceof Element.Load its
            && (its.inrushA() != null || its.capacitanceUf() != null)
            && (before == null || !before.draws(load))) {
          Feed.of(facts, state, load).ifPresent(feed -> add(here, state, load, its, feed));
        }
      }
      here.forEach(
          (fuse, start) -> starts.computeIfAbsent(fuse, none -> new ArrayList<>()).add(start));
    }
    starts.forEach((fuse, each) -> judge(facts, settings, fuse, each, ledger));
  }

  private static void add(
      Map<Edge.OfElement, Start> here,
      OperatingPoint state,
      Edge.OfElement load,
      Element.Load its,
      Feed feed) {
    Pulse pulse = pulse(state, load, its, feed);
    for (List<Way.Step> steps : List.of(feed.supply().steps(), feed.back().steps())) {
      for (Way.Step step : steps) {
        if (step.edge() instanceof Edge.OfElement inside
            && inside.element() instanceof Element.Fuse) {
          here.computeIfAbsent(inside, key -> new Start(state, new TreeMap<>(NaturalOrder.NATURAL)))
              .pulses()
              .put(load.text(), pulse);
        }
      }
    }
  }

  private static Pulse pulse(
      OperatingPoint state, Edge.OfElement load, Element.Load its, Feed feed) {
    double then = Math.abs(state.amps(load));
    Double inrush = its.inrushA();
    Double seconds = its.inrushS();
    double most = inrush == null ? then : inrush;
    double lasts = inrush == null ? 0 : seconds == null ? Double.NaN : Math.max(0, seconds);
    return new Pulse(most, lasts, then, charge(its, feed));
  }

  /** C · V² / 2R: what charging a capacitor through the resistance of its way lets through. */
  private static double charge(Element.Load its, Feed feed) {
    Double micro = its.capacitanceUf();
    double ohms = feed.wayOhms();
    double volts = feed.volts() + Math.abs(feed.drop());
    return micro == null || !(ohms > 0) ? 0 : micro * 1e-6 * volts * volts / (2 * ohms);
  }

  /**
   * How a pulse wears a fuse.
   *
   * @param share of its least melting energy that is used
   * @param energy of the pulse in A²s
   * @param basis of the times it is held against
   */
  private record Wear(Start start, double share, double energy, Basis basis) {}

  private static void judge(
      Facts facts, Settings settings, Edge.OfElement fuse, List<Start> starts, Ledger ledger) {
    Subject subject = fuse.subject();
    FuseBand band = facts.faults().bands().of(fuse).orElse(null);
    if (band == null || band.least().isEmpty()) {
      ledger.notJudged(subject, "its least opening times are not known");
      return;
    }
    if (starts.stream().anyMatch(Start::open)) {
      ledger.notJudged(subject, "a load gives inrushA and no inrushS");
      return;
    }
    Wear worst = null;
    for (Start start : starts) {
      Wear here = wear(start, Math.abs(start.state().amps(fuse)), band.least());
      worst = worst == null || here.share() > worst.share() ? here : worst;
    }
    double limit = settings.number(SHARE, subject);
    if (worst == null || worst.share() <= limit) {
      ledger.fine();
    } else {
      ledger.finding(finding(facts, fuse, worst, limit, starts, band));
    }
  }

  /** Goes through the pulse from one end of an inrush to the next. */
  private static Wear wear(Start start, double fuseA, OpeningCurve least) {
    List<Pulse> pulses = new ArrayList<>(start.pulses().values());
    pulses.sort(Comparator.comparingDouble(Pulse::seconds));
    double rest = fuseA - pulses.stream().mapToDouble(Pulse::thenA).sum();
    double share = 0;
    double energy = 0;
    Basis basis = Basis.DERIVED;
    double from = 0;
    for (int i = 0; i < pulses.size(); i++) {
      double amps = Math.max(0, rest);
      for (int k = 0; k < pulses.size(); k++) {
        amps += k >= i ? pulses.get(k).amps() : pulses.get(k).thenA();
      }
      double seconds = pulses.get(i).seconds() - from;
      from = pulses.get(i).seconds();
      if (seconds > 0) {
        share += seconds / least.seconds(amps);
        energy += seconds * amps * amps;
        basis = basis.weaker(least.basis(amps));
      }
    }
    double charge = pulses.stream().mapToDouble(Pulse::charge).sum();
    if (charge > 0) {
      OpeningCurve.Point last = least.points().get(least.points().size() - 1);
      share += charge / (last.amps() * last.amps() * last.seconds());
      energy += charge;
      basis = basis.weaker(last.basis());
    }
    return new Wear(start, share, energy, basis);
  }

  private static Finding.Draft finding(
      Facts facts,
      Edge.OfElement fuse,
      Wear worst,
      double limit,
      List<Start> starts,
      FuseBand band) {
    List<String> loads = List.copyOf(worst.start().pulses().keySet());
    double allowed = Math.floor(worst.energy() * limit / worst.share() * 100) / 100;
    Measured measured = Measured.over(worst.energy(), allowed, "A²s");
    OperatingPoint state = worst.start().state();
    Finding.Draft draft =
        Finding.on(fuse.subject())
            .message(
                "fuse "
                    + facts.faults().bands().text(fuse)
                    + " takes "
                    + measured.actualShown()
                    + " A²s when "
                    + Series.and(loads, NAMED)
                    + (loads.size() == 1 ? " starts" : " start together")
                    + " in state "
                    + state.state()
                    + "; at most "
                    + measured.limitShown()
                    + " A²s, "
                    + Quoted.number(limit)
                    + " of what may melt it")
            .remedy(
                "fit the next rating or a slower fuse if the wires behind it stand it, or start "
                    + (loads.size() == 1 ? loads.get(0) + " softer" : "them one after the other"))
            .measured(measured)
            .state(state.state())
            .basis(worst.basis());
    loads.stream().limit(NAMED).map(load -> subject(facts, load)).forEach(draft::and);
    for (Start start : starts) {
      Wear here = wear(start, Math.abs(start.state().amps(fuse)), band.least());
      if (!start.state().equals(state) && here.share() > limit) {
        draft.detail(
            String.format(
                Locale.ROOT, "also in state %s: %.1f A²s", start.state().state(), here.energy()));
      }
    }
    return draft;
  }

  private static Subject subject(Facts facts, String load) {
    Edge.@Nullable OfElement its =
        Users.loads(facts).stream().filter(one -> one.text().equals(load)).findFirst().orElse(null);
    return its == null ? Subject.HARNESS : its.subject();
  }
}
