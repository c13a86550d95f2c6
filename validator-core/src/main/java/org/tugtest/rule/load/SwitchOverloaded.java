package org.tugtest.rule.load;

import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A contact of a switch or relay carries more than its rating for long. */
public final class SwitchOverloaded implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("switch-overloaded", Heading.LOAD, Level.ERROR)
          .summary("a contact carries more than its rating")
          .subjects("contacts")
          .looksFor(
              """
              Contacts of switches, relays and control units whose current is over their ratingA in a
              state that lasts. A load with a duty counts by the root mean square of its current,
              which is what warms the contact; what it makes and breaks is contact-welds-on-inrush.
              Brief states are left out. A contact without ratingA, and one that seems within it
              but through which a load of unknown draw is fed, are not judged.
              """)
          .why("An overloaded contact pits, heats its housing, and in the end welds or opens.")
          .remedy(
              """
              Let the switch move a relay, take a contact with a greater rating, or split the loads.
              """)
          .basis("The contact's own ratingA.")
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example(4))
          .passing(example(6))
          .build();

  private static String example(int rating) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2", "ratingA": %d}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}}
        """,
        rating);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Contact contact) {
        Optional<LastingAmps> flow = LastingAmps.of(facts, edge);
        if (contact.ratingA() == null) {
          ledger.notJudged(edge.subject(), "it gives no ratingA");
        } else if (flow.isEmpty()) {
          ledger.notJudged(edge.subject(), LastingAmps.NO_STATE);
        } else {
          judge(inside, contact.ratingA(), flow.get(), ledger);
        }
      }
    }
  }

  private static void judge(
      Edge.OfElement contact, double rating, LastingAmps flow, Ledger ledger) {
    if (flow.amps() <= rating) {
      if (flow.known()) {
        ledger.fine();
      } else {
        ledger.notJudged(contact.subject(), LastingAmps.NOT_KNOWN);
      }
      return;
    }
    Measured measured = Measured.over(flow.amps(), rating, "A");
    Finding.Draft draft =
        Finding.on(contact.subject())
            .message(
                "contact "
                    + contact.text()
                    + " carries "
                    + measured.actualShown()
                    + " A in state "
                    + flow.worst().state()
                    + "; it is rated "
                    + measured.limitShown()
                    + " A")
            .remedy("let it move a relay, take a contact with a greater rating, or split the loads")
            .measured(measured)
            .state(flow.worst().state())
            .basis(flow.worst().rests(contact.a()).basis());
    flow.peak().ifPresent(draft::detail);
    flow.others(rating).forEach(draft::detail);
    ledger.finding(draft);
  }
}
