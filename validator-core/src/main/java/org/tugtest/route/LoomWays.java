package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.graph.MaskSubgraph;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Layout;
import org.tugtest.network.Joined;

/**
 * The segments that the wires of one loom may use: its own and those of files without a loom. Nodes
 * and segments have the numbers of the graph of all. A segment that gives no length is there as one
 * of no length, so that a way which is shortest without it is surely shortest.
 */
final class LoomWays {
  private static final double THOUSANDTHS = 1000;
  private final SegmentGraph all;
  private final Set<String> looms;
  private final Graph<Integer, Integer> graph;
  private final Map<Integer, Integer> small = new HashMap<>();
  private final int[] pieces;
  private final boolean loops;

  /** The ways along the segments of these looms and those of none. */
  LoomWays(SegmentGraph all, Set<String> looms) {
    this.all = all;
    this.looms = looms;
    this.graph = new MaskSubgraph<>(all.graph(), node -> false, rank -> !usable(rank));
    List<int[]> joins = new ArrayList<>();
    for (String loom : looms) {
      for (int rank : all.ofLoom(loom)) {
        joins.add(new int[] {smallOf(all.end(rank, 0)), smallOf(all.end(rank, 1))});
      }
    }
    Joined joined = new Joined(small.size());
    boolean round = all.looseLoops();
    for (int[] join : joins) {
      round |= joined.find(join[0]) == joined.find(join[1]);
      joined.join(join[0], join[1]);
    }
    loops = round;
    pieces = joined.numbered();
  }

  /** Pieces of no loom that these looms reach are numbered from 0. */
  private Integer smallOf(int node) {
    return small.computeIfAbsent(all.loosePiece(node), none -> small.size());
  }

  private boolean usable(int rank) {
    String loom = all.segment(rank).loom();
    return loom == null || looms.contains(loom);
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
    int index = all.index(node);
    return index < 0 || !reaches(index) ? -1 : index;
  }

  private boolean reaches(int node) {
    for (int rank : all.graph().edgesOf(node)) {
      if (usable(rank)) {
        return true;
      }
    }
    return false;
  }

  String node(int index) {
    return all.node(index);
  }

  /** The rank of a segment; -1 when the loom may not use it. */
  int rank(String segment) {
    int rank = all.rank(segment);
    return rank < 0 || !usable(rank) ? -1 : rank;
  }

  Layout.Segment segment(int rank) {
    return all.segment(rank);
  }

  /** The length of a segment in thousandths of a millimetre; 0 when it gives none. */
  long length(int rank) {
    Double length = length(all.segment(rank));
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
    return length(all.segment(rank)) != null;
  }

  /** Whether there is more than one way between some two nodes. */
  boolean hasLoops() {
    return loops;
  }

  /** Whether two nodes hang together, by their numbers. */
  boolean joined(int one, int other) {
    return piece(one) == piece(other);
  }

  /** The pieces that looms join have the numbers below 0. */
  private int piece(int node) {
    int loose = all.loosePiece(node);
    Integer its = small.get(loose);
    return its == null ? loose : -1 - pieces[its];
  }

  /** The nodes that hang together with this one, itself included, by their numbers. */
  Set<Integer> together(int index) {
    Set<Integer> together = new LinkedHashSet<>();
    for (int node = 0; node < all.nodes(); node++) {
      if (joined(node, index)) {
        together.add(node);
      }
    }
    return together;
  }
}
