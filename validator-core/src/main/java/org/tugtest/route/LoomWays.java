package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.WeightedPseudograph;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Layout;

/**
 * The segments that the wires of one loom may use, as a graph: its own and those of files without a
 * loom. Nodes and segments are numbered; the number of a segment is its rank in natural order, by
 * which one of equal ways is chosen. A segment that gives no length is there as one of no length,
 * so that a way which is shortest without it is surely shortest.
 */
final class LoomWays {
  private static final double THOUSANDTHS = 1000;
  private final List<Layout.Segment> segments = new ArrayList<>();
  private final Map<String, Integer> rankOf = new HashMap<>();
  private final List<String> nodes = new ArrayList<>();
  private final Map<String, Integer> indexOf = new HashMap<>();
  private final Graph<Integer, Integer> graph = new WeightedPseudograph<>(Integer.class);
  private @Nullable ConnectivityInspector<Integer, Integer> pieces;
  private long cycles;

  /** The ways of a loom; null: of what is loose. */
  LoomWays(Layout layout, @Nullable String loom) {
    this(layout, whose -> whose == null || whose.equals(loom));
  }

  /** The ways along segments that belong to looms as told; null stands for no loom. */
  LoomWays(Layout layout, Predicate<@Nullable String> usable) {
    for (Layout.Segment segment : layout.segments().values()) {
      if (usable.test(segment.loom())) {
        add(segment);
      }
    }
  }

  private void add(Layout.Segment segment) {
    if (segment.from() == null || segment.to() == null) {
      return;
    }
    int rank = segments.size();
    segments.add(segment);
    rankOf.put(segment.id(), rank);
    graph.addEdge(node(segment.from()), node(segment.to()), rank);
  }

  private Integer node(String id) {
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

  /** The length of a segment in mm; null when it gives none. */
  static @Nullable Double length(Layout.Segment segment) {
    Double length = segment.lengthMm();
    return length == null || length < 0 ? null : length;
  }

  /** A length in whole thousandths of a millimetre, in which sums are exact. */
  static long thousandths(double mm) {
    return Math.round(mm * THOUSANDTHS);
  }

  Graph<Integer, Integer> graph() {
    return graph;
  }

  /** The number of a node; -1 when no segment of these reaches it. */
  int index(String node) {
    return indexOf.getOrDefault(node, -1);
  }

  String node(int index) {
    return nodes.get(index);
  }

  /** The rank of a segment; -1 when the loom may not use it. */
  int rank(String segment) {
    return rankOf.getOrDefault(segment, -1);
  }

  Layout.Segment segment(int rank) {
    return segments.get(rank);
  }

  /** The length of a segment in thousandths of a millimetre; 0 when it gives none. */
  long length(int rank) {
    Double length = length(segments.get(rank));
    return length == null ? 0 : thousandths(length);
  }

  /**
   * What a segment costs in a search for short ways: its length, but a thousandth of a millimetre
   * where it has none, so that every segment costs something.
   */
  long cost(int rank) {
    return Math.max(1, length(rank));
  }

  /** Whether a segment gives its length. */
  boolean known(int rank) {
    return length(segments.get(rank)) != null;
  }

  boolean isEmpty() {
    return segments.isEmpty();
  }

  /** Whether there is more than one way between some two nodes. */
  synchronized boolean hasLoops() {
    if (cycles == 0) {
      cycles = 1L + segments.size() - nodes.size() + pieces().connectedSets().size();
    }
    return cycles > 1;
  }

  /** The nodes that hang together with this one, itself included. */
  synchronized Set<Integer> piece(int index) {
    return pieces().connectedSetOf(index);
  }

  private ConnectivityInspector<Integer, Integer> pieces() {
    ConnectivityInspector<Integer, Integer> known = pieces;
    if (known == null) {
      known = new ConnectivityInspector<>(graph);
      pieces = known;
    }
    return known;
  }
}
