package org.tugtest.rule.built;

import java.util.List;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.network.Meter;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;

/** A meter shows no joint between two points that have one. */
public final class ReadingOpen implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("reading-open", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a meter shows as open what should be joined")
          .subjects("readings between points that should be joined")
          .looksFor(
              """
              A reading that says "no" under joined, or has as many ohms as no wire has, between
              two points that the plan joins by wires, splices, plugged contacts and bolted metal.
              What a record says was built otherwise counts as built. Of several readings between
              two points the last counts.
              """)
          .why(
              """
              The circuit is dead, or it is another one: a wire is broken, a terminal is not home,
              or the wire sits in another cavity than planned.
              """)
          .remedy(
              """
              Follow the way that the finding names: terminals home, plugs mated, wires whole; and
              look into the neighbouring cavities. Then measure again and add the new reading.
              """)
          .basis(
              """
              Point to point continuity of every end is checked by common practice. From how many
              ohms on two points count as open: common practice.
              """)
          .setting(Continuity.OPEN_OHMS)
          .failing(Examples.reading("X1:1,X2:1,,no"))
          .passing(Examples.reading("X1:1,X2:1,0.03,yes"))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    AsBuilt built = facts.asBuilt().orElse(null);
    for (TakenReading reading : built == null ? List.<TakenReading>of() : built.readings()) {
      if (!built.meter().joined(reading.from(), reading.to())) {
        continue;
      }
      double open = settings.number(Continuity.OPEN_OHMS.name(), reading.from().subject());
      if (Continuity.joined(reading.reading(), open, open)) {
        ledger.fine();
      } else {
        ledger.finding(finding(reading, built.meter(), open));
      }
    }
  }

  private static Finding.Draft finding(TakenReading reading, Meter meter, double open) {
    Finding.Draft draft =
        Continuity.finding(reading, meter)
            .message(
                reading.from()
                    + " to "
                    + reading.to()
                    + " "
                    + Continuity.said(reading.reading())
                    + "; they should be joined: "
                    + Continuity.way(meter, reading.from(), reading.to()))
            .remedy(
                "look for a broken wire, a terminal that is not home or an unmated plug on that"
                    + " way, and into the neighbouring cavities; then measure again");
    Double ohms = reading.reading().ohms();
    return ohms == null ? draft : draft.measured(Measured.over(ohms, open, "ohm"));
  }
}
