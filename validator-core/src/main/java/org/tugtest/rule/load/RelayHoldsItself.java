package org.tugtest.rule.load;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.solve.Trouble;
import org.tugtest.text.Series;

/** Relays rest in more than one way, and the state does not say what was before. */
public final class RelayHoldsItself implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("relay-holds-itself", Heading.LOAD, Level.NOTE)
          .summary("a relay rests pulled or released, depending on what was before")
          .subjects("relay coils")
          .looksFor(
              """
              Coils that in a state stay released when they begin released and stay pulled when they
              begin pulled, where the state does not say in "from" which state it is entered from.
              Every state is solved from all released, from all pulled and from its "from".
              """)
          .why(
              """
              What works in such a state depends on how it was entered. Where that is meant, as with a
              start button and a stop button, "from" makes it plain; where it is not, the relay may
              stay pulled after the switch that fed it is off.
              """)
          .remedy(
              """
              Give the state "from", the state before it; or take the coil's feed from where its own
              contact does not feed it.
              """)
          .basis(
              """
              Follows from the coil's pullInV and dropOutV; where these are not given, 0.6 and 0.15 of
              nominal, which is common practice.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example(""))
          .passing(example("\"from\": \"start\""))
          .build();

  private static String example(String from) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
           "START": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
           "K": {"pins": {"30": {}, "85": {}, "86": {"maxTerminals": 2}, "87": {}},
                 "elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                              "own": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "K:30", "areaMm2": 1, "cutMm": 300},
                   "W2": {"from": "K:87", "to": "K:86", "areaMm2": 1, "cutMm": 100},
                   "W3": {"from": "K:85", "to": "BAT:-", "areaMm2": 1, "cutMm": 300},
                   "W4": {"from": "BAT:+", "to": "START:1", "areaMm2": 1, "cutMm": 300},
                   "W5": {"from": "START:2", "to": "K:86", "areaMm2": 1, "cutMm": 300}},
         "states": {"start": {"set": {"START": "on"}, "on": ["K.coil"]},
                    "work": {"on": ["K.coil"] %s}}}
        """,
        from.isEmpty() ? "" : ", " + from);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Coils.judge(
        facts,
        ledger,
        Coils.troubled(facts, Trouble.HoldsItself.class, state -> state.from().isEmpty()),
        (coils, seen) -> finding(facts, coils, seen));
  }

  private static Finding.Draft finding(
      Facts facts, List<Edge> coils, List<Coils.Seen<Trouble.HoldsItself>> seen) {
    Coils.Seen<Trouble.HoldsItself> first = seen.get(0);
    Finding.Draft draft =
        Coils.draft(
                coils,
                seen,
                new Coils.Does("rests pulled or released", "rest pulled or released"),
                ", depending on what was before; it is reckoned with " + taken(first))
            .remedy(
                "give state "
                    + first.state().state()
                    + " \"from\", the state it is entered from, or feed the coil where its own"
                    + " contact does not")
            .cause(CoilsUnpulled.of(facts, first.state(), coils).orElse(null));
    for (List<Integer> end : first.trouble().ends()) {
      draft.detail("rests with " + pulled(first, end));
    }
    return draft;
  }

  private static String taken(Coils.Seen<Trouble.HoldsItself> seen) {
    return pulled(seen, seen.trouble().ends().get(0));
  }

  private static String pulled(Coils.Seen<Trouble.HoldsItself> seen, List<Integer> end) {
    List<Integer> its = end.stream().filter(seen.trouble().branches()::contains).toList();
    List<String> names = seen.state().edges(its).stream().map(Edge::text).toList();
    return names.isEmpty() ? "none of them pulled" : Series.and(names, Coils.SHOWN) + " pulled";
  }
}
