package org.tugtest.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The points that can be reached from some others, with a shortest way to each. Where it is known
 * which contacts can be closed together, a way takes only such.
 */
public final class Reach {
  /** So many ways with different positions are kept to one point. */
  private static final int MOST_AT_A_POINT = 64;

  private static final int NONE = -1;

  private final Network network;
  private final int[] firstAt;
  private final BitSet taken = new BitSet();
  private boolean complete = true;

  /** Of each arrival: where, by which edge, and the arrival at its other end. */
  private int[] at = {};

  private int[] by = {};
  private int[] before = {};

  /**
   * One way to reach a point.
   *
   * @param by the edge it comes by; -1 at a start
   * @param before the arrival at its other end
   * @param next another arrival at the same point; -1 when it is the last
   */
  private record Arrival(int at, int by, int before, Positions left, int next) {
    Arrival followedBy(int other) {
      return new Arrival(at, by, before, left, other);
    }
  }

  /** Whether an edge may be taken from one of its ends. */
  @FunctionalInterface
  public interface Step {
    /** Whether {@code edge} may be taken, coming from {@code from}. */
    boolean may(Edge edge, Point from);
  }

  private Reach(Network network) {
    this.network = network;
    this.firstAt = new int[network.points().size()];
    Arrays.fill(firstAt, NONE);
  }

  /** What can be reached by steps that are allowed, whichever contacts that closes together. */
  public static Reach from(Network network, Collection<Point> starts, Step step) {
    return from(network, null, Positions.ANY, starts, step);
  }

  /** What can be reached from {@code starts} by steps that are allowed. */
  public static Reach from(
      Network network, ClosedTogether together, Collection<Point> starts, Step step) {
    return from(network, together, Positions.ANY, starts, step);
  }

  /** The same where switches and relays cannot left as they like. */
  public static Reach from(
      Network network,
      @Nullable ClosedTogether together,
      Positions left,
      Collection<Point> starts,
      Step step) {
    Reach reach = new Reach(network);
    List<Arrival> arrivals = new ArrayList<>();
    for (Point start : starts) {
      int at = network.index(start);
      if (at >= 0 && reach.firstAt[at] == NONE) {
        reach.arrive(new Arrival(at, NONE, NONE, left, NONE), arrivals);
      }
    }
    for (int i = 0; i < arrivals.size(); i++) {
      reach.goOn(i, together, step, arrivals);
    }
    reach.keep(arrivals);
    return reach;
  }

  /** Keeps of the arrivals what ways are told by; how all may stand is not asked any more. */
  private void keep(List<Arrival> arrivals) {
    at = new int[arrivals.size()];
    by = new int[arrivals.size()];
    before = new int[arrivals.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = arrivals.get(i).at();
      by[i] = arrivals.get(i).by();
      before[i] = arrivals.get(i).before();
    }
  }

  private void goOn(
      int number, @Nullable ClosedTogether together, Step step, List<Arrival> arrivals) {
    Arrival here = arrivals.get(number);
    Point from = network.points().get(here.at());
    for (int i = 0; i < network.degree(here.at()); i++) {
      int edgeNumber = network.edgeAt(here.at(), i);
      Edge edge = network.edges().get(edgeNumber);
      if (edgeNumber == here.by() || !step.may(edge, from)) {
        continue;
      }
      Positions left = together == null ? here.left() : together.taking(here.left(), edgeNumber);
      if (left != null) {
        taken.set(edgeNumber);
        int there = network.across(edgeNumber, here.at());
        arrive(new Arrival(there, edgeNumber, number, left, NONE), arrivals);
      }
    }
  }

  /** Keeps an arrival unless one that leaves at least as much possible is there already. */
  private void arrive(Arrival arrival, List<Arrival> arrivals) {
    int last = NONE;
    int count = 0;
    for (int i = firstAt[arrival.at()]; i != NONE; i = arrivals.get(i).next()) {
      if (arrivals.get(i).left().allows(arrival.left())) {
        return;
      }
      last = i;
      count++;
    }
    if (count >= MOST_AT_A_POINT) {
      complete = false;
      return;
    }
    if (last == NONE) {
      firstAt[arrival.at()] = arrivals.size();
    } else {
      arrivals.set(last, arrivals.get(last).followedBy(arrivals.size()));
    }
    arrivals.add(arrival);
  }

  /** Whether a point can be reached. */
  public boolean reaches(Point point) {
    int at = network.index(point);
    return at >= 0 && firstAt[at] != NONE;
  }

  /** Whether the point that stands there in {@link Network#points} can be reached. */
  public boolean reachesAt(int point) {
    return firstAt[point] != NONE;
  }

  /** Whether an edge lies on a way, whichever way round. */
  public boolean takes(int edge) {
    return taken.get(edge);
  }

  /** Whether every way was followed; there are bounds to the positions that are tried. */
  public boolean complete() {
    return complete;
  }

  /** Every point that can be reached, in the order of the network. */
  public List<Point> points() {
    List<Point> reached = new ArrayList<>();
    for (int i = 0; i < firstAt.length; i++) {
      if (firstAt[i] != NONE) {
        reached.add(network.points().get(i));
      }
    }
    return reached;
  }

  /** A shortest way from a start to a point. */
  public Optional<Path> path(Point to) {
    return reaches(to) ? Optional.of(path(firstAt[network.index(to)])) : Optional.empty();
  }

  private Path path(int arrival) {
    List<Edge> edges = new ArrayList<>();
    int here = arrival;
    while (before[here] != NONE) {
      edges.add(network.edges().get(by[here]));
      here = before[here];
    }
    Collections.reverse(edges);
    return new Path(network.points().get(at[here]), edges);
  }
}
