package org.tugtest.rule.protection;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.protect.Exposure;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** The fuses before a wire let more through for ever than it stands. */
public final class GaugeUnderFuse implements Rule {
  static final String BASIS =
      """
      What a wire stands is the heat balance of the wire in still air (Churchill and Chu 1975 for
      the air, emissivity 0.9, IEC 60287-2-1 for the insulation), which meets published tables
      within 12 %, beside its neighbours at their solved currents in the state that leaves least:
      the shrunk bundle, within 4 % of the bundle chart of MIL-W-5088L in all of its 186 readings.
      Where not all currents there are known, no more than the chart's factor for that many
      neighbours used to 20 % of their capacity (FAA AC 43.13-1B table 11-9 takes the same); past
      20 wires that is from memory. Where only that figure, a covering or more than
      twenty hot wires make the wire too thin, it is a warning. 1.35 times for 600 s:
      makers' limits of ISO 8820-3 blades. 25 K over its class: common practice.
      """;

  private static final RuleInfo INFO =
      RuleInfo.of("gauge-under-fuse", Heading.PROTECTION, Level.ERROR)
          .summary("the fuses before a wire let more through than it stands")
          .subjects("wires on the feed side")
          .looksFor(
              """
              A wire through which more can flow for ever, without any fuse opening, than makes its
              conductor as hot as its class. What can flow is the greatest flow from all sources to
              either of its ends with the wire taken out, with the ratings of fuses and the "maxA"
              of self-limiting sources as bounds: on a tree the least fuse upstream, with parallel
              fuses their sum, on a ring the greater of what comes from either side. Besides, a
              warning: a blade fuse may hold 1.35 times its rating for ten minutes, and the wire
              then gets hotter than 25 K over its class. A wire without an area, one that no fuse
              limits and one behind a fuse without a rating are not judged.
              """)
          .why(
              """
              The fuse is there for the wire. When it is too big, a half short or one load too many
              heats the wire and all its neighbours until the insulation runs, and no fuse opens.
              """)
          .remedy(
              """
              Take the next larger wire, or the next smaller fuse if the loads allow it. The finding
              names both.
              A part it names stands what flows and what the fuses let through there, and suits the
              terminals, seals and splices at both ends. Where all rules run, on a harness of up to
              700 wires, all of them judge the harness with that part, for a dozen trials at the
              most, and the finding says what came of it.
              """)
          .basis(BASIS)
          .causes(Cause.WIRE_UNDER_FUSE, Cause.FUSE_TOO_GREAT)
          .follows(
              Cause.ON_WAY_OF_SHORT,
              Cause.WIRE_UNDER_LOAD,
              Cause.WIRE_UNDER_FUSE,
              Cause.FUSE_TOO_GREAT)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 30}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 0.5},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 4}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 5}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 0.5},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 0.5}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Gauge gauge = new Gauge(facts, ledger);
    for (Exposure exposure : facts.protection().exposures()) {
      if (exposure.unbounded()) {
        ledger.notJudged(exposure.wire().subject(), "no fuse is before it");
      } else {
        gauge.judgeFeed(exposure);
      }
    }
  }
}
