package org.tugtest.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** The points that can be reached from some others, with a shortest way to each. */
public final class Reach {
  private static final int START = -1;
  private static final int NEVER = -2;
  private final Network network;
  private final int[] by;

  /** Whether an edge may be taken from one of its ends. */
  @FunctionalInterface
  public interface Step {
    /** Whether {@code edge} may be taken, coming from {@code from}. */
    boolean may(Edge edge, Point from);
  }

  private Reach(Network network, int[] by) {
    this.network = network;
    this.by = by;
  }

  /** What can be reached from {@code starts} by steps that are allowed. */
  public static Reach from(Network network, Collection<Point> starts, Step step) {
    int[] by = new int[network.points().size()];
    Arrays.fill(by, NEVER);
    Deque<Integer> open = new ArrayDeque<>();
    for (Point start : starts) {
      int at = network.index(start);
      if (at >= 0 && by[at] == NEVER) {
        by[at] = START;
        open.add(at);
      }
    }
    while (!open.isEmpty()) {
      int at = open.remove();
      Point from = network.points().get(at);
      for (int i = 0; i < network.degree(at); i++) {
        int number = network.edgeAt(at, i);
        Edge edge = network.edges().get(number);
        int next = network.index(edge.across(from));
        if (by[next] == NEVER && step.may(edge, from)) {
          by[next] = number;
          open.add(next);
        }
      }
    }
    return new Reach(network, by);
  }

  /** Whether a point can be reached. */
  public boolean reaches(Point point) {
    int at = network.index(point);
    return at >= 0 && by[at] != NEVER;
  }

  /** Every point that can be reached, in the order of the network. */
  public List<Point> points() {
    List<Point> reached = new ArrayList<>();
    for (int i = 0; i < by.length; i++) {
      if (by[i] != NEVER) {
        reached.add(network.points().get(i));
      }
    }
    return reached;
  }

  /** A shortest way from a start to a point. */
  public Optional<Path> path(Point to) {
    if (!reaches(to)) {
      return Optional.empty();
    }
    List<Edge> edges = new ArrayList<>();
    Point at = to;
    for (int edge = by[network.index(at)]; edge != START; edge = by[network.index(at)]) {
      edges.add(network.edges().get(edge));
      at = network.edges().get(edge).across(at);
    }
    Collections.reverse(edges);
    return Optional.of(new Path(at, edges));
  }
}
