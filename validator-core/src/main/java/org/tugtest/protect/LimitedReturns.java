package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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
 * return through the wire to the battery from beyond it, such as the input of a converter.
 */
final class LimitedReturns {
  /** Beyond a wire with more loads nothing is made of it. */
  private static final int MOST_LOADS = 64;

  private final Network network;
  private final Joined joined;
  private final Set<Integer> strongGroups = new HashSet<>();
  private final BlockTree blocks;
  private final BitSet before = new BitSet();
  private final Limits limits;
  private final List<ReturnTree.Draw> draws;
  private final List<Edge.OfElement> limited = new ArrayList<>();

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
    this.draws = tree.all();
    List<Point> strong = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      if (Double.isInfinite(most(source))) {
        strong.add(source.b());
      } else {
        limited.add(source);
      }
    }
    blocks = new BlockTree(network, back, strong);
    joined = new Joined(network.points().size());
    for (int i = 0; i < network.edges().size(); i++) {
      if (back.takes(i)) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
      }
    }
    strong.forEach(minus -> strongGroups.add(group(minus)));
    for (Edge.OfElement source : limited) {
      int block = blocks.block(source.b());
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
    Predicate<Point> beyond = beyond(wire);
    List<Edge.OfElement> sources = new ArrayList<>();
    double most = 0;
    for (Edge.OfElement source : limited) {
      if (beyond.test(source.b())) {
        sources.add(source);
        most += most(source);
      }
    }
    if (sources.isEmpty() || most >= all) {
      return Optional.empty();
    }
    List<ReturnTree.Draw> there =
        strong ? draws.stream().filter(draw -> beyond.test(draw.home())).toList() : List.of();
    if (there.size() > MOST_LOADS) {
      return Optional.empty();
    }
    List<Edge.OfElement> loads =
        there.stream()
            .filter(draw -> !draw.unfused())
            .map(ReturnTree.Draw::load)
            .distinct()
            .toList();
    FaultFlow other = there.isEmpty() ? null : limits.into(there, rating);
    if (other == null || other.amps() <= most) {
      return Optional.of(new Bound(most, sources, loads));
    }
    return other.amps() < all
        ? Optional.of(new Bound(other.amps(), other.cut(), loads))
        : Optional.empty();
  }

  private boolean isBefore(int block) {
    return block >= 0 && before.get(block);
  }

  private int group(Point point) {
    return joined.find(network.index(point));
  }

  /** What lies beyond a wire, seen from the strong sources; all of it where there are none. */
  private Predicate<Point> beyond(Edge.OfWire wire) {
    int group = group(wire.a());
    if (!strongGroups.contains(group)) {
      return point -> group(point) == group;
    }
    int first = blocks.block(wire);
    int end = first < 0 ? first : blocks.end(first);
    return point -> {
      int block = blocks.block(point);
      return block >= first && block < end;
    };
  }
}
