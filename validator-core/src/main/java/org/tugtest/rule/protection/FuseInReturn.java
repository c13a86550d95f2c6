package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.Sides;
import org.tugtest.protect.Protection;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** A fuse sits between loads and the minus of a source. */
public final class FuseInReturn implements Rule {
  private static final int NAMED = 6;
  private static final RuleInfo INFO =
      RuleInfo.of("fuse-in-return", Heading.PROTECTION, Level.WARNING)
          .summary("a fuse sits in the return of a load")
          .subjects("fuses that are fitted")
          .looksFor(
              """
              A fuse of which both ends are joined to the minus of a source and neither to a plus
              without a load between, whatever contacts are closed. Trips of control units do not
              count.
              """)
          .why(
              """
              When it opens, the load is dead and yet its whole circuit stays at battery plus; the
              first wire of it that touches the chassis makes it run. And a feed wire that chafes
              through to the chassis never sends its current through this fuse.
              """)
          .remedy(
              """
              Put the fuse into the feed, close to the source. Where both leads are insulated from
              the chassis and fused on purpose, waive it with that reason.
              """)
          .basis("Common practice on vehicles whose chassis is minus.")
          .failing(example("LAMP", "FB"))
          .passing(example("FB", "LAMP"))
          .build();

  private static String example(String first, String second) {
    return Example.filled(
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "out", "ratingA": 10}}},
           "LAMP": {"elements": {"bulb": {"kind": "load", "a": "in", "b": "out", "watts": 35}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "%s:in", "areaMm2": 1},
                   "W2": {"from": "%s:out", "to": "%s:in", "areaMm2": 1},
                   "W3": {"from": "%s:out", "to": "BAT:-", "areaMm2": 1}}}
        """,
        first, first, second, second);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Protection protection = facts.protection();
    for (Edge edge : facts.network().edges()) {
      if (!(edge instanceof Edge.OfElement fuse) || !isFitted(fuse)) {
        continue;
      }
      boolean feed = protection.feed().reaches(fuse.a()) || protection.feed().reaches(fuse.b());
      boolean back = protection.back().reaches(fuse.a()) && protection.back().reaches(fuse.b());
      if (!feed && !back) {
        ledger.notJudged(fuse.subject(), "no source leads to it");
      } else if (!feed) {
        ledger.finding(finding(facts, fuse));
      } else {
        ledger.fine();
      }
    }
  }

  private static boolean isFitted(Edge.OfElement edge) {
    return Sides.isFuse(edge)
        && edge.fitted()
        && edge.element() instanceof Element.Fuse its
        && !its.electronic();
  }

  private static Finding.Draft finding(Facts facts, Edge.OfElement fuse) {
    List<String> loads = loads(facts, fuse);
    String its = loads.isEmpty() ? "loads" : Series.and(loads, NAMED);
    return Finding.on(fuse.subject())
        .message(
            "fuse "
                + fuse.text()
                + " sits in the return of "
                + its
                + "; when it opens, "
                + its
                + (loads.size() == 1 ? " stays" : " stay")
                + " at plus")
        .remedy("put the fuse into the feed, close to the source")
        .basis(Basis.COMMON_PRACTICE);
  }

  /** What returns through the wires at a fuse. */
  private static List<String> loads(Facts facts, Edge.OfElement fuse) {
    List<String> fewest = List.of();
    for (Point end : List.of(fuse.a(), fuse.b())) {
      List<String> here = new ArrayList<>();
      for (Edge edge : facts.network().edgesAt(end)) {
        if (edge instanceof Edge.OfWire wire) {
          facts.protection().loadsBehind(wire.wire().id(), true).stream()
              .map(Edge.OfElement::text)
              .filter(load -> !here.contains(load))
              .forEach(here::add);
        }
      }
      if (!here.isEmpty() && (fewest.isEmpty() || here.size() < fewest.size())) {
        fewest = here;
      }
    }
    return fewest;
  }
}
