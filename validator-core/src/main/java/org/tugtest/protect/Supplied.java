package org.tugtest.protect;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/**
 * The points that can be reached from some others, and which of them are cut off when edges are
 * taken out: found at the cost of those alone that hung on such an edge.
 */
final class Supplied {
  private static final int START = -1;
  private static final int NEVER = -2;
  private static final int FEW = 16;
  private final Network network;
  private final List<Point> points;
  private final Reach.Step step;
  private final int[] by;
  private final int[] firstChild;
  private final int[] nextChild;

  /** What can be reached from {@code starts} by steps that are allowed. */
  Supplied(Network network, Collection<Point> starts, Reach.Step step) {
    this.network = network;
    this.points = network.points();
    this.step = step;
    by = new int[points.size()];
    firstChild = new int[points.size()];
    nextChild = new int[points.size()];
    Arrays.fill(by, NEVER);
    Arrays.fill(firstChild, START);
    Arrays.fill(nextChild, START);
    int[] open = new int[points.size()];
    int count = 0;
    for (Point start : starts) {
      int at = network.index(start);
      if (at >= 0 && by[at] == NEVER) {
        by[at] = START;
        open[count++] = at;
      }
    }
    for (int i = 0; i < count; i++) {
      Point from = points.get(open[i]);
      for (Edge edge : network.edgesAt(from)) {
        int next = network.index(edge.across(from));
        if (by[next] == NEVER && step.may(edge, from)) {
          by[next] = network.number(edge);
          nextChild[next] = firstChild[open[i]];
          firstChild[open[i]] = next;
          open[count++] = next;
        }
      }
    }
  }

  /** Whether a point is reached while nothing is taken out. */
  boolean reaches(int point) {
    return by[point] != NEVER;
  }

  /** The points that are cut off when these edges, by number, are taken out. */
  BitSet cutOff(BitSet out) {
    BitSet hanging = new BitSet();
    int[] open = new int[FEW];
    int count = 0;
    for (int edge = out.nextSetBit(0); edge >= 0; edge = out.nextSetBit(edge + 1)) {
      Edge taken = network.edges().get(edge);
      for (Point end : List.of(taken.a(), taken.b())) {
        int at = network.index(end);
        if (by[at] == edge && !hanging.get(at)) {
          hanging.set(at);
          open = count < open.length ? open : Arrays.copyOf(open, 2 * count);
          open[count++] = at;
        }
      }
    }
    for (int i = 0; i < count; i++) {
      for (int child = firstChild[open[i]]; child != START; child = nextChild[child]) {
        if (!hanging.get(child)) {
          hanging.set(child);
          open = count < open.length ? open : Arrays.copyOf(open, 2 * count);
          open[count++] = child;
        }
      }
    }
    return reachedElsewhere(hanging, out, Arrays.copyOf(open, count));
  }

  private BitSet reachedElsewhere(BitSet hanging, BitSet out, int[] those) {
    BitSet cut = (BitSet) hanging.clone();
    int[] open = new int[those.length];
    int count = 0;
    for (int at : those) {
      Point point = points.get(at);
      for (Edge edge : network.edgesAt(point)) {
        Point from = edge.across(point);
        int other = network.index(from);
        if (cut.get(at)
            && !hanging.get(other)
            && by[other] != NEVER
            && !out.get(network.number(edge))
            && step.may(edge, from)) {
          cut.clear(at);
          open[count++] = at;
        }
      }
    }
    for (int i = 0; i < count; i++) {
      Point from = points.get(open[i]);
      for (Edge edge : network.edgesAt(from)) {
        int next = network.index(edge.across(from));
        if (cut.get(next) && !out.get(network.number(edge)) && step.may(edge, from)) {
          cut.clear(next);
          open[count++] = next;
        }
      }
    }
    return cut;
  }
}
