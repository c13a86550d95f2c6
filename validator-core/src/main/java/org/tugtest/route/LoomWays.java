package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.graph.WeightedPseudograph;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Layout;
import org.tugtest.network.Joined;

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
  private final int[] pieceOf;
  private final boolean loops;

  /** The ways along these segments, which stand in natural order. */
  LoomWays(Iterable<Layout.Segment> usable) {
    List<int[]> ends = new ArrayList<>();
    for (Layout.Segment segment : usable) {
      if (segment.from() != null && segment.to() != null) {
        ends.add(new int[] {node(segment.from()), node(segment.to())});
        graph.addEdge(last(ends)[0], last(ends)[1], segments.size());
        rankOf.put(segment.id(), segments.size());
        segments.add(segment);
      }
    }
    Joined joined = new Joined(nodes.size());
    boolean round = false;
    for (int[] segment : ends) {
      round |= joined.find(segment[0]) == joined.find(segment[1]);
      joined.join(segment[0], segment[1]);
    }
    loops = round;
    pieceOf = joined.numbered();
  }

  private static int[] last(List<int[]> ends) {
    return ends.get(ends.size() - 1);
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
  boolean hasLoops() {
    return loops;
  }

  /** Whether two nodes hang together, by their numbers. */
  boolean joined(int one, int other) {
    return pieceOf[one] == pieceOf[other];
  }

  /** The nodes that hang together with this one, itself included. */
  Set<Integer> piece(int index) {
    Set<Integer> piece = new LinkedHashSet<>();
    for (int node = 0; node < pieceOf.length; node++) {
      if (joined(node, index)) {
        piece.add(node);
      }
    }
    return piece;
  }
}
