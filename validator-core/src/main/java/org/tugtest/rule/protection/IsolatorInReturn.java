package org.tugtest.rule.protection;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.network.Edge;
import org.tugtest.protect.Protection;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** The only pole of the isolator is in the earth lead. */
public final class IsolatorInReturn implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("isolator-in-return", Heading.PROTECTION, Level.WARNING)
          .summary("the only pole of the isolator is in the earth lead")
          .subjects("isolator contacts")
          .looksFor(
              """
              A contact with "isolator": true on the return side, that is between the loads and the
              minus of a source, while no isolator contact is on the feed side.
              """)
          .why(
              """
              With the earth lead open all wires stay at battery plus. The first one that touches
              the chassis, or a second earth that somebody adds, such as a battery charger, brings
              the car back to life, and no fuse sees it.
              """)
          .remedy("Put the isolator, or a second pole of it, into the lead from the battery plus.")
          .basis(
              """
              Common practice: a general circuit breaker opens the plus lead; a pole in the earth
              lead alone leaves the car live. The German rule (DMSB part 4, 8.4, as quoted at
              dragracing.de) asks for it between the plus of the battery and all consumers. Where
              nothing else joins the minus, such a contact does part the battery, so this is a
              warning; waive it where that is what is wanted.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "ISO": {"elements": {"pole": {"kind": "contact", "a": "1", "b": "2",
                                               "isolator": true}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "LAMP:1", "areaMm2": 1},
                         "W2": {"from": "LAMP:2", "to": "ISO:1", "areaMm2": 1},
                         "W3": {"from": "ISO:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "ISO": {"elements": {"pole": {"kind": "contact", "a": "1", "b": "2",
                                               "isolator": true}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 1},
                         "W2": {"from": "ISO:2", "to": "LAMP:1", "areaMm2": 1},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Protection protection = facts.protection();
    List<Edge.OfElement> isolators = facts.isolation().isolators();
    boolean onFeed =
        isolators.stream().anyMatch(pole -> EarthLeadPole.isOn(protection.feed(), pole));
    for (Edge.OfElement pole : isolators) {
      boolean feed = EarthLeadPole.isOn(protection.feed(), pole);
      if (!feed && !EarthLeadPole.isOn(protection.back(), pole)) {
        ledger.notJudged(pole.subject(), "no source leads to it");
      } else if (feed || onFeed) {
        ledger.fine();
      } else {
        ledger.finding(finding(pole).cause(EarthLeadPole.identity(facts, pole).orElse(null)));
      }
    }
  }

  private static Finding.Draft finding(Edge.OfElement pole) {
    return Finding.on(pole.subject())
        .message(
            "isolator contact "
                + pole.text()
                + " opens the earth lead alone; with it open every feed wire stays live")
        .remedy(
            "put "
                + pole.text()
                + ", or a second pole of "
                + pole.device()
                + ", between the plus of the battery and everything it feeds")
        .basis(org.tugtest.finding.Basis.COMMON_PRACTICE);
  }
}
