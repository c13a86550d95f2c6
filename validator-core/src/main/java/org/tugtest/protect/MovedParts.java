package org.tugtest.protect;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;

/**
 * The parts of a network that nothing joins, neither an edge nor a switch or relay that moves
 * contacts in both: whatever is set in one makes no difference to another.
 */
final class MovedParts {
  private final Network network;
  private final int[] ofPoint;
  private final List<List<Integer>> contacts = new ArrayList<>();
  private final int[] ofBlock;

  /** The parts, with those of the blocks of the return side. */
  MovedParts(Network network, ClosedTogether together, BlockTree blocks) {
    this.network = network;
    Joined joined = new Joined(network.points().size());
    for (int i = 0; i < together.movers(); i++) {
      contacts.add(new ArrayList<>(2));
    }
    for (int i = 0; i < network.edges().size(); i++) {
      joined.join(network.indexOfA(i), network.indexOfB(i));
      int mover = together.mover(i);
      if (mover >= 0) {
        List<Integer> its = contacts.get(mover);
        its.add(i);
        joined.join(network.indexOfA(its.get(0)), network.indexOfA(i));
      }
    }
    ofPoint = joined.numbered();
    ofBlock = new int[blocks.blocks()];
    for (int point = 0; point < network.points().size(); point++) {
      int block = blocks.block(point);
      if (block >= 0) {
        ofBlock[block] = ofPoint[point];
      }
    }
  }

  /** The part of an edge, by its number. */
  int ofEdge(int edge) {
    return ofPoint[network.indexOfA(edge)];
  }

  /** The part of a switch or relay. */
  int ofMover(int mover) {
    return ofEdge(contacts.get(mover).get(0));
  }

  /** The part of a block. */
  int ofBlock(int block) {
    return ofBlock[block];
  }

  /** The contacts of a switch or relay, by their numbers. */
  List<Integer> contacts(int mover) {
    return contacts.get(mover);
  }
}
