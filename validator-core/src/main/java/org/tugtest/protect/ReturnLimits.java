package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What faults inside loads can send through each block of the return side for ever: the greatest
 * flow into the feed sections of all loads that return through it. Loads without a fuse are left
 * out. A block takes over what flows for the greatest of the blocks behind it and adds the others.
 */
final class ReturnLimits {
  private final double[] amps;

  /** The limits of each block. */
  ReturnLimits(ReturnTree tree, FeedGraph graph, SectionLimits sections) {
    int blocks = tree.blocks().blocks();
    amps = new double[blocks];
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

  /** What faults can send through each block, in amperes; infinite when no rating bounds it. */
  List<Double> amps() {
    return Arrays.stream(amps).boxed().toList();
  }
}
