package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Function;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/** Finds the shortest unfused ways from a source to the first fuses (Dijkstra 1959). */
final class FirstFuses {
  private static final int NONE = -1;
  private final Network network;
  private final Reach feed;
  private final Function<Wire, OptionalDouble> lengths;

  private record Step(double mm, int at) {}

  FirstFuses(Network network, Reach feed, Function<Wire, OptionalDouble> lengths) {
    this.network = network;
    this.feed = feed;
    this.lengths = lengths;
  }

  /** The places behind one source, in the order of the network. */
  List<FirstFuse> behind(Edge.OfElement source, Reach unfused) {
    Map<Point, List<Edge.OfElement>> places = new LinkedHashMap<>();
    for (int i = 0; i < network.edges().size(); i++) {
      Edge edge = network.edges().get(i);
      if (feed.takes(i) && Sides.isFuse(edge)) {
        for (Point end : List.of(edge.a(), edge.b())) {
          if (unfused.reaches(end)) {
            places.computeIfAbsent(end, none -> new ArrayList<>(1)).add((Edge.OfElement) edge);
          }
        }
      }
    }
    if (places.isEmpty()) {
      return List.of();
    }
    int[] by = shortest(source.a(), unfused);
    List<FirstFuse> found = new ArrayList<>();
    places.forEach((place, fuses) -> found.add(found(source, place, fuses, by)));
    return found;
  }

  private int[] shortest(Point start, Reach unfused) {
    int[] by = new int[network.points().size()];
    double[] least = new double[by.length];
    Arrays.fill(by, NONE);
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    PriorityQueue<Step> open =
        new PriorityQueue<>(Comparator.comparingDouble(Step::mm).thenComparingInt(Step::at));
    BitSet done = new BitSet();
    least[network.index(start)] = 0;
    open.add(new Step(0, network.index(start)));
    while (!open.isEmpty()) {
      Step step = open.remove();
      if (done.get(step.at())) {
        continue;
      }
      done.set(step.at());
      Point from = network.points().get(step.at());
      for (Edge edge : network.edgesAt(from)) {
        int number = network.number(edge);
        int next = network.index(edge.across(from));
        double mm = step.mm() + length(edge).orElse(0);
        boolean goes = unfused.takes(number) && Sides.feeds(edge, from);
        if (goes && !done.get(next) && mm < least[next]) {
          least[next] = mm;
          by[next] = number;
          open.add(new Step(mm, next));
        }
      }
    }
    return by;
  }

  private OptionalDouble length(Edge edge) {
    return edge instanceof Edge.OfWire wire ? lengths.apply(wire.wire()) : OptionalDouble.of(0);
  }

  private FirstFuse found(
      Edge.OfElement source, Point place, List<Edge.OfElement> fuses, int[] by) {
    List<Edge> edges = new ArrayList<>();
    List<Edge.OfWire> unknown = new ArrayList<>();
    double mm = 0;
    Point at = place;
    while (by[network.index(at)] != NONE) {
      Edge edge = network.edges().get(by[network.index(at)]);
      edges.add(edge);
      mm += length(edge).orElse(0);
      if (length(edge).isEmpty() && edge instanceof Edge.OfWire wire) {
        unknown.add(wire);
      }
      at = edge.across(at);
    }
    Collections.reverse(edges);
    Collections.reverse(unknown);
    return new FirstFuse(source, new Path(at, edges), fuses, mm, unknown);
  }
}
