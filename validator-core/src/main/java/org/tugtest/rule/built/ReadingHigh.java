package org.tugtest.rule.built;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Reading;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Shown;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Quoted;

/** A joint has more resistance than its wires, crimps and contacts account for. */
public final class ReadingHigh implements Rule {
  private static final double PER_OHM = 1000;
  private static final double PERCENT = 100;
  private static final Setting OVER =
      new Setting(
          "percent",
          ReadingLimit.STANDARD.percent(),
          0,
          1000,
          "%",
          "how far a reading may lie over the computed resistance; 120 % of it is the limit of a"
              + " building wiring specification, as quoted");
  private static final Setting OHMS =
      new Setting(
          "ohms",
          ReadingLimit.STANDARD.ohms(),
          0,
          10,
          "ohm",
          "so far over it a reading may lie in any case, for probes and leads; common practice");
  private static final Setting DROP =
      new Setting(
          "dropPercent",
          3,
          0.1,
          50,
          "%",
          "share of the nominal volts; when the excess alone costs more at the current of a state,"
              + " the finding is an error");

  private static final RuleInfo INFO =
      RuleInfo.of(ReadingLimit.RULE, Heading.BUILT, Level.WARNING)
          .gravest(Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a meter shows more resistance than the way between two points can have")
          .subjects("readings with ohms between points that should be joined")
          .looksFor(
              """
              A reading in ohms between two points that are joined, over 120 % of the resistance
              computed for the way at 20 °C (wires, crimps, splices, contacts; all ways in
              parallel), and more than 50 milliohm above it. An error where the excess alone, at
              the greatest current of a state through that way, costs more than the allowed drop.
              Insulation readings are not judged. What no length or size is given for is not
              judged.
              """)
          .why(
              """
              The wire is joined and yet not whole: few strands left, a crimp that holds the
              insulation, a green contact. It passes the lamp test and fails under load, hot.
              """)
          .remedy(
              """
              Move the wire at plug, splice and branch while you watch the meter; look at the
              crimps on that way. Then measure again, with the resistance of the leads taken off.
              """)
          .basis(
              """
              120 % of the calculated resistance: a building wiring specification, as quoted. The
              floor of 50 milliohm: common practice. Resistances: IEC 60228 and others, as the
              ring-out sheet names them.
              """)
          .setting(OVER)
          .setting(OHMS)
          .setting(DROP)
          .failing(Examples.reading("X1:1,X2:1,0.35,yes"))
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
      Double ohms = reading.reading().ohms();
      Shown shown = built.meter().between(reading.from(), reading.to()).orElse(null);
      if (ohms == null
          || shown == null
          || reading.reading().method() == Reading.Method.INSULATION
          || ohms >= ReadingBounds.of(facts.harness(), reading.from()).openOhms()) {
        continue;
      }
      Double milliohm = shown.milliohm();
      if (milliohm == null) {
        ledger.notJudged(reading.from().subject(), "a wire on the way gives no length or no size");
        continue;
      }
      double computed = milliohm / PER_OHM;
      ReadingLimit limit = ReadingBounds.of(facts.harness(), reading.from()).high();
      if (ohms <= limit.greatest(computed)) {
        ledger.fine();
      } else {
        double drop = settings.number(DROP.name(), reading.from().subject());
        ledger.finding(finding(facts, built, reading, ohms, shown, computed, limit, drop));
      }
    }
  }

  private static Finding.Draft finding(
      Facts facts,
      AsBuilt built,
      TakenReading reading,
      double ohms,
      Shown shown,
      double computed,
      ReadingLimit limit,
      double dropPercent) {
    Finding.Draft draft =
        Continuity.finding(reading, built.meter())
            .message(
                reading.from()
                    + " to "
                    + reading.to()
                    + " reads "
                    + Quoted.number(ohms)
                    + " ohm; computed are "
                    + rounded(computed)
                    + " ohm")
            .remedy(
                "move the wire at plugs, splices and branches while you watch the meter, and look"
                    + " at the crimps on that way")
            .measured(Measured.over(ohms, limit.greatest(computed), "ohm"))
            .basis(shown.basis().weaker(Basis.COMMON_PRACTICE))
            .detail("way: " + Continuity.way(built.meter(), reading.from(), reading.to()));
    return withVolts(draft, facts, built, reading, ohms - computed, dropPercent);
  }

  /** What the excess costs at the greatest lasting current of a state, and whether that is much. */
  private static Finding.Draft withVolts(
      Finding.Draft draft,
      Facts facts,
      AsBuilt built,
      TakenReading reading,
      double excess,
      double dropPercent) {
    Map<String, Edge> wires = new HashMap<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        wires.put(wire.wire().id(), edge);
      }
    }
    double worst = 0;
    String state = "";
    List<Edge> way =
        built.meter().path(reading.from(), reading.to()).map(Path::edges).orElse(List.of());
    for (OperatingPoint point : facts.operating().all()) {
      for (Edge edge : way) {
        Edge planned = wires.get(edge.text());
        double amps = planned == null || point.brief() ? 0 : Math.abs(point.amps(planned));
        if (amps > worst) {
          worst = amps;
          state = point.state();
        }
      }
    }
    double volts = worst * excess;
    if (volts <= 0) {
      return draft;
    }
    draft.detail(
        "at " + rounded(worst) + " A (" + state + ") the excess costs " + rounded(volts) + " V");
    return volts > facts.harness().defaults().nominalV() * dropPercent / PERCENT
        ? draft.level(Level.ERROR).state(state)
        : draft;
  }

  private static String rounded(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
