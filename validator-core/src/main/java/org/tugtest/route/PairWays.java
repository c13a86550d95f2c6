package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToLongFunction;

/**
 * The shortest ways between pairs of nodes of one loom. All pairs are asked for first, so that one
 * search from a node serves every pair it is in; the node that is in most pairs is searched from.
 * The answer to a pair does not depend on the others.
 */
final class PairWays {
  private final LoomWays ways;
  private final IntToLongFunction cost;
  private final Set<Pair> asked = new LinkedHashSet<>();
  private final Map<Pair, Way> found = new HashMap<>();

  private record Pair(int low, int high) {
    static Pair of(int one, int other) {
      return new Pair(Math.min(one, other), Math.max(one, other));
    }
  }

  /** Ways that are short in mm. */
  PairWays(LoomWays ways) {
    this(ways, ways::cost);
  }

  /** Ways that are cheap, each segment having the cost of its rank. */
  PairWays(LoomWays ways, IntToLongFunction cost) {
    this.ways = ways;
    this.cost = cost;
  }

  /** What so much of a segment costs. */
  long cost(int rank, long part) {
    long length = ways.length(rank);
    return length == 0 ? 0 : Math.round((double) cost.applyAsLong(rank) * part / length);
  }

  LoomWays ways() {
    return ways;
  }

  /** Asks for the way between two nodes, by their numbers; one that is not there is passed over. */
  void ask(int one, int other) {
    if (one >= 0 && other >= 0 && one != other) {
      Pair pair = Pair.of(one, other);
      if (!found.containsKey(pair)) {
        asked.add(pair);
      }
    }
  }

  /** Finds all that was asked for. */
  void find() {
    Map<Integer, Integer> counts = new HashMap<>();
    for (Pair pair : asked) {
      counts.merge(pair.low(), 1, Integer::sum);
      counts.merge(pair.high(), 1, Integer::sum);
    }
    Map<Integer, List<Integer>> targets = new LinkedHashMap<>();
    for (Pair pair : asked) {
      boolean fromLow = counts.getOrDefault(pair.low(), 0) >= counts.getOrDefault(pair.high(), 0);
      targets
          .computeIfAbsent(fromLow ? pair.low() : pair.high(), node -> new ArrayList<>())
          .add(fromLow ? pair.high() : pair.low());
    }
    targets.forEach(this::search);
    asked.clear();
  }

  private void search(int source, List<Integer> targets) {
    Set<Integer> reachable = new LinkedHashSet<>(targets);
    reachable.removeIf(target -> !ways.joined(source, target));
    if (reachable.isEmpty()) {
      return;
    }
    WaySearch search = new WaySearch(ways, cost, source, reachable);
    for (int target : reachable) {
      Pair pair = Pair.of(source, target);
      search.to(target).ifPresent(w -> found.put(pair, pair.low() == source ? w : w.turned()));
    }
  }

  /** The way from one node to another; empty when there is none, or it was not asked for. */
  Optional<Way> way(int from, int to) {
    if (from < 0 || to < 0) {
      return Optional.empty();
    }
    if (from == to) {
      return Optional.of(Way.NONE);
    }
    Pair pair = Pair.of(from, to);
    return Optional.ofNullable(found.get(pair)).map(w -> from == pair.low() ? w : w.turned());
  }
}
