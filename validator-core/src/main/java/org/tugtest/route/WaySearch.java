package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToLongFunction;
import org.jgrapht.Graph;
import org.jgrapht.graph.AsWeightedGraph;
import org.jgrapht.traverse.ClosestFirstIterator;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest ways from one node to some others, the nearest first, until all of them are reached
 * or nothing is left: O((n + m) log n) in the nodes and segments that are no farther than the
 * farthest of them. Of ways of equal cost the one that {@link Way#compare} puts first is taken.
 * Every segment costs 1 or more.
 */
final class WaySearch {
  /**
   * A unit of cost in the weights; one is added per segment, so that of equal ways the one of fewer
   * segments is nearer. Sums stay exact up to 2^53, some 137 km of ways.
   */
  private static final double UNIT = 65_536;

  private final Graph<Integer, Integer> graph;
  private final IntToLongFunction cost;
  private final int source;
  private final Map<Integer, Reached> reached = new HashMap<>();

  /** How a node is reached; {@code other} is a second way in at the same cost. */
  private record Reached(double weight, @Nullable Hop by, @Nullable Hop other) {
    long cost() {
      return (long) (weight / UNIT);
    }
  }

  /** The last segment of a way and the node it comes from. */
  private record Hop(int rank, int from) {}

  WaySearch(LoomWays ways, IntToLongFunction cost, int source, Set<Integer> targets) {
    this.graph = ways.graph();
    this.cost = cost;
    this.source = source;
    Graph<Integer, Integer> weighted =
        new AsWeightedGraph<>(
            graph,
            rank -> cost.applyAsLong(rank) * UNIT + 1,
            /* cacheWeights= */ false,
            /* writeWeightsThrough= */ false);
    ClosestFirstIterator<Integer, Integer> nearest = new ClosestFirstIterator<>(weighted, source);
    Set<Integer> left = new HashSet<>(targets);
    while (!left.isEmpty() && nearest.hasNext()) {
      Integer node = nearest.next();
      reach(node, nearest.getShortestPathLength(node));
      left.remove(node);
    }
  }

  private void reach(int node, double weight) {
    if (node == source) {
      reached.put(node, new Reached(0, null, null));
      return;
    }
    long total = (long) (weight / UNIT);
    Hop best = null;
    Hop other = null;
    for (Integer rank : graph.edgesOf(node)) {
      int from = opposite(rank, node);
      Reached before = from == node ? null : reached.get(from);
      if (before == null || before.cost() + cost.applyAsLong(rank) != total) {
        continue;
      }
      Hop hop = new Hop(rank, from);
      if (best == null || before(hop, best)) {
        other = best;
        best = hop;
      } else if (other == null || before(hop, other)) {
        other = hop;
      }
    }
    reached.put(node, new Reached(weight, best, other));
  }

  private int opposite(int rank, int node) {
    int from = graph.getEdgeSource(rank);
    return from == node ? graph.getEdgeTarget(rank) : from;
  }

  /**
   * Whether the way in by {@code one} comes before that by {@code two}: the one of fewer segments;
   * of as many, back from the node to where they part, the one with the segment of the least rank.
   */
  private boolean before(Hop one, Hop two) {
    int byCount = Double.compare(weight(one), weight(two));
    if (byCount != 0) {
      return byCount < 0;
    }
    int least = one.rank();
    int leastOther = two.rank();
    int a = one.from();
    int b = two.from();
    while (a != b) {
      Reached atA = at(a);
      Reached atB = at(b);
      if (atA.weight() >= atB.weight()) {
        Hop back = back(atA);
        least = Math.min(least, back.rank());
        a = back.from();
      } else {
        Hop back = back(atB);
        leastOther = Math.min(leastOther, back.rank());
        b = back.from();
      }
    }
    return least < leastOther;
  }

  private double weight(Hop hop) {
    return at(hop.from()).weight() + cost.applyAsLong(hop.rank()) * UNIT + 1;
  }

  private Reached at(int node) {
    Reached found = reached.get(node);
    if (found == null) {
      throw new IllegalStateException("a way leads through a node that was not reached");
    }
    return found;
  }

  private static Hop back(Reached node) {
    Hop hop = node.by();
    if (hop == null) {
      throw new IllegalStateException("two ways from one node do not begin there");
    }
    return hop;
  }

  /** The way to a node; empty when it was not reached. */
  Optional<Way> to(int target) {
    if (!reached.containsKey(target)) {
      return Optional.empty();
    }
    List<Integer> ranks = new ArrayList<>();
    int[] second = null;
    for (int node = target; node != source; ) {
      Reached here = at(node);
      Hop hop = back(here);
      if (here.other() != null) {
        int[] besides = by(here.other(), ranks);
        second = second == null || Way.compare(besides, second) < 0 ? besides : second;
      }
      ranks.add(hop.rank());
      node = hop.from();
    }
    return Optional.of(new Way(fromSource(ranks), at(target).cost(), second));
  }

  /** The way in by {@code hop}, with what was gone back already. */
  private int[] by(Hop hop, List<Integer> gone) {
    List<Integer> ranks = new ArrayList<>(gone);
    ranks.add(hop.rank());
    for (int node = hop.from(); node != source; ) {
      Hop back = back(at(node));
      ranks.add(back.rank());
      node = back.from();
    }
    return fromSource(ranks);
  }

  private static int[] fromSource(List<Integer> back) {
    int[] ranks = new int[back.size()];
    for (int i = 0; i < ranks.length; i++) {
      ranks[i] = back.get(ranks.length - 1 - i);
    }
    return ranks;
  }
}
