package org.tugtest.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.graph.WeightedPseudograph;
import org.tugtest.model.Layout;
import org.tugtest.network.Joined;

/**
 * All segments of a layout that have two ends, as one graph, built once. Nodes and segments are
 * numbered; the number of a segment is its rank in natural order, by which one of equal ways is
 * chosen.
 */
final class SegmentGraph {
  private static final String NO_LOOM = "";
  private final List<Layout.Segment> segments = new ArrayList<>();
  private final Map<String, Integer> rankOf = new HashMap<>();
  private final List<String> nodes = new ArrayList<>();
  private final Map<String, Integer> indexOf = new HashMap<>();
  private final List<int[]> ends = new ArrayList<>();
  private final Graph<Integer, Integer> graph = new WeightedPseudograph<>(Integer.class);
  private final Map<String, List<Integer>> ofLoom = new HashMap<>();
  private final List<Integer> loose = new ArrayList<>();
  private final int[] loosePiece;
  private final boolean looseLoops;

  SegmentGraph(Layout layout) {
    for (Layout.Segment segment : layout.segments().values()) {
      if (segment.from() != null && segment.to() != null) {
        Integer rank = segments.size();
        Integer from = addNode(segment.from());
        Integer to = addNode(segment.to());
        graph.addEdge(from, to, rank);
        ends.add(new int[] {from, to});
        rankOf.put(segment.id(), rank);
        segments.add(segment);
        String loom = segment.loom();
        (loom == null ? loose : ofLoom.computeIfAbsent(loom, id -> new ArrayList<>())).add(rank);
      }
    }
    Joined joined = new Joined(nodes.size());
    looseLoops = join(joined, loose);
    loosePiece = joined.numbered();
  }

  private Integer addNode(String id) {
    Integer known = indexOf.get(id);
    if (known != null) {
      return known;
    }
    Integer index = nodes.size();
    nodes.add(id);
    indexOf.put(id, index);
    graph.addVertex(index);
    return index;
  }

  private boolean join(Joined joined, List<Integer> ranks) {
    boolean round = false;
    for (int rank : ranks) {
      int from = ends.get(rank)[0];
      int to = ends.get(rank)[1];
      round |= joined.find(from) == joined.find(to);
      joined.join(from, to);
    }
    return round;
  }

  /** The ways along the segments of these looms and those of none. */
  LoomWays ways(Collection<String> looms) {
    Set<String> usable = new HashSet<>(looms);
    usable.remove(NO_LOOM);
    return new LoomWays(this, usable);
  }

  Graph<Integer, Integer> graph() {
    return graph;
  }

  /** The number of a node; -1 when there is none. */
  int index(String node) {
    return indexOf.getOrDefault(node, -1);
  }

  String node(int index) {
    return nodes.get(index);
  }

  /** The rank of a segment; -1 when it is not there or lacks an end. */
  int rank(String segment) {
    return rankOf.getOrDefault(segment, -1);
  }

  Layout.Segment segment(int rank) {
    return segments.get(rank);
  }

  /** The number of a node at which a segment ends: 0 for its start, 1 for its end. */
  int end(int rank, int which) {
    return ends.get(rank)[which];
  }

  int nodes() {
    return nodes.size();
  }

  /** The segments of a loom. */
  List<Integer> ofLoom(String loom) {
    return ofLoom.getOrDefault(loom, List.of());
  }

  /** The piece that segments of no loom join a node to. */
  int loosePiece(int node) {
    return loosePiece[node];
  }

  /** Whether segments of no loom make a loop. */
  boolean looseLoops() {
    return looseLoops;
  }
}
