package org.tugtest.rule.protection;

import java.util.LinkedHashSet;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.protect.DeadShort;
import org.tugtest.protect.Protection;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** Plus leads to minus through diodes in their direction. */
public final class DiodeAcrossSupply implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("diode-across-supply", Heading.PROTECTION, Level.ERROR)
          .summary("plus leads to minus through diodes alone")
          .subjects("diodes between feed and return")
          .looksFor(
              """
              A way from the plus of a source to its minus through one or more diodes from anode to
              cathode and otherwise through wires, plugs, splices, bolted metal, fitted fuses, links
              and contacts that can be closed together. A diode inside the device of a source, such
              as a rectifier, counts as a piece of wire.
              """)
          .why(
              """
              A suppressor diode that is fitted the wrong way round shorts the supply when its relay
              or valve is switched on. It burns open, unseen, and the switch or control unit takes
              the surge from then on.
              """)
          .remedy(
              """
              Turn the diode round: its cathode (the ring) goes to plus. In the files "a" is the
              anode and "b" the cathode.
              """)
          .basis("Follows from what a diode is.")
          .causes(Cause.SUPPLY_SHORTED)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "K": {"elements": {"coil": {"kind": "coil", "a": "1", "b": "2", "ohms": 85},
                                    "d": {"kind": "diode", "a": "1", "b": "2"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "K:1", "areaMm2": 1},
                         "W2": {"from": "K:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "K": {"elements": {"coil": {"kind": "coil", "a": "1", "b": "2", "ohms": 85},
                                    "d": {"kind": "diode", "a": "2", "b": "1"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "K:1", "areaMm2": 1},
                         "W2": {"from": "K:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Protection protection = facts.protection();
    Set<Subject> bad = new LinkedHashSet<>();
    for (DeadShort found : protection.shortsThroughDiodes()) {
      ledger.finding(finding(found));
      found.way().edges().stream().map(Edge::subject).forEach(bad::add);
    }
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Diode
          && !bad.contains(edge.subject())) {
        if (facts.network().sources().isEmpty()) {
          ledger.notJudged(edge.subject(), Unjudged.NO_SOURCE);
        } else if (!facts.unread().isEmpty()) {
          ledger.notJudged(edge.subject(), Facts.FILE_UNREAD);
        } else {
          ledger.fine();
        }
      }
    }
  }

  private static Finding.Draft finding(DeadShort found) {
    String switches = ShortWay.switches(found);
    Edge culprit = found.culprit();
    return ShortWay.draft(found)
        .message(
            "plus of "
                + found.source().text()
                + " leads to minus through diode "
                + culprit.text()
                + (switches.isEmpty() ? "" : ", when " + switches)
                + ", with no load between")
        .remedy(
            "turn "
                + culprit.text()
                + " round, so that its cathode (\"b\") is at "
                + culprit.a().text()
                + ", or put the load between");
  }
}
