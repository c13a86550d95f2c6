package org.tugtest.protect;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;

/**
 * The greatest lasting current through every wire of the feed side: the greater of what can flow to
 * either of its ends with the wire taken out. A wire without which its section stays whole, and one
 * behind which no current comes from, has the limit of its section; for one on a ring the section
 * is cut in two there, once for all wires that cut it alike.
 */
final class WireLimits {
  private static final int NONE = -1;
  private final SectionLimits sections;
  private final Bridges points;
  private final int[] ways;
  private final int[] alike;
  private final Map<Integer, Limit> cuts = new HashMap<>();
  private final Map<Integer, Limit> limits = new TreeMap<>();
  private final BitSet onRing = new BitSet();

  /** The limits of the wires in a graph. */
  WireLimits(Network network, FeedGraph graph, SectionLimits sections) {
    this.sections = sections;
    this.points = graph.points();
    ways = new int[network.points().size()];
    alike = new int[ways.length];
    sections.blocks().forEach(block -> block.ways(point -> ways[point]++));
    countWays();
    int[] all = allWays();
    for (int i = 0; i < graph.inner().size(); i++) {
      int number = graph.inner().get(i);
      Edge edge = network.edges().get(number);
      int a = network.indexOfA(number);
      int hanging = hanging(i, a, network.indexOfB(number));
      boolean parts = hanging != NONE && ways[hanging] > 0 && ways[hanging] < all[hanging];
      onRing.set(number, hanging == NONE || parts);
      if (edge instanceof Edge.OfWire) {
        int section = graph.section(a);
        limits.put(number, parts ? cut(section, alike[hanging]) : sections.into(section));
      }
    }
  }

  /** The limit of each wire of the feed side, by its number among the edges of the network. */
  Map<Integer, Limit> limits() {
    return limits;
  }

  /** Whether an edge inside a section lies on a ring, through whatever fuses and sources. */
  boolean onRing(int edge) {
    return onRing.get(edge);
  }

  /** The end of an edge that hangs on it alone; -1 when neither does. */
  private int hanging(int edge, int a, int b) {
    if (points.by(a) == edge && points.hangs(a)) {
      return a;
    }
    return points.by(b) == edge && points.hangs(b) ? b : NONE;
  }

  private Limit cut(int section, int below) {
    Limit known = cuts.get(below);
    if (known == null) {
      known = sections.block(section).intoPart(section, point -> points.below(point, below));
      cuts.put(below, known);
    }
    return known;
  }

  /**
   * Counts the ways of current that end in the points below each point, and finds for each point
   * the lowest one whose edge parts its section as that of this point does.
   */
  private void countWays() {
    int[] own = ways.clone();
    int[] carried = new int[ways.length];
    Arrays.fill(carried, NONE);
    int[] order = points.order();
    for (int i = order.length - 1; i >= 0; i--) {
      int point = order[i];
      int up = points.parent(point);
      alike[point] = carried[point] == NONE ? point : carried[point];
      if (up != NONE && ways[point] > 0) {
        boolean alone = ways[up] == 0 && own[up] == 0;
        int handed = points.hangs(point) ? alike[point] : carried[point];
        carried[up] = alone ? handed : NONE;
        ways[up] += ways[point];
      }
    }
  }

  /** For each point the ways of current that end anywhere in its section. */
  private int[] allWays() {
    int[] all = ways.clone();
    for (int point : points.order()) {
      int up = points.parent(point);
      all[point] = up == NONE ? ways[point] : all[up];
    }
    return all;
  }
}
