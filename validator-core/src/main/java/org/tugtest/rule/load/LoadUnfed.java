package org.tugtest.rule.load;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A load that a state wants has no way to a source's plus. */
public final class LoadUnfed implements Rule {
  static final String ID = "load-unfed";
  private static final RuleInfo INFO =
      RuleInfo.of(ID, Heading.LOAD, Level.ERROR)
          .summary("a load that a state wants has no way to plus")
          .subjects("loads and coils that a state wants")
          .looksFor(
              """
              Loads and coils that a state wants, none of whose ends is joined to the plus of a source as
              the contacts stand in that state. Loads and coils are not crossed, diodes only forwards.
              The contacts and empty ways that stand open before it are listed. Loads that hang
              together lack it for one reason: the others name the first as their cause. In a sketch
              the finding asks for the pin that was meant where a live wire ends alone on a contact
              that nothing else names and that is one edit away from it. A load that
              has the volts it works with, minV or half of nominal, through nothing but loads that
              the state wants too or that are free is fed: two fans in a row, say.
              """)
          .why(
              """
              The state says that it works, and it cannot: a switch, relay or fuse on its way is open or a
              wire is missing.
              """)
          .remedy(
              """
              Close the contact or fit the fuse that the finding lists, add the missing wire, or take the
              load out of the state's "on".
              """)
          .basis("Follows from what the state says: the load works in it.")
          .causes(Cause.LOAD_STARVED)
          .follows(
              Cause.JOINT_UNMADE, Cause.JOINT_ONE_SIDED, Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
                 "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "LAMP:1"},
                         "W3": {"from": "LAMP:2", "to": "BAT:-"}},
               "states": {"night": {"on": ["LAMP"]}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
                 "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "LAMP:1"},
                         "W3": {"from": "LAMP:2", "to": "BAT:-"}},
               "states": {"night": {"set": {"SW": "on"}, "on": ["LAMP"]}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    new Unserved(ID, (live, load) -> !live.fed(load), Live::deadEnd, true)
        .judge(
            facts,
            ledger,
            "has no way to a source's plus",
            "close what is open before it, add what is missing, or take it out of the state's"
                + " \"on\"");
  }
}
