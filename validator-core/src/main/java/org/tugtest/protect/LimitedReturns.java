package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/**
 * Return wires beyond which sources lie that limit themselves, and no others: what a source gives
 * comes back to its own minus, so that no more flows there than these sources give, however strong
 * the battery is whose return they share. Or else what faults send the other way, in loads that
 * return through the wire to the battery from beyond it, such as the input of a converter; what the
 * sources beyond give into these comes back to them without the wire, where no way leads round it.
 */
final class LimitedReturns {
  /** Beyond a wire with more loads nothing is made of it. */
  private static final int MOST_LOADS = 64;

  private final Network network;
  private final Joined joined;
  private final Set<Integer> strongGroups = new HashSet<>();
  private final BlockTree blocks;
  private final BitSet before = new BitSet();

  /** How many edges each block has; where there is one, no other way leads round it. */
  private final int[] edgesOfBlock;

  private final Limits limits;
  private final List<Edge.OfElement> limited = new ArrayList<>();
  private final Map<Integer, List<Edge.OfElement>> limitedOfGroup = new HashMap<>();
  private final Map<Integer, List<Edge.OfElement>> limitedOfBlock = new HashMap<>();
  private final Map<Integer, List<ReturnTree.Draw>> drawsOfBlock = new HashMap<>();

  /**
   * What a wire can see.
   *
   * @param amps at most this
   * @param cut what bounds it
   * @param loads whose faults send the current of other sources through it
   */
  record Bound(double amps, List<Edge.OfElement> cut, List<Edge.OfElement> loads) {
    /** Whether it is what the sources beyond give, and not what faults send the other way. */
    boolean bySources() {
      return cut.stream().allMatch(edge -> edge.element() instanceof Element.Source);
    }
  }

  LimitedReturns(Network network, Reach back, ReturnTree tree, Limits limits) {
    this.network = network;
    this.limits = limits;
    List<Point> strong = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      if (Double.isInfinite(most(source))) {
        strong.add(source.b());
      } else {
        limited.add(source);
      }
    }
    blocks = new BlockTree(network, back, strong);
    edgesOfBlock = new int[blocks.blocks()];
    joined = new Joined(network.points().size());
    for (int i = 0; i < network.edges().size(); i++) {
      if (back.takes(i)) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
        count(blocks.block(network.edges().get(i)));
      }
    }
    for (Point minus : strong) {
      strongGroups.add(group(minus));
      count(blocks.block(minus));
    }
    for (ReturnTree.Draw draw : tree.all()) {
      drawsOfBlock.computeIfAbsent(blocks.block(draw.home()), none -> new ArrayList<>()).add(draw);
    }
    for (Edge.OfElement source : limited) {
      int block = blocks.block(source.b());
      limitedOfBlock.computeIfAbsent(block, none -> new ArrayList<>(1)).add(source);
      limitedOfGroup.computeIfAbsent(group(source.b()), none -> new ArrayList<>(1)).add(source);
      while (block >= 0 && !before.get(block)) {
        before.set(block);
        block = blocks.towards(block);
      }
    }
  }

  private static double most(Edge.OfElement source) {
    return Ratings.ofSource((Element.Source) source.element());
  }

  /**
   * The bound of a return wire; empty when what is known of all sources together is no more.
   *
   * @param all what faults can send through it when any source may take it back, in amperes
   */
  Optional<Bound> of(Edge.OfWire wire, double all, ToDoubleFunction<Edge.OfElement> rating) {
    boolean strong = strongGroups.contains(group(wire.a()));
    if (limited.isEmpty() || (strong && !isBefore(blocks.block(wire)))) {
      return Optional.empty();
    }
    List<Edge.OfElement> sources =
        strong
            ? beyond(wire, limitedOfBlock)
            : limitedOfGroup.getOrDefault(group(wire.a()), List.of());
    double most = 0;
    for (Edge.OfElement source : sources) {
      most += most(source);
    }
    if (sources.isEmpty() || most >= all) {
      return Optional.empty();
    }
    List<ReturnTree.Draw> there = strong ? beyond(wire, drawsOfBlock) : List.of();
    if (there.size() > MOST_LOADS) {
      return Optional.empty();
    }
    List<Edge.OfElement> loads =
        there.stream()
            .filter(draw -> !draw.unfused())
            .map(ReturnTree.Draw::load)
            .distinct()
            .toList();
    boolean only = strong && edgesOfBlock[blocks.block(wire)] == 1;
    FaultFlow other =
        there.isEmpty() ? null : limits.into(there, rating, only ? sources : List.of());
    if (other == null || other.amps() <= most) {
      return Optional.of(new Bound(most, sources, loads));
    }
    return other.amps() < all
        ? Optional.of(new Bound(other.amps(), other.cut(), loads))
        : Optional.empty();
  }

  private void count(int block) {
    if (block >= 0) {
      edgesOfBlock[block]++;
    }
  }

  private boolean isBefore(int block) {
    return block >= 0 && before.get(block);
  }

  private int group(Point point) {
    return joined.find(network.index(point));
  }

  /** What lies in the blocks beyond a wire, seen from the strong sources. */
  private <T> List<T> beyond(Edge.OfWire wire, Map<Integer, List<T>> ofBlock) {
    int first = blocks.block(wire);
    List<T> beyond = new ArrayList<>();
    for (int block = first; first >= 0 && block < blocks.end(first); block++) {
      beyond.addAll(ofBlock.getOrDefault(block, List.of()));
    }
    return beyond;
  }
}
