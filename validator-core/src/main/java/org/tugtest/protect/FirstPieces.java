package org.tugtest.protect;

import java.util.BitSet;
import java.util.Collection;
import java.util.function.Predicate;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * What lies between the sources and the first fuses, and between them and cranking motors. Of
 * batteries in a row, what joins one to the next leads to the first fuse behind the last.
 */
final class FirstPieces {
  private final Reach unfused;
  private final BlockTree blocks;
  private final BitSet leading = new BitSet();
  private final BitSet cranking = new BitSet();

  /**
   * The first pieces of a network.
   *
   * @param unfused what is reached without a fuse
   * @param starts the plus of every source that does not limit itself
   * @param feed the feed side
   * @param cranks whether a load is a cranking motor
   */
  FirstPieces(
      Network network,
      Reach unfused,
      Collection<Point> starts,
      Reach feed,
      Predicate<Edge.OfElement> cranks) {
    this.unfused = unfused;
    this.blocks = new BlockTree(network, unfused, starts);
    for (int i = 0; i < network.edges().size(); i++) {
      Edge edge = network.edges().get(i);
      if (feed.takes(i) && Sides.isFuse(edge)) {
        mark(edge.a(), leading);
        mark(edge.b(), leading);
      } else if (edge instanceof Edge.OfElement load && cranks.test(load)) {
        mark(edge.a(), cranking);
        mark(edge.b(), cranking);
      } else if (edge instanceof Edge.OfElement source
          && source.element() instanceof Element.Source) {
        mark(source.b(), leading);
      }
    }
  }

  private void mark(Point end, BitSet marks) {
    int at = unfused.reaches(end) ? blocks.block(end) : -1;
    while (at >= 0 && !marks.get(at)) {
      marks.set(at);
      at = blocks.towards(at);
    }
  }

  /** Whether a simple way from a source to a first fuse leads through an unfused wire. */
  boolean leadsToFuse(Edge.OfWire wire) {
    return marked(wire, leading);
  }

  /** Whether a simple way from a source to a cranking motor leads through an unfused wire. */
  boolean leadsToCranking(Edge.OfWire wire) {
    return marked(wire, cranking);
  }

  private boolean marked(Edge.OfWire wire, BitSet marks) {
    int block = unfused.reaches(wire.a()) ? blocks.block((Edge) wire) : -1;
    return block >= 0 && marks.get(block);
  }
}
