package org.tugtest.rule.connectors;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.WeightedPseudograph;
import org.jgrapht.traverse.ClosestFirstIterator;
import org.tugtest.model.Layout;

/** Which nodes lie within a length of each other along the layout. */
final class Reachable {
  private final Graph<String, DefaultWeightedEdge> graph =
      new WeightedPseudograph<>(DefaultWeightedEdge.class);
  private final Map<String, Set<String>> known = new HashMap<>();
  private final double reachMm;

  Reachable(Layout layout, double reachMm) {
    this.reachMm = reachMm;
    for (Layout.Segment segment : layout.segments().values()) {
      String from = segment.from();
      String to = segment.to();
      Double length = segment.lengthMm();
      if (from != null && to != null && length != null && length >= 0 && length <= reachMm) {
        graph.addVertex(from);
        graph.addVertex(to);
        DefaultWeightedEdge edge = graph.addEdge(from, to);
        graph.setEdgeWeight(edge, length);
      }
    }
  }

  /** The nodes within reach of a node, itself included, the nearest first. */
  Set<String> from(String node) {
    return known.computeIfAbsent(node, this::search);
  }

  private Set<String> search(String node) {
    Set<String> near = new LinkedHashSet<>(Set.of(node));
    if (graph.containsVertex(node)) {
      new ClosestFirstIterator<>(graph, node, reachMm).forEachRemaining(near::add);
    }
    return near;
  }
}
