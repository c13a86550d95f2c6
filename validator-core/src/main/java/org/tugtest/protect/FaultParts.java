package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Resistance;
import org.tugtest.network.Sides;

/**
 * The parts of a {@link FaultNetwork}: sources, fuses on rings and diodes between sources as arms,
 * all else as conductors. The nodes of the feed side are the points by number, those of the return
 * side the same again behind them.
 */
final class FaultParts {
  private static final double JOINT_OHMS = 1e-6;
  private final Network network;
  private final int points;
  private final Reach feed;
  private final List<Conductor> conductors = new ArrayList<>();
  private final List<Edge> edges = new ArrayList<>();
  private final List<Resistance> figures = new ArrayList<>();
  private final List<Arm> arms = new ArrayList<>();
  private final List<Edge.@Nullable OfElement> armEdges = new ArrayList<>();
  private final List<Basis> armBasis = new ArrayList<>();
  private final Set<Integer> leftOut = new HashSet<>();

  /**
   * The parts in one corner.
   *
   * @param sources those that give
   * @param first contacts and diodes to be taken before others, by number
   */
  FaultParts(
      Network network,
      Protection protection,
      List<FaultSource> sources,
      FaultOhms ohms,
      FaultCorner corner,
      Set<Integer> first) {
    this.network = network;
    this.points = network.points().size();
    this.feed = protection.feed();
    List<Point> plus = sources.stream().map(source -> source.edge().a()).toList();
    List<Point> minus = sources.stream().map(source -> source.edge().b()).toList();
    FaultSide in = new FaultSide(network, feed, plus, first);
    FaultSide out = new FaultSide(network, protection.back(), minus, first);
    leftOut.addAll(in.leftOut());
    leftOut.addAll(out.leftOut());
    addSources(corner == FaultCorner.LEAST ? withoutSpareGenerators(sources, in, out) : sources);
    addEdges(in.kept(), 0, ohms);
    addEdges(out.kept(), points, ohms);
  }

  /** A generator turns at times only: where there is a battery, the least is without it. */
  private List<FaultSource> withoutSpareGenerators(
      List<FaultSource> sources, FaultSide in, FaultSide out) {
    Joined joined = new Joined(2 * points);
    in.kept().forEach(number -> join(joined, number, 0));
    out.kept().forEach(number -> join(joined, number, points));
    for (FaultSource source : sources) {
      joined.join(network.index(source.edge().a()), points + network.index(source.edge().b()));
    }
    Set<Integer> withBattery = new HashSet<>();
    for (FaultSource source : sources) {
      if (!source.generator()) {
        withBattery.add(joined.find(network.index(source.edge().a())));
      }
    }
    return sources.stream()
        .filter(
            source ->
                !source.generator()
                    || !withBattery.contains(joined.find(network.index(source.edge().a()))))
        .toList();
  }

  private void join(Joined joined, int number, int offset) {
    joined.join(offset + network.indexOfA(number), offset + network.indexOfB(number));
  }

  /** Of sources in a row the minus of one is on the feed side of another: there the sides meet. */
  private void addSources(List<FaultSource> sources) {
    Set<Integer> joints = new HashSet<>();
    for (FaultSource source : sources) {
      int plus = network.index(source.edge().a());
      int minus = points + network.index(source.edge().b());
      Arm arm =
          new Arm(minus, plus, source.volts(), source.ohms(), source.chargeOhms(), source.mostA());
      add(arm, source.edge(), source.basis());
      int end = network.index(source.edge().b());
      if (feed.reaches(source.edge().b()) && joints.add(end)) {
        add(Arm.resistor(points + end, end, JOINT_OHMS), null, Basis.GIVEN);
      }
    }
  }

  private void add(Arm arm, Edge.@Nullable OfElement edge, Basis basis) {
    arms.add(arm);
    armEdges.add(edge);
    armBasis.add(basis);
  }

  private void addEdges(List<Integer> kept, int offset, FaultOhms ohms) {
    int[] a = new int[kept.size()];
    int[] b = new int[kept.size()];
    for (int i = 0; i < a.length; i++) {
      a[i] = offset + network.indexOfA(kept.get(i));
      b[i] = offset + network.indexOfB(kept.get(i));
    }
    Bridges trees = new Rooted(2 * points, a, b, List.copyOf(arms)).trees();
    BitSet onRing = new BitSet();
    for (int i = 0; i < a.length; i++) {
      Edge edge = network.edges().get(kept.get(i));
      int lower = trees.later(a[i], b[i]);
      if (Sides.isFuse(edge) && !(trees.by(lower) == i && trees.hangs(lower))) {
        Resistance figure = ohms.of(edge);
        onRing.set(i);
        add(Arm.resistor(a[i], b[i], figure.ohms()), (Edge.OfElement) edge, figure.basis());
      }
    }
    for (int i = 0; i < a.length; i++) {
      Edge edge = network.edges().get(kept.get(i));
      Resistance figure = ohms.of(edge);
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Diode diode) {
        int lower = trees.later(a[i], b[i]);
        addDiode(inside, a[i], b[i], Math.max(0, diode.volts()), figure, trees, lower);
      } else if (!onRing.get(i)) {
        add(edge, new Conductor(a[i], b[i], figure.ohms(), 0, Sides.isFuse(edge)), figure);
      }
    }
  }

  /** A diode into what has nothing that gives takes its volts; any other is an arm. */
  private void addDiode(
      Edge.OfElement edge,
      int a,
      int b,
      double volts,
      Resistance figure,
      Bridges trees,
      int lower) {
    boolean ends =
        lower == b
            && arms.stream()
                .noneMatch(arm -> trees.below(arm.to(), lower) || trees.below(arm.from(), lower));
    if (ends) {
      add(edge, new Conductor(a, b, figure.ohms(), volts, false), figure);
    } else {
      double never = Double.POSITIVE_INFINITY;
      add(new Arm(a, b, -volts, figure.ohms(), never, never), edge, figure.basis());
    }
  }

  private void add(Edge edge, Conductor conductor, Resistance figure) {
    conductors.add(conductor);
    edges.add(edge);
    figures.add(figure);
  }

  /** How many nodes there are. */
  int nodes() {
    return 2 * points;
  }

  /** What conducts. */
  List<Conductor> conductors() {
    return conductors;
  }

  /** The edge of a conductor. */
  Edge edge(int conductor) {
    return edges.get(conductor);
  }

  /** The resistance of a conductor. */
  Resistance figure(int conductor) {
    return figures.get(conductor);
  }

  /** What gives, or bounds on a ring. */
  List<Arm> arms() {
    return arms;
  }

  /** What an arm is: a source, a fuse or a diode; null for a joint. */
  Edge.@Nullable OfElement armEdge(int arm) {
    return armEdges.get(arm);
  }

  /** What the figures of an arm rest on. */
  Basis armBasis(int arm) {
    return armBasis.get(arm);
  }

  /** Contacts and diodes that carry nothing here, by number. */
  Set<Integer> leftOut() {
    return leftOut;
  }
}
