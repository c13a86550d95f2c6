package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** A load that no one wants to work in a state sees volts all the same: a sneak path. */
public final class LoadBackfed implements Rule {
  private static final String IDLE =
      "its contacts lie between no source and no load, so that it moves nothing";
  private static final String ELECTRONICS = "electronicsV";
  private static final String PERCENT = "percent";
  private static final double RELEASE = 15;
  private static final double SOME_AMPS = 1e-3;
  private static final RuleInfo INFO =
      RuleInfo.of("load-backfed", Heading.LOAD, Level.WARNING)
          .summary("a load that a state does not want sees volts")
          .subjects("switched loads and coils that a state does not want")
          .looksFor(
              """
              Switched loads and relay coils that a state does not list and that see volts all the
              same: a coil over its dropOutV, a load of a device with signals over 5 V, any other
              load over 10 % of nominal. A coil whose contact passes current in that state does its
              work and is not found; one whose contacts lack the wire or fuse to anything is not judged.
              Internal and free loads are left out.
              """)
          .why(
              """
              Current that comes in by the back door keeps a pump running with the switch off, lets
              an indicator glow, or holds a relay that should have let go.
              """)
          .remedy(
              """
              Follow the way that the finding spells out: break it, or put a diode into it. When the
              load is meant to work there, list it in the state's "on".
              """)
          .basis("Thresholds are common practice; a coil's own dropOutV is its part's.")
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(
              new Setting(
                  ELECTRONICS,
                  5,
                  0,
                  60,
                  "V",
                  "at a load of a device with signals (common practice)"))
          .setting(
              new Setting(
                  PERCENT, 10, 0, 100, "%", "of nominal, at any other load (common practice)"))
          .failing(example(""))
          .passing(example("\"LAMP.led\", "))
          .build();

  private static String example(String on) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}},
           "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "ohms": 20}}}},
         "wires": {"W0": {"from": "BAT:+", "to": "SW:1"}, "W1": {"from": "SW:2", "to": "FAN:1"},
                   "W2": {"from": "FAN:2", "to": "BAT:-"}, "W3": {"from": "FAN:1", "to": "LAMP:1"},
                   "W4": {"from": "LAMP:2", "to": "BAT:-"}},
         "states": {"off": {}, "day": {"set": {"SW": "on"}, "on": [%s"FAN.motor"]}}}
        """,
        on);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** An unwanted load with the volts it sees. */
  private record Seen(OperatingPoint state, double volts) {}

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement user && isSwitched(user)) {
        judge(facts, settings, user, ledger);
      }
    }
  }

  private static boolean isSwitched(Edge.OfElement edge) {
    return edge.element() instanceof Element.Coil
        || (edge.element() instanceof Element.Load load && load.use() == Element.Load.Use.SWITCHED);
  }

  private static void judge(Facts facts, Settings settings, Edge.OfElement user, Ledger ledger) {
    double limit = limit(facts, settings, user);
    List<Seen> seen = new ArrayList<>();
    boolean unwanted = false;
    for (OperatingPoint state : facts.operating().all()) {
      if (!state.wanted(user)) {
        unwanted = true;
        double volts = Math.abs(state.across(user));
        if (volts > limit && !worksForAnother(facts, state, user)) {
          seen.add(new Seen(state, volts));
        }
      }
    }
    if (!seen.isEmpty() && movesNothing(facts, user)) {
      ledger.notJudged(user.subject(), IDLE);
    } else if (!seen.isEmpty()) {
      ledger.finding(finding(facts, user, limit, seen));
    } else if (unwanted) {
      ledger.fine();
    }
  }

  private static double limit(Facts facts, Settings settings, Edge.OfElement user) {
    double nominal = facts.harness().defaults().nominalV();
    if (user.element() instanceof Element.Coil coil) {
      return coil.dropOutV() == null ? RELEASE * nominal / 100 : coil.dropOutV();
    }
    Subject subject = user.subject();
    return hasSignals(facts, user)
        ? settings.number(ELECTRONICS, subject)
        : settings.number(PERCENT, subject) * nominal / 100;
  }

  private static boolean hasSignals(Facts facts, Edge.OfElement user) {
    Device device = facts.harness().devices().get(user.device());
    DeviceType type = device == null ? null : facts.harness().typeOf(device);
    return type != null
        && type.elements().values().stream().anyMatch(Element.Signal.class::isInstance);
  }

  /** Whether a coil is pulled and a contact that it closes passes current. */
  private static boolean worksForAnother(Facts facts, OperatingPoint state, Edge.OfElement user) {
    if (!(user.element() instanceof Element.Coil) || !state.pulled(user)) {
      return false;
    }
    for (String pin : facts.wiring().pinsOf(user.device())) {
      for (Edge edge : facts.network().edgesAt(Point.pin(user.device(), pin))) {
        if (edge instanceof Edge.OfElement inside
            && inside.element() instanceof Element.Contact contact
            && user.name().equals(contact.coil())
            && Math.abs(state.amps(edge)) > SOME_AMPS) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether a coil has contacts that are wired, and none of them lies between a source and a load:
   * a wire or fuse is missing there, which has a finding of its own.
   */
  private static boolean movesNothing(Facts facts, Edge.OfElement user) {
    boolean half = false;
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.device().equals(user.device())
          && inside.element() instanceof Element.Contact contact
          && user.name().equals(contact.coil())) {
        Ends one = Ends.of(facts, inside, inside.a());
        Ends other = Ends.of(facts, inside, inside.b());
        if ((one.source() && other.load()) || (one.load() && other.source())) {
          return false;
        }
        half |= one.source() || one.load() || other.source() || other.load();
      }
    }
    return half && user.element() instanceof Element.Coil;
  }

  /** What a way from one end of a contact comes to, without passing the contact or a load. */
  private record Ends(boolean source, boolean load) {
    static Ends of(Facts facts, Edge contact, Point start) {
      Reach reach =
          Reach.from(
              facts.network(),
              List.of(start),
              (edge, from) -> !edge.equals(contact) && !isEnd(edge));
      boolean source = false;
      boolean load = false;
      for (Point point : reach.points()) {
        for (Edge edge : facts.network().edgesAt(point)) {
          boolean end = isEnd(edge);
          boolean gives =
              edge instanceof Edge.OfElement in && in.element() instanceof Element.Source;
          source |= end && gives;
          load |= end && !gives && !Sides.isFuse(edge);
        }
      }
      return new Ends(source, load);
    }

    private static boolean isEnd(Edge edge) {
      return edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Source
              || inside.element() instanceof Element.Load
              || inside.element() instanceof Element.Coil
              || (inside.element() instanceof Element.Fuse && !inside.fitted()));
    }
  }

  private static Finding.Draft finding(
      Facts facts, Edge.OfElement user, double limit, List<Seen> seen) {
    Seen worst = seen.get(0);
    for (Seen one : seen) {
      worst = one.volts() > worst.volts() ? one : worst;
    }
    Measured measured = Measured.over(worst.volts(), limit, "V");
    Finding.Draft draft =
        Finding.on(user.subject())
            .message(
                user.text()
                    + " sees "
                    + measured.actualShown()
                    + " V in state "
                    + worst.state().state()
                    + ", which does not want it; at most "
                    + measured.limitShown()
                    + " V")
            .remedy("part the way that feeds it, or list it in the state if it is meant to work")
            .measured(measured)
            .state(worst.state().state())
            .basis(
                user.element() instanceof Element.Coil coil && coil.dropOutV() != null
                    ? Basis.GIVEN
                    : Basis.COMMON_PRACTICE);
    way(facts, user, worst.state()).ifPresent(draft::detail);
    for (Seen other : seen) {
      if (!other.equals(worst)) {
        draft.detail("also in state " + other.state().state() + ": " + Users.volts(other.volts()));
      }
    }
    return draft;
  }

  /** The way by which it is fed, from the source on, through loads too when it must be. */
  private static Optional<String> way(Facts facts, Edge.OfElement user, OperatingPoint state) {
    return Feed.of(facts, state, user)
        .map(feed -> "fed by " + feed.supply().fromSource())
        .or(() -> Sneak.way(facts, state, user).map(text -> "fed by " + text));
  }
}
