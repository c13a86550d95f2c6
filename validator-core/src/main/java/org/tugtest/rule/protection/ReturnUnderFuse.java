package org.tugtest.rule.protection;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Protection;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.ReturnFault;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** Faults in loads can send more through a return wire for ever than it stands. */
public final class ReturnUnderFuse implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("return-under-fuse", Heading.PROTECTION, Level.ERROR)
          .summary("faults in loads can send more through a return wire than it stands")
          .subjects("wires through which loads return")
          .looksFor(
              """
              A wire on the way from loads back to the minus of a source through which more can flow
              for ever than makes its conductor as hot as its class, when one of the loads that
              return through it fails inside: what the fuses before that load let through for ever,
              and beside it what the other loads draw in the state in which that is most. It is no
              more than faults in all of them together could draw from the sources, such as where
              they have one fuse in common, and no more than a fuse in the way back lets through
              that all must pass. That two loads fail at once is not provided for. A load returns
              through a wire when a simple way from its return pin to a minus leads through it;
              links and bolted metal carry what they join, so that no wire beside them has to. A
              wire that leads to the minus of sources with "selfLimiting" alone, as of a converter
              or a solar charger, takes back what they give, and what faults beyond it send the
              other way. Loads without a fuse are left out: they have a finding of their own. Where
              what the others draw counts and a load does not say it, the wire is not judged.
              Besides, a warning: the greatest of these fuses may hold 1.35 times its rating for ten
              minutes, and the wire then gets hotter than 25 K over its class.
              """)
          .why(
              """
              A motor that fails inside sends what its fuse holds through its earth lead. An earth
              lead thinner than the feed burns while the fuse stays whole, and a common earth wire
              carries that beside the current of all that hangs on it.
              """)
          .remedy(
              """
              Make the earth lead as thick as the feed, or fit smaller fuses, or give the loads
              earths of their own. The finding names what would do.
              A part it names stands what flows and what the fuses let through there, and suits the
              terminals, seals and splices at both ends. Where all rules run, on a harness of up to
              700 wires, all of them judge the harness with that part, for a dozen trials at the
              most, and the finding says what came of it.
              """)
          .basis(GaugeUnderFuse.BASIS)
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
                 "FAN": {"elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 18}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6},
                         "W2": {"from": "FB:1", "to": "FAN:1", "areaMm2": 4},
                         "W3": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 0.5}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 30}}},
                 "FAN": {"elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 18}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6},
                         "W2": {"from": "FB:1", "to": "FAN:1", "areaMm2": 4},
                         "W3": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 4}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Gauge gauge = new Gauge(facts, ledger);
    Protection protection = facts.protection();
    for (Exposure exposure : protection.returning()) {
      String wire = exposure.wire().wire().id();
      if (protection.returnsUnfusedAlone(wire)) {
        ledger.notJudged(exposure.wire().subject(), "only loads without a fuse return through it");
      } else {
        ReturnFault.of(facts, wire).ifPresent(gauge::judgeReturn);
      }
    }
  }
}
