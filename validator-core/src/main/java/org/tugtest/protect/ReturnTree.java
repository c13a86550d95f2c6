package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * Which loads and coils return through which block of the return side. What lies between the very
 * pins of a source and is fed by no other returns through nothing.
 */
final class ReturnTree {
  private final Network network;
  private final BlockTree blocks;
  private final BiPredicate<Point, Point> ownSource;
  private final List<List<Draw>> draws = new ArrayList<>();
  private final BitSet fused = new BitSet();
  private final BitSet any = new BitSet();
  private final Map<Integer, Edge.OfElement> fuses = new HashMap<>();
  private final int[] fuseTowards;

  /**
   * A load or coil that returns through a block.
   *
   * @param home the end at which it returns
   * @param feed index of the point that feeds it
   * @param unfused whether that point is fed without a fuse
   */
  record Draw(Edge.OfElement load, Point home, int feed, boolean unfused) {}

  /**
   * The tree of a network; sides as they are without shorts.
   *
   * @param ownSource whether a point is the plus and another the minus of a source and the first is
   *     fed by no other
   */
  ReturnTree(
      Network network, Reach feed, Reach unfused, Reach back, BiPredicate<Point, Point> ownSource) {
    this.network = network;
    this.ownSource = ownSource;
    this.blocks =
        new BlockTree(network, back, network.sources().stream().map(Edge.OfElement::b).toList());
    for (int i = 0; i < blocks.blocks(); i++) {
      draws.add(new ArrayList<>(1));
    }
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement load && draws(load.element())) {
        add(load, load.a(), load.b(), feed, unfused, back);
        add(load, load.b(), load.a(), feed, unfused, back);
      }
    }
    findFuses(back);
    fuseTowards = new int[blocks.blocks()];
    for (int block = 0; block < fuseTowards.length; block++) {
      int next = blocks.towards(block);
      fuseTowards[block] = next < 0 || fuses.containsKey(next) ? next : fuseTowards[next];
    }
    for (int block = blocks.blocks() - 1; block >= 0; block--) {
      int next = blocks.towards(block);
      boolean own = draws.get(block).stream().anyMatch(draw -> !draw.unfused());
      fused.set(block, fused.get(block) || own);
      any.set(block, any.get(block) || !draws.get(block).isEmpty());
      if (next >= 0) {
        fused.set(next, fused.get(next) || fused.get(block));
        any.set(next, any.get(next) || any.get(block));
      }
    }
  }

  /** The fuses in the way back that all behind them have to pass. */
  private void findFuses(Reach back) {
    Set<Integer> several = new HashSet<>();
    Set<Integer> one = new HashSet<>();
    for (int i = 0; i < network.edges().size(); i++) {
      Edge edge = network.edges().get(i);
      int block = back.takes(i) ? blocks.block(edge) : -1;
      if (block >= 0 && !one.add(block)) {
        several.add(block);
      }
      if (block >= 0 && edge instanceof Edge.OfElement fuse && Sides.isFuse(edge)) {
        fuses.put(block, fuse);
      }
    }
    fuses.keySet().removeAll(several);
  }

  private static boolean draws(Element element) {
    return element instanceof Element.Load || element instanceof Element.Coil;
  }

  private void add(
      Edge.OfElement load, Point from, Point to, Reach feed, Reach unfused, Reach back) {
    boolean selfContained = ownSource.test(from, to);
    if (!selfContained && feed.reaches(from) && back.reaches(to) && blocks.block(to) >= 0) {
      draws
          .get(blocks.block(to))
          .add(new Draw(load, to, network.index(from), unfused.reaches(from)));
    }
  }

  /** The blocks of the return side. */
  BlockTree blocks() {
    return blocks;
  }

  /** Every load and coil that returns, with each end at which it can. */
  List<Draw> all() {
    return draws.stream().flatMap(List::stream).toList();
  }

  /** What returns through the points of a block and through no block before it. */
  List<Draw> own(int block) {
    return draws.get(block);
  }

  /** The fuse that a block is; null when it is none. */
  Edge.@Nullable OfElement fuse(int block) {
    return fuses.get(block);
  }

  /** The next fuse on the way from a block to the sources; -1 when there is none. */
  int fuseTowards(int block) {
    return fuseTowards[block];
  }

  /** Whether anything returns through a block. */
  boolean used(int block) {
    return any.get(block);
  }

  /** Whether anything that has a fuse returns through a block. */
  boolean usedByFused(int block) {
    return fused.get(block);
  }

  /** Everything that returns through a block. */
  List<Draw> through(int block) {
    List<Draw> through = new ArrayList<>();
    for (int i = block; i < blocks.end(block); i++) {
      if (!draws.get(i).isEmpty()) {
        through.addAll(draws.get(i));
      }
    }
    return through;
  }
}
