package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A critical load returns through one pin or stud alone. */
public final class EarthSingle implements Rule {
  private static final int MOST_POINTS = 64;
  private static final RuleInfo INFO =
      RuleInfo.of("earth-single", Heading.LOAD, Level.NOTE)
          .summary("a critical load returns through one stud or pin")
          .subjects("critical loads")
          .looksFor(
              """
              Loads with "critical": true of which every way to a source's minus leaves their device by
              the same pin or passes the same stud. The one nearest to the load is named. The source's
              own terminals and the stud through which all loads return are left out. Contacts count
              as closed.
              """)
          .why(
              """
              One loose nut or one backed-out terminal then stops what must not stop, and a bad
              earth is hard to see.
              """)
          .remedy(
              """
              Give the load a second return, on another pin and to another earth point.
              """)
          .basis("Common practice for control units and ignition: two earths on two studs.")
          .failing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "ECU": {"elements": {"supply": {"kind": "load", "a": "30", "b": "31", "amps": 2, "critical": true}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ECU:30"}, "W2": {"from": "ECU:31", "to": "BAT:-"}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "ECU": {"pins": {"30": {}, "31": {}, "31a": {}, "in": {"inside": true}},
                         "elements": {"supply": {"kind": "load", "a": "30", "b": "in", "amps": 2, "critical": true},
                                      "l1": {"kind": "link", "a": "in", "b": "31"},
                                      "l2": {"kind": "link", "a": "in", "b": "31a"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ECU:30"}, "W2": {"from": "ECU:31", "to": "BAT:-"},
                         "W3": {"from": "ECU:31a", "to": "BAT:-"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement load
          && load.element() instanceof Element.Load its
          && its.critical()) {
        judge(facts, load, ledger);
      }
    }
  }

  private static void judge(Facts facts, Edge.OfElement load, Ledger ledger) {
    Reach back = facts.sides().back();
    Point end = back.reaches(load.b()) ? load.b() : load.a();
    Optional<Path> way = back.path(end);
    if (way.isEmpty()) {
      ledger.notJudged(load.subject(), "it has no way to a source's minus");
      return;
    }
    if (way.get().edges().size() > MOST_POINTS) {
      ledger.notJudged(load.subject(), "its way to a source's minus is very long");
      return;
    }
    if (!facts.unread().isEmpty()) {
      ledger.notJudged(load.subject(), Facts.FILE_UNREAD);
      return;
    }
    Optional<Point> single = single(facts, load, end, way.get());
    if (single.isEmpty()) {
      ledger.fine();
      return;
    }
    Point point = single.get();
    ledger.finding(
        Finding.on(load.subject(), point.subject())
            .message("critical load " + load.text() + " returns through " + point.text() + " alone")
            .remedy("give it a second return, on another pin and to another earth point")
            .basis(Basis.COMMON_PRACTICE)
            .detail(reversed(way.get())));
  }

  /** The first pin from the load on that no way to a minus goes past. */
  private static Optional<Point> single(Facts facts, Edge.OfElement load, Point end, Path way) {
    List<Point> points = new ArrayList<>(way.points());
    Collections.reverse(points);
    for (Point point : points) {
      boolean candidate =
          point.kind() == Point.Kind.PIN && !isTerminal(facts, point) && !isInside(facts, point);
      if (candidate && !goesPast(facts, load, end, point) && !isMainEarth(facts, load, point)) {
        return Optional.of(point);
      }
    }
    return Optional.empty();
  }

  /** A point within a device, which no wire reaches, is no place where an earth comes loose. */
  private static boolean isInside(Facts facts, Point point) {
    return facts.network().edgesAt(point).stream().allMatch(Edge.OfElement.class::isInstance);
  }

  /** Whether no load at all has a return without this stud: the end of the source's own cable. */
  private static boolean isMainEarth(Facts facts, Edge.OfElement load, Point stud) {
    if (stud.owner().equals(load.device())) {
      return false;
    }
    Reach rest =
        Reach.from(
            facts.network(),
            facts.network().sources().stream().map(Edge::b).toList(),
            (edge, from) ->
                !edge.across(from).equals(stud) && Sides.feeds(edge, edge.across(from)));
    return facts.network().edges().stream()
        .filter(edge -> edge instanceof Edge.OfElement in && in.element() instanceof Element.Load)
        .noneMatch(edge -> rest.reaches(edge.a()) || rest.reaches(edge.b()));
  }

  private static boolean isTerminal(Facts facts, Point point) {
    return facts.network().sources().stream().anyMatch(source -> source.b().equals(point));
  }

  /** Whether a source's minus is reached when a stud is off, or a pin of the load's device out. */
  private static boolean goesPast(Facts facts, Edge.OfElement load, Point end, Point without) {
    boolean own = without.owner().equals(load.device());
    Reach reach =
        Reach.from(
            facts.network(),
            List.of(end),
            (edge, from) -> {
              boolean touches = edge.a().equals(without) || edge.b().equals(without);
              boolean cut = touches && !(own && edge instanceof Edge.OfElement);
              return !cut && !edge.equals(load) && Sides.feeds(edge, from);
            });
    return facts.network().sources().stream().anyMatch(source -> reach.reaches(source.b()));
  }

  private static String reversed(Path way) {
    List<Edge> edges = new ArrayList<>(way.edges());
    Collections.reverse(edges);
    return new Path(way.end(), edges).text();
  }
}
