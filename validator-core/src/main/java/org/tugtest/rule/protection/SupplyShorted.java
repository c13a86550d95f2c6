package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.network.Edge;
import org.tugtest.protect.DeadShort;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** Plus and minus of a source meet without a load between. */
public final class SupplyShorted implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("supply-shorted", Heading.PROTECTION, Level.ERROR)
          .summary("plus and minus meet by a way that can be closed, without a load between")
          .subjects("sources")
          .looksFor(
              """
              A way from the plus of a source to its minus through wires, plugs, splices, bolted
              metal, fitted fuses, links and contacts that can be closed together: those of a switch
              in one of its positions, those of a relay with its coil pulled or released. A
              change-over is no short, nor are batteries side by side or in a row. Of each short the
              shortest way is told, with every wire and contact on it; the first is the one that,
              taken out, leaves most loads between plus and minus. Until it is put right, the other
              rules on protection judge the car without it.
              """)
          .why(
              """
              The first time that way is closed, the fuse opens at best; without one the wire burns.
              On the drawing such a way looks like any other, as it often leads through two plugs
              and a switch.
              """)
          .remedy(
              """
              Move the wire to the contact that was meant, or take it out. Where a switch joins plus
              and minus in one of its positions, put the load between.
              """)
          .basis("Follows from what a source is.")
          .causes(Cause.SUPPLY_SHORTED, Cause.ON_WAY_OF_SHORT)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "SW:1", "areaMm2": 1},
                         "W2": {"from": "SW:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "WIPE": {"elements": {"motor": {"kind": "load", "a": "53", "b": "31"}}},
                 "K": {"elements": {
                   "coil": {"kind": "coil", "a": "85", "b": "86", "ohms": 85},
                   "run": {"kind": "contact", "a": "30", "b": "87", "coil": "coil",
                           "rest": "open"},
                   "brake": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil",
                             "rest": "closed"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "K:87", "areaMm2": 1},
                         "W2": {"from": "K:30", "to": "WIPE:53", "areaMm2": 1},
                         "W3": {"from": "K:87a", "to": "BAT:-", "areaMm2": 1},
                         "W4": {"from": "WIPE:31", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Set<Subject> bad = new LinkedHashSet<>();
    List<DeadShort> shorts = facts.protection().shorts();
    for (int i = 0; i < shorts.size(); i++) {
      List<Subject> sources = sources(shorts.get(i));
      bad.addAll(sources);
      Finding.Draft draft = finding(shorts.get(i));
      if (i == DeadShort.MOST - 1) {
        draft.detail("more may come to light once these are put right");
      }
      ledger.finding(draft, sources);
    }
    for (Edge.OfElement source : facts.network().sources()) {
      if (!bad.contains(source.subject())) {
        if (!facts.unread().isEmpty()) {
          ledger.notJudged(source.subject(), Facts.FILE_UNREAD);
        } else if (!facts.sides().feed().complete()) {
          ledger.notJudged(source.subject(), Unjudged.TOO_MANY);
        } else {
          ledger.fine();
        }
      }
    }
  }

  /** The source, and those that the way leads through. */
  static List<Subject> sources(DeadShort found) {
    List<Subject> sources = new ArrayList<>(List.of(found.source().subject()));
    found.way().edges().stream()
        .filter(ShortWay::isSource)
        .map(Edge::subject)
        .forEach(sources::add);
    return sources;
  }

  private static Finding.Draft finding(DeadShort found) {
    String switches = ShortWay.switches(found);
    return ShortWay.draft(found)
        .message(
            "plus and minus of "
                + found.source().text()
                + " meet through "
                + found.culprit().text()
                + (switches.isEmpty() ? "" : ", when " + switches)
                + ", with no load between")
        .remedy(
            found.culprit() instanceof Edge.OfWire wire
                ? "move "
                    + wire.text()
                    + " to the contact that was meant, or take it out; as drawn it joins "
                    + wire.a().text()
                    + " and "
                    + wire.b().text()
                : "put a load between "
                    + found.culprit().a().text()
                    + " and "
                    + found.culprit().b().text()
                    + ", or move the wire that leads to one of them");
  }
}
