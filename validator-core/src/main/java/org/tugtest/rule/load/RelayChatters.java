package org.tugtest.rule.load;

import java.util.ArrayList;
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

/** Relays come to no rest. */
public final class RelayChatters implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("relay-chatters", Heading.LOAD, Level.ERROR)
          .summary("a relay pulls and lets go without end")
          .subjects("relay coils")
          .looksFor(
              """
              Coils that in a state never come to rest: each time they pull, their own contacts or
              the load that these switch on take away the volts that hold them. All coils move at
              once, each with its own difference between pulling and letting go; where that goes
              round in a ring, one at a time. The ring is printed.
              """)
          .why(
              """
              A relay that chatters burns its contacts within minutes, and what it feeds works in
              fits.
              """)
          .remedy(
              """
              Feed the coil from ahead of the contact that starves it, or make the feed stiffer so
              that its volts stay over the drop-out volts of the coil.
              """)
          .basis(
              """
              Follows from the coil's pullInV and dropOutV; where these are not given, 0.6 and 0.15 of
              nominal, which is common practice.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example("\"rest\": \"closed\""))
          .passing(example("\"rest\": \"open\""))
          .build();

  private static String example(String rest) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
           "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                              "own": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "K:30", "areaMm2": 1, "cutMm": 300},
                   "W2": {"from": "K:87", "to": "K:86", "areaMm2": 1, "cutMm": 100},
                   "W3": {"from": "K:85", "to": "BAT:-", "areaMm2": 1, "cutMm": 300}}}
        """,
        rest);
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
        Coils.troubled(facts, Trouble.Chatter.class, state -> true),
        RelayChatters::finding);
  }

  private static Finding.Draft finding(List<Edge> coils, List<Coils.Seen<Trouble.Chatter>> seen) {
    Coils.Seen<Trouble.Chatter> first = seen.get(0);
    Finding.Draft draft =
        Coils.draft(
                coils,
                seen,
                new Coils.Does("comes to no rest", "come to no rest"),
                ": " + steps(first))
            .remedy(
                "feed "
                    + (coils.size() == 1 ? "the coil" : "them")
                    + " from ahead of the contact that takes the volts away, or keep the volts over"
                    + " its drop-out volts with a stiffer feed");
    if (first.trouble().restsElsewhere()) {
      draft.detail("there is a rest, but switching on does not lead to it");
    }
    return draft;
  }

  /** {@code none pulled, then K.coil pulled, and again}. */
  private static String steps(Coils.Seen<Trouble.Chatter> seen) {
    List<Integer> moving = seen.trouble().branches();
    List<String> steps = new ArrayList<>();
    for (List<Integer> pulled : seen.trouble().cycle()) {
      List<Integer> its = pulled.stream().filter(moving::contains).toList();
      List<String> names = seen.state().edges(its).stream().map(Edge::text).toList();
      steps.add(names.isEmpty() ? "none pulled" : Series.and(names, Coils.SHOWN) + " pulled");
    }
    int shown = Math.min(2 * Coils.SHOWN, steps.size());
    String more = steps.size() > shown ? ", then " + (steps.size() - shown) + " more sets" : "";
    return String.join(", then ", steps.subList(0, shown)) + more + ", and again";
  }
}
