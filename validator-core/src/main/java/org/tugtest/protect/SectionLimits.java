package org.tugtest.protect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The greatest lasting current into every section. Along a tree of fuses it is read off from
 * section to section; only where sections hang together by more than one way is a flow looked for.
 */
final class SectionLimits {
  private final int[] blockOf;
  private final List<List<FeedGraph.Arc>> into = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();
  private final Map<Integer, Limit> limits = new HashMap<>();

  /** The limits in a graph. */
  SectionLimits(FeedGraph graph) {
    List<FeedGraph.Arc> arcs = graph.arcs();
    int[] one = new int[arcs.size()];
    int[] other = new int[arcs.size()];
    for (int i = 0; i < one.length; i++) {
      one[i] = arcs.get(i).one();
      other[i] = arcs.get(i).other();
    }
    Bridges trees = new Bridges(graph.sources() + 1, one, other, graph.sources());
    blockOf = new int[graph.sources() + 1];
    List<Integer> entries = new ArrayList<>();
    for (int node : trees.order()) {
      int up = trees.parent(node);
      if (up < 0 || trees.hangs(node)) {
        blockOf[node] = blocks.size();
        blocks.add(new Block(node, up < 0 ? -1 : entryPoint(arcs.get(trees.by(node)), node)));
        entries.add(node);
      } else {
        blockOf[node] = blockOf[up];
        blocks.get(blockOf[node]).add(node);
      }
    }
    for (int i = 0; i <= graph.sources(); i++) {
      into.add(new ArrayList<>(1));
    }
    for (FeedGraph.Arc arc : arcs) {
      if (blockOf[arc.one()] == blockOf[arc.other()]) {
        blocks.get(blockOf[arc.one()]).add(arc);
        into.get(arc.one()).add(arc);
        into.get(arc.other()).add(arc);
      }
    }
    for (int node : entries) {
      int up = trees.parent(node);
      if (up >= 0) {
        into.get(node).add(arcs.get(trees.by(node)));
        block(node).supply(through(arcs.get(trees.by(node)), node).orLess(into(up)));
      } else if (node == graph.sources()) {
        block(node).supply(Limit.NONE);
      }
    }
  }

  private static int entryPoint(FeedGraph.Arc arc, int node) {
    return arc.other() == node ? arc.pointOther() : arc.pointOne();
  }

  private static Limit through(FeedGraph.Arc arc, int node) {
    double most = arc.other() == node ? arc.capacity() : arc.capacityBack();
    return Double.isInfinite(most) ? Limit.NONE : new Limit(most, List.of(arc.edge()));
  }

  /** The greatest lasting current into a section. */
  Limit into(int section) {
    Limit known = limits.get(section);
    if (known == null) {
      known = block(section).into(section);
      limits.put(section, known);
    }
    return known;
  }

  /** All blocks, each after the one it is fed from. */
  List<Block> blocks() {
    return blocks;
  }

  /** What can bring current into a node. */
  List<FeedGraph.Arc> arcsInto(int node) {
    return into.get(node);
  }

  /** What a section hangs together with. */
  Block block(int section) {
    return blocks.get(blockOf[section]);
  }
}
