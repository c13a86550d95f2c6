package org.tugtest.rule.protection;

import java.util.Map;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.network.Edge;
import org.tugtest.network.Sides;
import org.tugtest.protect.Faults;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;

/** A short far from its fuse draws too little to open it, or opens it too late. */
public final class FuseDoesNotClear implements Rule {
  private static final String SECONDS = "seconds";

  private static final RuleInfo INFO =
      RuleInfo.of("fuse-does-not-clear", Heading.PROTECTION, Level.ERROR)
          .summary("a short far from its fuse draws too little to open it in time")
          .subjects("fuses")
          .looksFor(
              """
              A fuse that is not sure to open, or only after more than so many seconds, when a load
              or coil behind it is shorted from pin to pin, a dead end of the feed to the return
              beside it, or what lies before the next fuse to the chassis. The current is the least
              that can flow: the least open volts of a battery in any lasting state, conductors at
              their class temperature, joints at twice their figure, fuses cold. The time is the
              greatest of the fuse's band: the part's own times, else the table of its style; below
              the first current at which opening is guaranteed it never opens. Where several fuses
              feed the place they open one after another. A fuse without opening times, what lies
              behind a smaller one of these, and a place with a wire of unknown length or area on
              its way that would pass without it, are not judged; places without a fuse are the matter of fuse-missing-upstream.
              """)
          .why(
              """
              A fuse that looks at a short and does nothing leaves the whole current of the short in
              the wire, for minutes or for good. Long thin runs at the end of the loom are where it
              happens, and a test at the fuse box never shows it.
              """)
          .remedy(
              """
              Take thicker wire on the piece of the way that has most ohms (the finding names it),
              earth the load nearer, or take a smaller fuse if the loads allow it.
              """)
          .basis(
              """
              Opening times: makers' limits of ISO 8820-3 types at 135 % as quoted in public
              documents, the others from memory, which make a warning only; give the part's own
              "times" to replace them. 5 s: common practice, the time for which the adiabatic
              formula of IEC 60364-5-54 holds. Joints at twice their figure: common practice.
              """)
          .follows(Cause.VOLTS_WRONG)
          .setting(
              new Setting(
                  SECONDS, 5, 0.01, 600, "s", "greatest time to open on a short; common practice"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6, "ohms": 0.01}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 20,
                                            "style": "blade-mini"}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6, "cutMm": 300},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 0.5, "cutMm": 6000},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 0.5, "cutMm": 6000}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6, "ohms": 0.01}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 5,
                                            "style": "blade-mini"}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6, "cutMm": 300},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 0.5, "cutMm": 3000},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 0.5, "cutMm": 3000}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Faults faults = facts.faults();
    Map<String, Clearing> byFuse = new TreeMap<>(NaturalOrder.NATURAL);
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse && Sides.isFuse(edge) && fuse.fitted()) {
        double limit = settings.number(SECONDS, fuse.subject());
        byFuse.put(fuse.text(), new Clearing(faults, fuse, limit));
      }
    }
    for (Faults.Spot spot : faults.spots()) {
      faults
          .slowest(spot)
          .flatMap(course -> ClearingCase.of(faults, spot, course))
          .ifPresent(
              found -> {
                Clearing clearing = byFuse.get(found.fuse().text());
                if (clearing != null) {
                  clearing.add(found);
                }
              });
    }
    byFuse.values().forEach(clearing -> clearing.judge(ledger));
  }
}
