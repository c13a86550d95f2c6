package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * The feed side as sections: what hangs together without a fuse or diode. One more node stands for
 * all sources together; between the nodes lie fuses, diodes and the sources.
 */
final class FeedGraph {
  private static final int NONE = -1;
  private final int[] sectionOf;
  private final int sections;
  private final List<Arc> arcs = new ArrayList<>();
  private final List<Integer> inner = new ArrayList<>();
  private final Network network;
  private final Bridges trees;

  /**
   * A fuse, diode or source between two nodes.
   *
   * @param one node; for a source the one of all sources, for a diode that of its anode
   * @param pointOne the point at that end; -1 for the node of all sources
   * @param capacity in amperes, to {@code other}; infinite when nothing bounds it
   * @param capacityBack the same in the other direction
   */
  record Arc(
      Edge.OfElement edge,
      int one,
      int other,
      int pointOne,
      int pointOther,
      double capacity,
      double capacityBack) {}

  /**
   * The graph of what a reach took.
   *
   * @param rating of a fuse, in amperes
   */
  FeedGraph(Network network, Reach feed, ToDoubleFunction<Edge.OfElement> rating) {
    this.network = network;
    List<Integer> between = new ArrayList<>();
    List<Edge> edges = network.edges();
    for (int i = 0; i < edges.size(); i++) {
      if (feed.takes(i)) {
        (isBound(edges.get(i)) ? between : inner).add(i);
      }
    }
    trees = points(inner);
    sectionOf = new int[network.points().size()];
    Arrays.fill(sectionOf, NONE);
    int count = 0;
    for (int point : trees.order()) {
      if (feed.reachesAt(point)) {
        int up = trees.parent(point);
        sectionOf[point] = up == NONE ? count++ : sectionOf[up];
      }
    }
    sections = count;
    for (Edge.OfElement source : network.sources()) {
      double most = Ratings.ofSource((Element.Source) source.element());
      int plus = network.index(source.a());
      arcs.add(new Arc(source, sections, sectionOf[plus], NONE, plus, most, 0));
    }
    for (int i : between) {
      Edge.OfElement edge = (Edge.OfElement) edges.get(i);
      boolean fuse = Sides.isFuse(edge);
      double most = fuse ? rating.applyAsDouble(edge) : Double.POSITIVE_INFINITY;
      int a = network.indexOfA(i);
      int b = network.indexOfB(i);
      arcs.add(new Arc(edge, sectionOf[a], sectionOf[b], a, b, most, fuse ? most : 0));
    }
  }

  private static boolean isBound(Edge edge) {
    return Sides.isFuse(edge)
        || (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Diode);
  }

  private Bridges points(List<Integer> edges) {
    int[] one = new int[edges.size()];
    int[] other = new int[edges.size()];
    for (int i = 0; i < one.length; i++) {
      one[i] = network.indexOfA(edges.get(i));
      other[i] = network.indexOfB(edges.get(i));
    }
    return new Bridges(network.points().size(), one, other, 0);
  }

  /** The trees of the points of the sections; edges are numbered as {@link #inner}. */
  Bridges points() {
    return trees;
  }

  /** The edges inside sections, by their numbers in the network. */
  List<Integer> inner() {
    return inner;
  }

  /** The section of a point; -1 when it is not on the feed side. */
  int section(int point) {
    return sectionOf[point];
  }

  /** The node of all sources; sections are the nodes below it. */
  int sources() {
    return sections;
  }

  /** What lies between the nodes. */
  List<Arc> arcs() {
    return arcs;
  }
}
