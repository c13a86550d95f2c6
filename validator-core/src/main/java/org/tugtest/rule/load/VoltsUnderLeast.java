package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;

/** A load that is fed gets fewer volts than it works with. */
public final class VoltsUnderLeast implements Rule {
  static final String ID = "volts-under-least";
  private static final RuleInfo INFO =
      RuleInfo.of(ID, Heading.LOAD, Level.ERROR)
          .summary("a load that is fed gets fewer volts than it works with")
          .subjects("loads and coils that a state wants and feeds")
          .looksFor(
              """
              Volts at a load in every state that wants it, brief ones included, under its minV;
              where the load gives none, under half of nominal, or of the volts of the sources that
              feed it where these have less than 75 % of nominal, as the 5 V of a control unit. Of a
              coil that stays released, volts under its pullInV. Loads and coils without a way to
              plus or minus have rules of their own, and so have relays that chatter.
              """)
          .why(
              """
              A control unit that resets while cranking does not start the engine, and a relay that
              lets go drops what it feeds.
              """)
          .remedy(
              """
              The finding names what loses most on the way; where the source itself sags, take a
              stronger one or fewer loads in that state.
              """)
          .basis(
              """
              The load's own minV; half of nominal is common practice. From which volts on sources
              are held to be ones of their own, 75 % of nominal, is chosen.
              """)
          .causes(Cause.LOAD_STARVED)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example("11.9"))
          .passing(example("11.0"))
          .build();

  private static String example(String minV) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.1}}},
           "ECU": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "amps": 2, "minV": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "ECU:1", "areaMm2": 1, "cutMm": 500},
                   "W2": {"from": "ECU:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 500}}}
        """,
        minV);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** The volts of a load in a state. */
  private record Seen(Live live, double volts) {}

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    List<Live> states = Live.all(facts);
    for (Edge.OfElement load : Users.loads(facts)) {
      List<Seen> seen = new ArrayList<>();
      for (Live live : states) {
        if (live.state().wanted(load) && live.fed(load) && live.returns(load)) {
          seen.add(new Seen(live, Math.abs(live.state().across(load))));
        }
      }
      if (!seen.isEmpty()) {
        judge(facts, load, seen, ledger);
      }
    }
    new CoilsUnpulled(facts, ledger).judge();
  }

  private static void judge(Facts facts, Edge.OfElement load, List<Seen> seen, Ledger ledger) {
    Element.Load its = (Element.Load) load.element();
    double least = Users.leastVolts(facts, load);
    Seen worst = seen.get(0);
    for (Seen one : seen) {
      worst = one.volts() < worst.volts() ? one : worst;
    }
    Feed feed = Feed.of(facts, worst.live().state(), load).orElse(null);
    if (worst.volts() >= least) {
      if (feed != null && feed.unknown().isPresent()) {
        ledger.notJudged(load.subject(), "a wire on its way gives no length or size");
      } else {
        ledger.fine();
      }
      return;
    }
    Measured measured = Measured.under(worst.volts(), least, "V");
    Basis basis = its.minV() == null ? Basis.COMMON_PRACTICE : Basis.GIVEN;
    Finding.Draft draft =
        Finding.on(load.subject())
            .message(
                load.text()
                    + " gets "
                    + measured.actualShown()
                    + " V in state "
                    + worst.live().state().state()
                    + "; it works from "
                    + measured.limitShown()
                    + " V on"
                    + (its.minV() == null ? half(facts, load) : ""))
            .remedy("lose less on the way, or feed it from a stronger source in that state")
            .measured(measured)
            .state(worst.live().state().state())
            .cause(SupplyCollapses.causeOfFewVolts(facts, worst.live(), load).orElse(null))
            .basis(feed == null ? basis : basis.weaker(feed.basis()));
    if (feed != null) {
      Way.worst(feed.supply(), feed.back()).forEach(draft::detail);
    }
    for (Seen other : seen) {
      if (!other.equals(worst) && other.volts() < least) {
        draft.detail(
            "also in state " + other.live().state().state() + ": " + Users.volts(other.volts()));
      }
    }
    ledger.finding(draft);
  }

  private static String half(Facts facts, Edge.OfElement load) {
    double made = facts.lowSupplies().nominalV(load);
    return made < facts.harness().defaults().nominalV()
        ? " (half of the " + Quoted.number(made) + " V that feed it)"
        : " (half of nominal)";
  }
}
