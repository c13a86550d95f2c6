package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/** What lies between the sources and the first fuses. */
final class FirstPieces {
  private final Reach unfused;
  private final BlockTree blocks;
  private final BitSet leading = new BitSet();
  private final List<Point> ends = new ArrayList<>();

  /**
   * The first pieces of a network.
   *
   * @param unfused what is reached without a fuse
   * @param starts the plus of every source that does not limit itself
   * @param feed the feed side
   */
  FirstPieces(Network network, Reach unfused, Collection<Point> starts, Reach feed) {
    this.unfused = unfused;
    this.blocks = new BlockTree(network, unfused, starts);
    for (int i = 0; i < network.edges().size(); i++) {
      Edge edge = network.edges().get(i);
      if (feed.takes(i) && Sides.isFuse(edge)) {
        lead(edge.a());
        lead(edge.b());
      }
    }
  }

  private void lead(Point end) {
    if (!unfused.reaches(end)) {
      return;
    }
    ends.add(end);
    int at = blocks.block(end);
    while (at >= 0 && !leading.get(at)) {
      leading.set(at);
      at = blocks.towards(at);
    }
  }

  /** Whether a simple way from a source to a first fuse leads through an unfused wire. */
  boolean leads(Edge.OfWire wire) {
    int block = unfused.reaches(wire.a()) ? blocks.block((Edge) wire) : -1;
    return block >= 0 && leading.get(block);
  }

  /** The ends of fuses that are reached without another fuse. */
  List<Point> ends() {
    return List.copyOf(ends);
  }
}
