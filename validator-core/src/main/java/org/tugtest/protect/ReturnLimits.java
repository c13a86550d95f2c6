package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Edge;

/**
 * What faults inside loads can send through each block of the return side for ever: the greatest
 * flow into the feed sections of all loads that return through it. Loads without a fuse are left
 * out. A block takes over what flows for the greatest of the blocks behind it and adds the others.
 */
final class ReturnLimits {
  private final double[] amps;
  private final List<OneFault> ones;

  /**
   * The limits of each block.
   *
   * @param rating of a fuse, in amperes
   */
  ReturnLimits(
      ReturnTree tree,
      FeedGraph graph,
      SectionLimits sections,
      ToDoubleFunction<Edge.OfElement> rating) {
    int blocks = tree.blocks().blocks();
    amps = new double[blocks];
    ones = ones(tree, graph, sections, rating);
    List<@Nullable FaultFlow> behind = new ArrayList<>();
    for (int i = 0; i < blocks; i++) {
      behind.add(null);
    }
    for (int block = blocks - 1; block >= 0; block--) {
      FaultFlow flow = behind.get(block);
      if (flow == null) {
        flow = new FaultFlow(graph, sections);
      }
      add(flow, tree.own(block), graph);
      amps[block] = flow.amps();
      behind.set(block, null);
      int next = tree.blocks().towards(block);
      if (next >= 0) {
        behind.set(next, together(behind.get(next), flow));
      }
    }
  }

  /** What one fault alone can send through each block: the greatest of those behind it. */
  private static List<OneFault> ones(
      ReturnTree tree,
      FeedGraph graph,
      SectionLimits sections,
      ToDoubleFunction<Edge.OfElement> rating) {
    int blocks = tree.blocks().blocks();
    List<OneFault> ones = new ArrayList<>(Collections.nCopies(blocks, OneFault.NONE));
    for (int block = blocks - 1; block >= 0; block--) {
      OneFault most = ones.get(block);
      for (ReturnTree.Draw draw : tree.own(block)) {
        int section = graph.section(draw.feed());
        if (!draw.unfused() && section >= 0) {
          Limit limit = sections.into(section);
          most =
              most.orGreater(
                  new OneFault(
                      limit.amps(),
                      limit.amps(),
                      draw.load(),
                      limit.cut(),
                      null,
                      Double.POSITIVE_INFINITY));
        }
      }
      Edge.OfElement fuse = tree.fuse(block);
      most = fuse == null ? most : most.through(fuse, rating.applyAsDouble(fuse));
      ones.set(block, most);
      int next = tree.blocks().towards(block);
      if (next >= 0) {
        ones.set(next, ones.get(next).orGreater(most));
      }
    }
    for (int block = 0; block < blocks; block++) {
      for (int home = tree.fuseTowards(block); home >= 0; home = tree.fuseTowards(home)) {
        Edge.OfElement fuse = tree.fuse(home);
        if (fuse != null) {
          ones.set(block, ones.get(block).through(fuse, rating.applyAsDouble(fuse)));
        }
      }
    }
    return ones;
  }

  private static FaultFlow together(@Nullable FaultFlow one, FaultFlow other) {
    if (one == null) {
      return other;
    }
    FaultFlow great = one.into().size() >= other.into().size() ? one : other;
    FaultFlow small = great == one ? other : one;
    small.into().forEach(great::add);
    return great;
  }

  /** Lets current into what these loads hang on. */
  static void add(FaultFlow flow, List<ReturnTree.Draw> draws, FeedGraph graph) {
    for (ReturnTree.Draw draw : draws) {
      int section = graph.section(draw.feed());
      if (!draw.unfused() && section >= 0) {
        flow.add(section);
      }
    }
  }

  /** What one fault can send through each block. */
  List<OneFault> ones() {
    return ones;
  }

  /** What faults can send through a block together, in amperes; infinite without a bound. */
  double amps(int block) {
    return amps[block];
  }
}
