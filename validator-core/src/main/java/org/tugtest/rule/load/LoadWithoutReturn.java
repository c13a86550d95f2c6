package org.tugtest.rule.load;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A load that a state wants has no way to a source's minus. */
public final class LoadWithoutReturn implements Rule {
  static final String ID = "load-without-return";
  private static final RuleInfo INFO =
      RuleInfo.of(ID, Heading.LOAD, Level.ERROR)
          .summary("a load that a state wants has no way to minus")
          .subjects("loads and coils that a state wants")
          .looksFor(
              """
              Loads and coils that a state wants, of which one end is on a source's plus and the
              other is not joined to any source's minus as the contacts stand in that state; or
              neither end is joined to either; or the other is joined to the minus of a source alone
              that nothing joins to the one that feeds it: two batteries with no earth in common.
              Loads that hang together lack it for one reason: the others name the first as their
              cause. A load that has the volts it works with, minV or half of nominal, through
              nothing but loads that the state wants too or that are free returns through them: a
              charge lamp before the field of its alternator, say.
              """)
          .why(
              """
              A missing earth does not only stop the load: the current looks for another way back, through
              lamps, coils and signal wires.
              """)
          .remedy(
              """
              Add the wire to its earth point, or correct the contact in its return.
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
                 "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
               "splices": {"S1": {"kind": "end-cap"}},
               "wires": {"W1": {"from": "BAT:+", "to": "LAMP:1"}, "W2": {"from": "LAMP:2", "to": "S1"}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "LAMP:1"}, "W2": {"from": "LAMP:2", "to": "BAT:-"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    new Unserved(ID, (live, load) -> !live.returns(load), Live::looseEnd, false)
        .judge(
            facts,
            ledger,
            "has no way to a source's minus",
            "add its earth, or correct the contact in its return");
  }
}
