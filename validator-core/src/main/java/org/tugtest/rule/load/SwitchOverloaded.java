package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
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
              state that lasts. Brief states are left out.
              """)
          .why("An overloaded contact pits, heats its housing, and in the end welds or opens.")
          .remedy(
              """
              Let the switch move a relay, take a contact with a greater rating, or split the loads.
              """)
          .basis("The contact's own ratingA.")
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
    List<OperatingPoint> lasting =
        facts.operating().all().stream().filter(state -> !state.brief()).toList();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Contact contact) {
        if (contact.ratingA() == null) {
          ledger.notJudged(edge.subject(), "it gives no ratingA");
        } else if (lasting.isEmpty()) {
          ledger.notJudged(edge.subject(), "no state lasts");
        } else {
          judge(inside, contact.ratingA(), lasting, ledger);
        }
      }
    }
  }

  private static void judge(
      Edge.OfElement contact, double rating, List<OperatingPoint> lasting, Ledger ledger) {
    OperatingPoint worst = lasting.get(0);
    List<String> others = new ArrayList<>();
    for (OperatingPoint state : lasting) {
      if (Math.abs(state.amps(contact)) > Math.abs(worst.amps(contact))) {
        worst = state;
      }
    }
    double amps = Math.abs(worst.amps(contact));
    if (amps <= rating) {
      ledger.fine();
      return;
    }
    for (OperatingPoint state : lasting) {
      if (!state.equals(worst) && Math.abs(state.amps(contact)) > rating) {
        others.add("also in state " + state.state() + ": " + amps(state.amps(contact)));
      }
    }
    Measured measured = Measured.over(amps, rating, "A");
    Finding.Draft draft =
        Finding.on(contact.subject())
            .message(
                "contact "
                    + contact.text()
                    + " carries "
                    + measured.actualShown()
                    + " A in state "
                    + worst.state()
                    + "; it is rated "
                    + measured.limitShown()
                    + " A")
            .remedy("let it move a relay, take a contact with a greater rating, or split the loads")
            .measured(measured)
            .state(worst.state())
            .basis(worst.rests(contact.a()).basis());
    others.forEach(draft::detail);
    ledger.finding(draft);
  }

  private static String amps(double amps) {
    return String.format(java.util.Locale.ROOT, "%.2f A", Math.abs(amps));
  }
}
