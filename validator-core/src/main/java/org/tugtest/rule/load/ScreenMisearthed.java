package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.alg.util.UnionFind;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Group;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** A screen is earthed at no end, or at more than one. */
public final class ScreenMisearthed implements Rule {
  private static final String NO_EARTH = "the harness gives no source, so nothing is earth";
  private static final String UNPLACED = "an end of the screen names no contact";
  private static final RuleInfo INFO =
      RuleInfo.of("screen-misearthed", Heading.LOAD, Level.WARNING)
          .summary("a screen is earthed at no end, or at more than one")
          .subjects("groups with a screen")
          .looksFor(
              """
              A screen, joined through plugs and splices to other screens or not, that reaches a
              source's minus from none of its ends, or from two and more, without passing along a
              screen. Loads and coils are not crossed, contacts count as closed.
              """)
          .why(
              """
              A screen that floats keeps nothing out. One that is earthed twice carries the
              difference of the two earths along the very wires it shall keep quiet.
              """)
          .remedy(
              """
              Earth the screen at one end, usually that of the control unit, and close the other in
              an end cap.
              """)
          .basis("Common practice for signal cables: a screen is earthed at one end.")
          .failing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "ECU": {"elements": {"in": {"kind": "signal", "pin": "1", "type": "pulse"},
                                      "screen": {"kind": "link", "a": "2", "b": "31"}}}},
               "splices": {"S1": {}},
               "wires": {"W1": {"from": "ECU:1", "to": "S1"}, "W2": {"from": "ECU:2", "to": "BAT:-"},
                         "W3": {"from": "ECU:31", "to": "BAT:-"}},
               "groups": {"G1": {"kind": "cable", "wires": ["W1"], "screen": "W2"}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "ECU": {"elements": {"in": {"kind": "signal", "pin": "1", "type": "pulse"},
                                      "screen": {"kind": "link", "a": "2", "b": "31"}}}},
               "splices": {"S1": {}, "E1": {"kind": "end-cap"}},
               "wires": {"W1": {"from": "ECU:1", "to": "S1"}, "W2": {"from": "ECU:2", "to": "E1"},
                         "W3": {"from": "ECU:31", "to": "BAT:-"}},
               "groups": {"G1": {"kind": "cable", "wires": ["W1"], "screen": "W2"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, Subject> groupOf = new LinkedHashMap<>();
    for (Group group : facts.harness().groups().values()) {
      if (group.screen() != null) {
        groupOf.put(group.screen(), Subject.of("groups", group.id()));
      }
    }
    Network network = facts.network();
    Map<String, Edge.OfWire> screens = new LinkedHashMap<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfWire wire && groupOf.containsKey(wire.wire().id())) {
        screens.put(wire.wire().id(), wire);
      }
    }
    for (Map.Entry<String, Subject> group : groupOf.entrySet()) {
      if (network.sources().isEmpty()) {
        ledger.notJudged(group.getValue(), NO_EARTH);
      } else if (!screens.containsKey(group.getKey())) {
        ledger.notJudged(group.getValue(), UNPLACED);
      }
    }
    if (!network.sources().isEmpty()) {
      Reach earth = earth(network, groupOf.keySet());
      for (List<Edge.OfWire> chain : chains(network, screens, earth)) {
        judge(facts, chain, earth, groupOf, ledger);
      }
    }
  }

  private static void judge(
      Facts facts,
      List<Edge.OfWire> chain,
      Reach earth,
      Map<String, Subject> groupOf,
      Ledger ledger) {
    Set<Point> earthed = new LinkedHashSet<>();
    for (Edge.OfWire wire : chain) {
      for (Point end : List.of(wire.a(), wire.b())) {
        if (earth.reaches(end)) {
          earthed.add(end);
        }
      }
    }
    List<Subject> groups =
        chain.stream().map(wire -> groupOf.get(wire.wire().id())).distinct().toList();
    if (earthed.size() == 1) {
      ledger.fine(groups.size());
      return;
    }
    if (earthed.isEmpty() && !facts.unread().isEmpty()) {
      groups.forEach(group -> ledger.notJudged(group, Facts.FILE_UNREAD));
      return;
    }
    List<String> wires = chain.stream().map(wire -> wire.wire().id()).toList();
    String what = (wires.size() == 1 ? "screen " : "screens ") + Series.and(wires);
    List<String> where = earthed.stream().map(Point::text).toList();
    Finding.Draft draft =
        Finding.on(groups.get(0))
            .message(
                earthed.isEmpty()
                    ? what + (wires.size() == 1 ? " is" : " are") + " earthed nowhere"
                    : what
                        + (wires.size() == 1 ? " is" : " are")
                        + " earthed at more than one end: "
                        + Series.and(where))
            .remedy("earth it at one end, usually that of the control unit, and cap the other")
            .basis(Basis.COMMON_PRACTICE);
    groups.subList(1, groups.size()).forEach(draft::and);
    wires.forEach(wire -> draft.and(Subject.wire(wire)));
    ledger.finding(draft, groups);
  }

  /** What reaches a source's minus without passing along a screen. */
  private static Reach earth(Network network, Set<String> screens) {
    return Reach.from(
        network,
        network.sources().stream().map(Edge::b).toList(),
        (edge, from) ->
            !(edge instanceof Edge.OfWire wire && screens.contains(wire.wire().id()))
                && Sides.feeds(edge, edge.across(from)));
  }

  /** Screens that are joined to each other without any earth between them. */
  private static Collection<List<Edge.OfWire>> chains(
      Network network, Map<String, Edge.OfWire> screens, Reach earth) {
    UnionFind<Point> joined = new UnionFind<>(new LinkedHashSet<>(network.points()));
    for (Edge edge : network.edges()) {
      boolean apart = edge instanceof Edge.OfElement;
      if (!apart && !earth.reaches(edge.a()) && !earth.reaches(edge.b())) {
        joined.union(edge.a(), edge.b());
      }
    }
    Map<Object, List<Edge.OfWire>> chains = new LinkedHashMap<>();
    for (Edge.OfWire screen : screens.values()) {
      Point free = earth.reaches(screen.a()) ? screen.b() : screen.a();
      Object chain = earth.reaches(free) ? screen : joined.find(free);
      chains.computeIfAbsent(chain, key -> new ArrayList<>()).add(screen);
    }
    return chains.values();
  }
}
