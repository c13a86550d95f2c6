package org.tugtest.report.html.circuits;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.operate.OperatingPoint;

/**
 * The way of a load's current. The rules follow a way of their own, {@link
 * org.tugtest.rule.load.Way}, which ends at another load, as what is lost there is not lost in the
 * wiring; a circuit goes on through loads in series until it is back at a source.
 *
 * @param feed from a source to the load, the source first
 * @param back from the load to a source, the source last
 * @param besides what else brings a good part of the current to a point on the way
 */
record Way(List<Leg> feed, List<Leg> back, List<Beside> besides) {
  private static final double SOME_AMPS = 1e-6;
  private static final double GOOD_PART = 0.05;

  Way {
    feed = List.copyOf(feed);
    back = List.copyOf(back);
    besides = List.copyOf(besides);
  }

  /** Something that brings current to a point besides what is on the way. */
  record Beside(Edge edge, Point at, double amps) {}

  /**
   * The way that most of the current takes in a state: from the load, at every point against the
   * greatest current, until a source is reached; and the same onwards from its other pin.
   */
  static Way ofCurrent(Facts facts, OperatingPoint point, Edge.OfElement load) {
    boolean forwards = point.amps(load) > 0;
    Point in = forwards ? load.a() : load.b();
    Point out = forwards ? load.b() : load.a();
    List<Beside> besides = new ArrayList<>();
    double own = Math.abs(point.amps(load));
    Deque<Leg> feed = new ArrayDeque<>();
    for (Leg leg : follow(facts, point, load, in, 1, besides, own)) {
      feed.addFirst(new Leg(leg.edge(), leg.to(), leg.from()));
    }
    List<Leg> back = follow(facts, point, load, out, -1, new ArrayList<>(), own);
    return new Way(List.copyOf(feed), back, besides);
  }

  /**
   * Legs from a point along the greatest current.
   *
   * @param sign 1: against the current, -1: with it
   */
  private static List<Leg> follow(
      Facts facts,
      OperatingPoint point,
      Edge.OfElement load,
      Point start,
      int sign,
      List<Beside> besides,
      double own) {
    List<Leg> legs = new ArrayList<>();
    Set<Point> seen = new HashSet<>();
    Point at = start;
    while (seen.add(at)) {
      Edge best = null;
      double most = SOME_AMPS;
      for (Edge edge : facts.network().edgesAt(at)) {
        double amps = sign * into(point, edge, at);
        if (!edge.equals(load) && amps > most) {
          best = edge;
          most = amps;
        }
      }
      if (best == null) {
        break;
      }
      for (Edge edge : facts.network().edgesAt(at)) {
        double amps = sign * into(point, edge, at);
        if (!edge.equals(best)
            && !edge.equals(load)
            && amps > Math.max(SOME_AMPS, GOOD_PART * own)) {
          besides.add(new Beside(edge, at, amps));
        }
      }
      legs.add(new Leg(best, at, best.across(at)));
      if (best instanceof Edge.OfElement inside && inside.element() instanceof Element.Source) {
        break;
      }
      at = best.across(at);
    }
    return legs;
  }

  private static double into(OperatingPoint point, Edge edge, Point at) {
    double amps = point.amps(edge);
    return edge.b().equals(at) ? amps : -amps;
  }

  /** The shortest way by what is joined, contacts closed; empty when no source feeds the load. */
  static Optional<Way> ofJoints(Facts facts, Edge.OfElement load) {
    Reach feed = facts.protection().feed();
    Reach back = facts.protection().back();
    boolean forwards = feed.reaches(load.a()) && back.reaches(load.b());
    boolean backwards = feed.reaches(load.b()) && back.reaches(load.a());
    if (!forwards && !backwards) {
      return Optional.empty();
    }
    Path in = feed.path(forwards ? load.a() : load.b()).orElseThrow();
    Path out = back.path(forwards ? load.b() : load.a()).orElseThrow();
    List<Leg> feedLegs = new ArrayList<>();
    source(facts, in.start(), true)
        .ifPresent(source -> feedLegs.add(new Leg(source, source.b(), source.a())));
    feedLegs.addAll(legs(in));
    Deque<Leg> backLegs = new ArrayDeque<>();
    for (Leg leg : legs(out)) {
      backLegs.addFirst(new Leg(leg.edge(), leg.to(), leg.from()));
    }
    source(facts, out.start(), false)
        .ifPresent(source -> backLegs.addLast(new Leg(source, source.b(), source.a())));
    return Optional.of(new Way(feedLegs, List.copyOf(backLegs), List.of()));
  }

  private static Optional<Edge.OfElement> source(Facts facts, Point pole, boolean plus) {
    return facts.network().sources().stream()
        .filter(source -> pole.equals(plus ? source.a() : source.b()))
        .findFirst();
  }

  private static List<Leg> legs(Path path) {
    List<Leg> legs = new ArrayList<>();
    Point at = path.start();
    for (Edge edge : path.edges()) {
      legs.add(new Leg(edge, at, edge.across(at)));
      at = edge.across(at);
    }
    return legs;
  }
}
