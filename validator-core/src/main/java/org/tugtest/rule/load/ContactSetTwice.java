package org.tugtest.rule.load;

import java.util.HashMap;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** States that set a contact which something else moves already. */
public final class ContactSetTwice implements Rule {
  private static final String ON = "on";

  private static final RuleInfo INFO =
      RuleInfo.of("contact-set-twice", Heading.LOAD, Level.WARNING)
          .summary("a state sets a contact that its device or its coil moves already")
          .subjects("contacts that a state sets by themselves")
          .looksFor(
              """
              In "set" of a state: a contact set to "on" that the position of its device in the same
              state closes already; and a contact with a coil, which is then held where the state
              says, whatever the coil does.
              """)
          .why(
              """
              What is said twice is changed in one place and forgotten in the other. A relay contact
              that a state holds hides a coil that does not pull.
              """)
          .remedy(
              """
              Leave the contact out of "set", or leave the device in another position. For a relay,
              feed its coil in that state instead.
              """)
          .basis("Follows from the format.")
          .failing(example("\"ECU\": \"run\", \"ECU.drive\": \"on\""))
          .passing(example("\"ECU\": \"run\", \"ECU.other\": \"on\""))
          .build();

  private static String example(String set) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "ECU": {"positions": ["idle", "run"],
                   "elements": {"drive": {"kind": "contact", "a": "1", "b": "31", "closedIn": ["run"]},
                                "other": {"kind": "contact", "a": "2", "b": "31", "closedIn": ["idle"]}}}},
         "states": {"driving": {"set": {%s}}}}
        """,
        set);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, Elements.In<Element.Contact>> contacts = new HashMap<>();
    Elements.of(facts, Element.Contact.class).forEach(one -> contacts.put(one.text(), one));
    for (State state : facts.harness().states().values()) {
      for (Map.Entry<Ref, String> entry : state.set().entrySet()) {
        String set = entry.getKey().text();
        Elements.In<Element.Contact> contact = contacts.get(set);
        if (contact != null) {
          judge(facts, state, contact, set, entry.getValue(), ledger);
        }
      }
    }
  }

  private static void judge(
      Facts facts,
      State state,
      Elements.In<Element.Contact> contact,
      String set,
      String to,
      Ledger ledger) {
    String position = position(state, contact);
    if (contact.element().coil() != null) {
      ledger.finding(
          finding(facts, state, contact)
              .message(
                  "state " + state.id() + " holds " + set + " " + to + ", whatever its coil does")
              .remedy("leave " + set + " out of \"set\" and feed its coil in that state"));
    } else if (to.equals(ON) && contact.element().closedIn().contains(position)) {
      ledger.finding(
          finding(facts, state, contact)
              .message(
                  "state "
                      + state.id()
                      + " closes "
                      + set
                      + " twice: position "
                      + position
                      + " of "
                      + contact.device()
                      + " closes it already")
              .remedy("leave " + set + " out of \"set\" of state " + state.id()));
    } else {
      ledger.fine();
    }
  }

  private static Finding.Draft finding(
      Facts facts, State state, Elements.In<Element.Contact> contact) {
    return Finding.on(Subject.of("states", state.id()), contact.subject())
        .at(facts.places().of("states/" + state.id(), "set", contact.text()))
        .state(state.id());
  }

  private static String position(State state, Elements.In<Element.Contact> contact) {
    for (Map.Entry<Ref, String> entry : state.set().entrySet()) {
      if (entry.getKey().text().equals(contact.device())) {
        return entry.getValue();
      }
    }
    DeviceType type = contact.type();
    return (type.positions().isEmpty() ? DeviceType.OFF_ON : type.positions()).get(0);
  }
}
