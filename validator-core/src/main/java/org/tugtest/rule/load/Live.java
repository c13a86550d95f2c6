package org.tugtest.rule.load;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.operate.OperatingPoint;

/**
 * What is joined to a source in one state, as its contacts stand, without crossing a load or coil.
 */
final class Live {
  private static final int OPEN = 64;
  private static final double SOME_AMPS = 1e-6;
  private final OperatingPoint state;
  private final Network network;
  private final Reach plus;
  private final Reach minus;

  /** For every point, by number, the one that stands for all that are joined to it. */
  private final int[] joinedTo;

  /** The same where sources that give join too. */
  private final int[] circuitOf;

  /** The same with every contact closed and every way fused. */
  private final int[] closedTo;

  private Live(Facts facts, OperatingPoint state) {
    this.state = state;
    this.network = facts.network();
    List<Point> from = new ArrayList<>();
    List<Point> back = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      if (gives(source)) {
        from.add(source.a());
        back.add(source.b());
      }
    }
    this.plus = Reach.from(network, from, (edge, at) -> passes(edge, at.equals(edge.a())));
    this.minus = Reach.from(network, back, (edge, at) -> passes(edge, at.equals(edge.b())));
    Joined joined = new Joined(network.points().size());
    Joined circuits = new Joined(network.points().size());
    Joined closed = new Joined(network.points().size());
    for (int i = 0; i < network.edges().size(); i++) {
      Edge edge = network.edges().get(i);
      boolean passes = passes(edge, true);
      if (passes || (edge instanceof Edge.OfElement open && isOpen(open))) {
        closed.join(network.indexOfA(i), network.indexOfB(i));
      }
      if (passes) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
      }
      if (passes || (edge instanceof Edge.OfElement source && gives(source))) {
        circuits.join(network.indexOfA(i), network.indexOfB(i));
      }
    }
    this.joinedTo = new int[network.points().size()];
    Arrays.setAll(joinedTo, joined::find);
    this.circuitOf = circuits.numbered();
    this.closedTo = closed.numbered();
  }

  static Live in(Facts facts, OperatingPoint state) {
    return new Live(facts, state);
  }

  /** What is live in each state. */
  private record InAllStates(List<Live> all) {}

  /** All states of a harness. */
  static List<Live> all(Facts facts) {
    return facts
        .once(
            InAllStates.class,
            of ->
                new InAllStates(of.operating().all().stream().map(state -> in(of, state)).toList()))
        .all();
  }

  OperatingPoint state() {
    return state;
  }

  private boolean passes(Edge edge, boolean alongDiode) {
    if (!(edge instanceof Edge.OfElement inside)) {
      return true;
    }
    Element element = inside.element();
    if (element instanceof Element.Diode) {
      return alongDiode;
    }
    boolean metal =
        element instanceof Element.Contact
            || element instanceof Element.Link
            || element instanceof Element.Fuse;
    return metal && state.conducts(edge);
  }

  /** Whether an end of a load or coil is on a source's plus. */
  boolean fed(Edge.OfElement load) {
    return plus.reaches(load.a()) || plus.reaches(load.b());
  }

  private boolean gives(Edge.OfElement source) {
    return source.element() instanceof Element.Source
        && state.gives(source)
        && state.powered(source.a());
  }

  /**
   * Whether the other end, when one is fed, is on a source's minus, and on that of a source to
   * whose plus the current can come back.
   */
  boolean returns(Edge.OfElement load) {
    if (!fed(load)) {
      return minus.reaches(load.a()) || minus.reaches(load.b());
    }
    boolean home =
        (plus.reaches(load.a()) && minus.reaches(load.b()))
            || (plus.reaches(load.b()) && minus.reaches(load.a()));
    return home && circuitOf[network.index(load.a())] == circuitOf[network.index(load.b())];
  }

  /**
   * Whether a load works though it lacks one side: it has the volts it works with, and its current
   * passes on the way such loads alone as shall work in this state too, or are free. So are two
   * fans in a row, and a charge lamp before the field of its alternator.
   *
   * @param leastV the volts it works with
   */
  boolean worksInARow(Edge.OfElement load, double leastV) {
    if (Math.abs(state.across(load)) < leastV || !state.draws(load)) {
      return false;
    }
    boolean forward = state.amps(load) >= 0;
    return onlyWanted(forward ? load.b() : load.a(), load, true)
        && onlyWanted(forward ? load.a() : load.b(), load, false);
  }

  /** Follows the current from a point, with it or against it, until it comes to sources. */
  private boolean onlyWanted(Point start, Edge.OfElement own, boolean along) {
    Set<Point> seen = new HashSet<>(List.of(start));
    Deque<Point> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      Point at = open.remove();
      for (Edge edge : network.edgesAt(at)) {
        double away = edge.a().equals(at) ? state.amps(edge) : -state.amps(edge);
        if (edge.equals(own) || (along ? away : -away) <= SOME_AMPS) {
          continue;
        }
        if (edge instanceof Edge.OfElement inside) {
          Element element = inside.element();
          if (element instanceof Element.Source) {
            continue;
          }
          boolean lies = element instanceof Element.Load its && isMeant(inside, its);
          if (!lies && isUser(element)) {
            return false;
          }
        }
        if (seen.add(edge.across(at))) {
          open.add(edge.across(at));
        }
      }
    }
    return true;
  }

  private boolean isMeant(Edge.OfElement load, Element.Load its) {
    return state.wanted(load) || its.use() == Element.Load.Use.FREE;
  }

  private static boolean isUser(Element element) {
    return element instanceof Element.Load || element instanceof Element.Coil;
  }

  /** The end that should be on plus and is not: the one that is not on minus. */
  Point deadEnd(Edge.OfElement load) {
    return minus.reaches(load.a()) && !minus.reaches(load.b()) ? load.b() : load.a();
  }

  /** The end that should be on minus and is not: the one that is not on plus. */
  Point looseEnd(Edge.OfElement load) {
    return plus.reaches(load.b()) && !plus.reaches(load.a()) ? load.a() : load.b();
  }

  /** What all points that are joined to this one have in common. */
  Point group(Point point) {
    return network.points().get(joinedTo[network.index(point)]);
  }

  /** Whether a point is on a source's plus, or on a source's minus. */
  boolean on(Point point, boolean thePlus) {
    return (thePlus ? plus : minus).reaches(point);
  }

  /** Whether the network has a point. */
  boolean knows(Point point) {
    return network.index(point) >= 0;
  }

  /** Whether any cavity among {@code others} is joined to a point. */
  boolean joins(Point point, Collection<Point> others) {
    Point group = group(point);
    return others.stream()
        .anyMatch(other -> other.kind() == Point.Kind.CAVITY && group(other).equals(group));
  }

  /**
   * What stops a way that begins at a point: contacts that are open and ways without a fuse. Those
   * behind which the side lies that the point lacks; where there is none, all; and none where the
   * side is not reached with all of them closed.
   *
   * @param thePlus whether it lacks a source's plus
   */
  List<Edge.OfElement> blockers(Point start, boolean thePlus) {
    int group = closedTo[network.index(start)];
    boolean within =
        network.sources().stream()
            .filter(this::gives)
            .map(source -> thePlus ? source.a() : source.b())
            .anyMatch(point -> closedTo[network.index(point)] == group);
    if (!within) {
      return List.of();
    }
    List<Edge.OfElement> all = openBefore(start);
    List<Edge.OfElement> last =
        all.stream().filter(edge -> on(edge.a(), thePlus) || on(edge.b(), thePlus)).toList();
    return last.isEmpty() ? all : last;
  }

  /** The contacts that are open and the ways without a fuse that a way from a point ends at. */
  List<Edge.OfElement> openBefore(Point start) {
    Reach reach = Reach.from(network, List.of(start), (edge, at) -> passes(edge, true));
    List<Edge.OfElement> open = new ArrayList<>();
    for (Point point : reach.points()) {
      for (Edge edge : network.edgesAt(point)) {
        if (edge instanceof Edge.OfElement inside
            && isOpen(inside)
            && !reach.reaches(edge.across(point))
            && open.size() < OPEN) {
          open.add(inside);
        }
      }
    }
    return open;
  }

  private boolean isOpen(Edge.OfElement edge) {
    return (edge.element() instanceof Element.Contact || edge.element() instanceof Element.Fuse)
        && !passes(edge, true);
  }
}
