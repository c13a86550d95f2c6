package org.tugtest.rule.built;

import java.util.List;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Reading;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Series;

/** A meter shows a joint between two points that have none. */
public final class ReadingJoined implements Rule {
  private static final Setting INSULATION =
      new Setting(
          "insulationOhms",
          Continuity.INSULATION_OHMS,
          1000,
          1e9,
          "ohm",
          "an insulation reading under this is a joint; 1 Mohm is the club check of a 12 V loom,"
              + " common practice");

  private static final RuleInfo INFO =
      RuleInfo.of("reading-joined", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a meter shows as joined what should be apart")
          .subjects("readings between points that should be apart")
          .looksFor(
              """
              A reading that says "yes" under joined, or has fewer ohms than an open line (fewer
              than the limit of insulation where that was measured), between two points that the
              plan does not join. What a record says was built otherwise counts as built. Fuses are
              pulled, switches open and devices unplugged while it is measured; what of a device
              lies between the two points is named.
              """)
          .why(
              """
              Two circuits touch: current goes where no fuse was meant for it, loads work that
              should not, and a feed that touches a return is a short.
              """)
          .remedy(
              """
              See that everything is unplugged, then look where the two run side by side:
              neighbouring cavities, splices, stripped or chafed insulation. Measure again and add
              the new reading.
              """)
          .basis(
              """
              Each cavity is checked against its neighbours: a public control unit wiring manual.
              From how many ohms on two points are apart: common practice.
              """)
          .setting(Continuity.OPEN_OHMS)
          .setting(INSULATION)
          .failing(Examples.reading("X1:1,X1:2,,yes"))
          .passing(Examples.reading("X1:1,X1:2,,no"))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    AsBuilt built = facts.asBuilt().orElse(null);
    for (TakenReading reading : built == null ? List.<TakenReading>of() : built.readings()) {
      if (built.meter().joined(reading.from(), reading.to())) {
        continue;
      }
      double open = settings.number(Continuity.OPEN_OHMS.name(), reading.from().subject());
      double insulation = settings.number(INSULATION.name(), reading.from().subject());
      if (Continuity.joined(reading.reading(), open, insulation)) {
        boolean insulated = reading.reading().method() == Reading.Method.INSULATION;
        ledger.finding(finding(facts, built, reading, insulated ? insulation : open));
      } else {
        ledger.fine();
      }
    }
  }

  private static Finding.Draft finding(
      Facts facts, AsBuilt built, TakenReading reading, double limit) {
    Finding.Draft draft =
        Continuity.finding(reading, built.meter())
            .message(
                reading.from()
                    + " to "
                    + reading.to()
                    + " "
                    + Continuity.said(reading.reading())
                    + "; nothing should join them")
            .remedy(
                "look where the two run side by side: neighbouring cavities, splices, chafed"
                    + " insulation; then measure again");
    List<String> elements = Continuity.between(facts, reading.from(), reading.to());
    if (!elements.isEmpty()) {
      draft.detail(
          "between them: "
              + Series.and(elements)
              + "; measure with that unplugged, pulled or open");
    }
    Double ohms = reading.reading().ohms();
    return ohms == null || ohms >= limit
        ? draft
        : draft.measured(Measured.under(ohms, limit, "ohm")).basis(Basis.COMMON_PRACTICE);
  }
}
