package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.tugtest.text.NaturalOrder;

/**
 * Pairs of two sides at the least cost. Only candidates are paired, and each may stay alone at a
 * cost above every candidate's, so that as many as can be are paired first. What hangs together by
 * candidates is solved exactly up to a bound, above it greedily; ties go by id.
 */
final class Assignment {
  private static final int MOST_PER_SIDE = 60;
  private static final double TIE = 1e-6;
  private final Map<String, Map<String, Double>> costs = new TreeMap<>(NaturalOrder.NATURAL);

  /** A pair that may be, with what speaks against it (from 0). */
  void candidate(String before, String after, double cost) {
    costs
        .computeIfAbsent(before, none -> new TreeMap<>(NaturalOrder.NATURAL))
        .merge(after, cost, Math::min);
  }

  /** Hands every pair to {@code pair}. */
  void solve(BiConsumer<String, String> pair) {
    Map<String, List<String>> byAfter = new HashMap<>();
    costs.forEach(
        (before, afters) ->
            afters
                .keySet()
                .forEach(
                    after ->
                        byAfter.computeIfAbsent(after, none -> new ArrayList<>()).add(before)));
    Set<String> seen = new HashSet<>();
    for (String start : costs.keySet()) {
      if (seen.add(start)) {
        List<String> befores = new ArrayList<>(List.of(start));
        Set<String> afters = new HashSet<>();
        for (int i = 0; i < befores.size(); i++) {
          for (String after : row(befores.get(i)).keySet()) {
            if (afters.add(after)) {
              byAfter.getOrDefault(after, List.of()).stream()
                  .filter(seen::add)
                  .forEach(befores::add);
            }
          }
        }
        List<String> others = new ArrayList<>(afters);
        befores.sort(NaturalOrder.NATURAL);
        others.sort(NaturalOrder.NATURAL);
        if (Math.max(befores.size(), others.size()) <= MOST_PER_SIDE) {
          exactly(befores, others, pair);
        } else {
          greedily(befores, pair);
        }
      }
    }
  }

  private Map<String, Double> row(String before) {
    return costs.getOrDefault(before, Map.of());
  }

  private void exactly(List<String> befores, List<String> afters, BiConsumer<String, String> pair) {
    int size = befores.size() + afters.size();
    double alone = 1;
    for (String before : befores) {
      for (double cost : row(before).values()) {
        alone = Math.max(alone, cost + 1);
      }
    }
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    Set<Integer> left = new LinkedHashSet<>();
    Set<Integer> right = new LinkedHashSet<>();
    for (int i = 0; i < size; i++) {
      graph.addVertex(i);
      graph.addVertex(size + i);
      left.add(i);
      right.add(size + i);
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        boolean one = i < befores.size();
        boolean other = j < afters.size();
        Double cost = one && other ? row(befores.get(i)).get(afters.get(j)) : null;
        double distance = (double) (i - j) * (i - j) / ((double) size * size);
        double weight =
            cost != null
                ? cost + TIE * distance
                : one && other ? 4 * alone : one || other ? alone : 0;
        graph.setEdgeWeight(graph.addEdge(i, size + j), weight);
      }
    }
    new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, left, right)
        .getMatching().getEdges().stream()
            .map(edge -> new int[] {graph.getEdgeSource(edge), graph.getEdgeTarget(edge) - size})
            .filter(edge -> edge[0] < befores.size() && edge[1] < afters.size())
            .filter(edge -> row(befores.get(edge[0])).containsKey(afters.get(edge[1])))
            .sorted(Comparator.comparingInt(edge -> edge[0]))
            .forEach(edge -> pair.accept(befores.get(edge[0]), afters.get(edge[1])));
  }

  private void greedily(List<String> befores, BiConsumer<String, String> pair) {
    record Candidate(Votes.Pair ids, double cost) {}

    List<Candidate> all = new ArrayList<>();
    for (String before : befores) {
      row(before)
          .forEach((after, cost) -> all.add(new Candidate(new Votes.Pair(before, after), cost)));
    }
    Collections.sort(
        all,
        Comparator.comparingDouble(Candidate::cost)
            .thenComparing(Candidate::ids, Votes.Pair.ORDER));
    Set<String> usedBefore = new HashSet<>();
    Set<String> usedAfter = new HashSet<>();
    for (Candidate candidate : all) {
      if (!usedBefore.contains(candidate.ids().before())
          && usedAfter.add(candidate.ids().after())) {
        usedBefore.add(candidate.ids().before());
        pair.accept(candidate.ids().before(), candidate.ids().after());
      }
    }
  }
}
