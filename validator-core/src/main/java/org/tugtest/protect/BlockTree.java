package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/**
 * What a reach takes, as blocks: a wire that all ways back to the starts pass, or all that lies on
 * rings together. From a point a simple way to the starts leads through every edge of each block
 * between it and them, and through no other. Points that a link or a bolt joins are one: metal does
 * not come off, so that nothing has to find another way round it.
 */
final class BlockTree {
  private static final int NONE = -1;
  private final Network network;
  private final int[] nodeOf;
  private final Bridges trees;
  private final int[] blockOf;
  private final List<Integer> towards = new ArrayList<>();
  private final int[] ends;

  /** The blocks of a reach from some points. */
  BlockTree(Network network, Reach reach, Collection<Point> starts) {
    this.network = network;
    this.nodeOf = nodes(network, reach);
    int root = Arrays.stream(nodeOf).max().orElse(-1) + 1;
    List<Integer> one = new ArrayList<>();
    List<Integer> other = new ArrayList<>();
    for (int i = 0; i < network.edges().size(); i++) {
      if (reach.takes(i)) {
        one.add(nodeOf[network.indexOfA(i)]);
        other.add(nodeOf[network.indexOfB(i)]);
      }
    }
    for (Point start : starts) {
      one.add(root);
      other.add(node(start));
    }
    trees = new Bridges(root + 1, array(one), array(other), root);
    blockOf = new int[root + 1];
    for (int node : trees.order()) {
      int up = trees.parent(node);
      if (up == NONE) {
        blockOf[node] = NONE;
      } else if (trees.beginsBlock(node)) {
        blockOf[node] = towards.size();
        towards.add(blockOf[up]);
      } else {
        blockOf[node] = blockOf[up];
      }
    }
    ends = new int[towards.size()];
    for (int block = ends.length - 1; block >= 0; block--) {
      ends[block] = Math.max(ends[block], block + 1);
      int next = towards.get(block);
      if (next != NONE) {
        ends[next] = Math.max(ends[next], ends[block]);
      }
    }
  }

  private static int[] nodes(Network network, Reach reach) {
    Joined joined = new Joined(network.points().size());
    for (int i = 0; i < network.edges().size(); i++) {
      Edge edge = network.edges().get(i);
      if (reach.takes(i) && isMetal(edge)) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
      }
    }
    return joined.numbered();
  }

  private static boolean isMetal(Edge edge) {
    return edge instanceof Edge.OfBolt
        || (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Link);
  }

  private int node(Point point) {
    return nodeOf[network.index(point)];
  }

  private static int[] array(List<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue).toArray();
  }

  /** How many blocks there are; each has a greater number than the one before it on the way. */
  int blocks() {
    return towards.size();
  }

  /** The block that the way from a block to the starts goes on through; -1 for one at a start. */
  int towards(int block) {
    return towards.get(block);
  }

  /**
   * The number behind a block and all blocks whose way leads through it: those follow it, as blocks
   * are numbered in the order of one walk that goes deep first.
   */
  int end(int block) {
    return ends[block];
  }

  /** The first block on the way from a point to the starts; -1 for one that is not reached. */
  int block(Point point) {
    return block(network.index(point));
  }

  /** The same of the point that stands there in {@link Network#points}. */
  int block(int point) {
    return blockOf[nodeOf[point]];
  }

  /** The block of an edge that the reach takes; -1 when metal joins its ends. */
  int block(Edge edge) {
    int one = node(edge.a());
    int other = node(edge.b());
    return one == other ? NONE : blockOf[trees.later(one, other)];
  }
}
