package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import org.tugtest.network.Edge;

/**
 * Nodes of the feed side of which none hangs on a single fuse towards the others: one section of a
 * tree, or the sections of a ring. What comes in comes in at one node.
 */
final class Block {
  private static final int NOWHERE = -1;
  private final int entry;
  private final int entryPoint;
  private Limit supply = Limit.DEAD;
  private final Map<Integer, Integer> local = new HashMap<>();
  private final List<FeedGraph.Arc> arcs = new ArrayList<>();

  /**
   * A block.
   *
   * @param entry the node that the way from the sources reaches first
   * @param entryPoint the point there; -1 when the block holds all sources
   */
  Block(int entry, int entryPoint) {
    this.entry = entry;
    this.entryPoint = entryPoint;
    add(entry);
  }

  /** What comes in. */
  void supply(Limit limit) {
    supply = limit;
  }

  /** One more node. */
  void add(int node) {
    local.putIfAbsent(node, local.size());
  }

  /** What lies between two of its nodes, or begins and ends at one. */
  void add(FeedGraph.Arc arc) {
    arcs.add(arc);
  }

  /** Every point at which a way of current ends that may be on a ring; one twice for two ways. */
  void ways(IntConsumer point) {
    if (entryPoint != NOWHERE) {
      point.accept(entryPoint);
    }
    for (FeedGraph.Arc arc : arcs) {
      if (arc.pointOne() != NOWHERE) {
        point.accept(arc.pointOne());
      }
      point.accept(arc.pointOther());
    }
  }

  /** The greatest lasting current into a node. */
  Limit into(int node) {
    return node == entry ? supply : into(node, NOWHERE, point -> true, true);
  }

  /**
   * The greatest lasting current into either part of a node that is cut in two.
   *
   * @param near whether a point of the node is in the one part
   */
  Limit intoPart(int node, IntPredicate near) {
    return into(node, node, near, true).orGreater(into(node, node, near, false));
  }

  private Limit into(int node, int cut, IntPredicate near, boolean part) {
    int far = local.size();
    int source = cut == entry && !near.test(entryPoint) ? far : index(entry);
    int sink = cut != NOWHERE && !part ? far : index(node);
    if (source == sink) {
      return supply;
    }
    MaxFlow flow = new MaxFlow(far + 1);
    int[] tails = new int[arcs.size()];
    int[] heads = new int[arcs.size()];
    for (int i = 0; i < tails.length; i++) {
      FeedGraph.Arc arc = arcs.get(i);
      tails[i] = arc.one() == cut && !near.test(arc.pointOne()) ? far : index(arc.one());
      heads[i] = arc.other() == cut && !near.test(arc.pointOther()) ? far : index(arc.other());
      if (tails[i] != heads[i]) {
        flow.join(tails[i], heads[i], arc.capacity(), arc.capacityBack());
      }
    }
    double amps = flow.greatest(source, sink);
    List<Edge.OfElement> bounds = new ArrayList<>();
    BitSet behind = flow.sinkSide();
    for (int i = 0; i < tails.length && Double.isFinite(amps); i++) {
      FeedGraph.Arc arc = arcs.get(i);
      boolean in = behind.get(heads[i]) && !behind.get(tails[i]) && arc.capacity() > 0;
      boolean back = behind.get(tails[i]) && !behind.get(heads[i]) && arc.capacityBack() > 0;
      if (in || back) {
        bounds.add(arc.edge());
      }
    }
    return new Limit(amps, bounds).orLess(supply);
  }

  private int index(int node) {
    return Objects.requireNonNull(local.get(node));
  }
}
