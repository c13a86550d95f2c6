package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** Too many volts are lost between a source and a load, there and back. */
public final class VoltageDropExcessive implements Rule {
  private static final String PERCENT = "percent";
  private static final String CONTINUOUS = "continuousV";
  private static final String INTERMITTENT = "intermittentV";
  private static final String GRAVE = "gravePercent";

  /** A source of so many times nominal is none of that system, as 48 V beside 12 V. */
  private static final double FAR_MORE = 1.5;

  private static final double TWICE_FROM_V = 20;
  private static final String NOT_FED = "no state that wants it feeds it";
  private static final String SHARED =
      "its current passes another load as well, with which it shares the volts";
  private static final String NO_LENGTH = "a wire on its way gives no length or size";
  private static final RuleInfo INFO =
      RuleInfo.of("voltage-drop-excessive", Heading.LOAD, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("too many volts are lost between source and load")
          .subjects("loads that a state wants")
          .looksFor(
              """
              Volts lost from the plus terminal of the source to the load and from the load back to
              minus, in every state that wants the load. The limit is the load's maxDropPercent, else
              the setting percent where the team wrote one, else 3 % of nominal for a critical load,
              0.5 V for one that works continuously and 1.0 V for an intermittent one, twice that
              from 20 V nominal on. Brief states may lose twice as much. Over 10 % is an error. The
              reference is the source that feeds the load; where a generator does, the first source
              that is none and whose plus is joined to its plus. Loads whose current passes another
              load too, such as two fans in a row or a charge lamp before a field, share the volts
              and are not judged in that state.
              """)
          .why(
              """
              A lamp at 90 % of its volts gives 70 % of its light, a fuel pump at 10 V delivers
              less than the engine wants, and the lost watts heat wires and joints.
              """)
          .remedy(
              """
              The finding tells supply and return apart and names what loses most: shorten it, take
              the next larger wire, or mend the joint.
              A part it names brings the whole way within its limit, stands what flows and what the
              fuses let through there, and suits the terminals, seals and splices at both ends. Where
              all rules run, on a harness of up to 700 wires, they judge the harness with it, and
              the finding says what came of it.
              """)
          .basis(
              """
              3 %: ABYC E-11 as quoted by the trade. 0.5 V and 1 V: FAA AC 43.13-1B tables 11-7 and
              11-8 (14 V and 28 V, continuous); twice that for intermittent loads is from memory of
              table 11-6. 10 %: 46 CFR 169.672(c)(2).
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(
              new Setting(
                  PERCENT,
                  3,
                  0.1,
                  100,
                  "%",
                  "of nominal, for critical loads; for all once written (ABYC E-11, as quoted)"))
          .setting(
              new Setting(
                  CONTINUOUS,
                  0.5,
                  0.01,
                  60,
                  "V",
                  "for loads that work continuously (AC 43.13-1B table 11-7)"))
          .setting(
              new Setting(
                  INTERMITTENT,
                  1,
                  0.01,
                  60,
                  "V",
                  "for intermittent loads (AC 43.13-1B table 11-6, from memory)"))
          .setting(
              new Setting(
                  GRAVE,
                  10,
                  0.1,
                  100,
                  "%",
                  "of nominal, from which on it is an error (46 CFR 169.672)"))
          .failing(example(20_000))
          .passing(example(2_000))
          .build();

  private static String example(int mm) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 4}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "areaMm2": 1.5, "cutMm": %d},
                   "W2": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 1.5, "cutMm": %d}}}
        """,
        mm, mm);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** A feed with the limit it is held to. */
  private record Held(Feed feed, double limit, double grave, Basis basis) {
    double over() {
      return feed.drop() / limit;
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Edge.OfElement load : Users.loads(facts)) {
      List<Held> held = new ArrayList<>();
      boolean wanted = false;
      Edge unknown = null;
      boolean shared = false;
      for (OperatingPoint state : facts.operating().all()) {
        if (state.wanted(load)) {
          wanted = true;
          Feed.Own own = Feed.own(facts, state, load);
          shared |= own.shared();
          Optional<Feed> feed = own.feed();
          if (feed.isPresent()) {
            held.add(held(facts, settings, feed.get()));
            unknown = unknown == null ? feed.get().unknown().orElse(null) : unknown;
          }
        }
      }
      if (wanted) {
        judge(facts, load, held, unknown, shared ? SHARED : NOT_FED, ledger);
      }
    }
  }

  /** The greatest drop that a feed is allowed, in volts, as the settings of the harness stand. */
  public static double limitV(Facts facts, Feed feed) {
    return held(facts, new Settings(INFO, facts.harness().limits().get(INFO.id())), feed).limit();
  }

  private static Held held(Facts facts, Settings settings, Feed feed) {
    Element.Load its = (Element.Load) feed.load().element();
    double nominal = nominalV(facts, feed);
    double times = feed.state().brief() ? 2 : 1;
    double scale = nominal >= TWICE_FROM_V ? 2 : 1;
    Subject load = feed.load().subject();
    Double percent = its.maxDropPercent();
    Basis basis = Basis.GIVEN;
    if (percent == null) {
      percent = settings.written(PERCENT, load, Users.device(feed.load())).orElse(null);
    }
    double limit;
    if (percent != null) {
      limit = percent * nominal / 100;
    } else if (its.critical()) {
      limit = settings.number(PERCENT) * nominal / 100;
      basis = Basis.SECONDARY;
    } else if (its.intermittent()) {
      limit = settings.number(INTERMITTENT, load) * scale;
      basis = Basis.MEMORY;
    } else {
      limit = settings.number(CONTINUOUS, load) * scale;
      basis = Basis.SOURCE;
    }
    double grave = settings.number(GRAVE, load) * nominal / 100;
    return new Held(feed, limit * times, grave * times, basis);
  }

  /** That of the harness; the source's own where a load hangs on one of far more. */
  private static double nominalV(Facts facts, Feed feed) {
    double nominal = facts.harness().defaults().nominalV();
    Double volts = ((Element.Source) feed.reference().element()).volts();
    return volts != null && volts > FAR_MORE * nominal ? volts : nominal;
  }

  private static void judge(
      Facts facts,
      Edge.OfElement load,
      List<Held> held,
      @Nullable Edge unknown,
      String none,
      Ledger ledger) {
    Held worst = null;
    for (Held one : held) {
      worst = worst == null || one.over() > worst.over() ? one : worst;
    }
    if (worst == null) {
      ledger.notJudged(load.subject(), none);
    } else if (worst.over() > 1) {
      ledger.finding(finding(facts, load, worst, held));
    } else if (unknown != null) {
      ledger.notJudged(load.subject(), NO_LENGTH);
    } else {
      ledger.fine();
    }
  }

  private static Finding.Draft finding(
      Facts facts, Edge.OfElement load, Held worst, List<Held> held) {
    Feed feed = worst.feed();
    boolean grave = feed.drop() > worst.grave();
    double limit = grave ? Math.max(worst.grave(), worst.limit()) : worst.limit();
    Measured measured = Measured.over(feed.drop(), limit, "V");
    Finding.Draft draft =
        Finding.on(load.subject())
            .message(
                load.text()
                    + " loses "
                    + measured.actualShown()
                    + " V on its way in state "
                    + feed.state().state()
                    + " ("
                    + Users.volts(feed.supplyDrop())
                    + " in the supply, "
                    + Users.volts(feed.returnDrop())
                    + " in the return); at most "
                    + measured.limitShown()
                    + " V")
            .remedy(DropRemedy.of(facts, feed, worst.limit()))
            .measured(measured)
            .state(feed.state().state())
            .basis(
                feed.basis().weaker(grave && limit > worst.limit() ? Basis.SOURCE : worst.basis()));
    Way.worst(feed.supply(), feed.back()).forEach(draft::detail);
    if (grave) {
      draft.level(Level.ERROR);
    }
    for (Held other : held) {
      if (!other.equals(worst) && other.over() > 1) {
        draft.detail(
            "also in state "
                + other.feed().state().state()
                + ": "
                + Users.volts(other.feed().drop())
                + ", at most "
                + Users.volts(other.limit()));
      }
    }
    return draft;
  }
}
