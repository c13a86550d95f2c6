package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/**
 * What of one side of a harness carries current of faults: all metal, and of contacts and diodes
 * those that lead to something new. So two contacts never feed one place at once, and a change-over
 * joins nothing that it cannot join; what is left out is told, to be tried in another pass.
 */
final class FaultSide {
  private final List<Integer> kept = new ArrayList<>();
  private final List<Integer> leftOut = new ArrayList<>();

  /**
   * One side.
   *
   * @param reach what belongs to it
   * @param starts the plus, or the minus, of all sources
   * @param first contacts and diodes to be taken before others
   */
  FaultSide(Network network, Reach reach, Collection<Point> starts, Set<Integer> first) {
    Joined metal = new Joined(network.points().size());
    List<Integer> choices = new ArrayList<>();
    for (int number : inOrder(network, reach, starts)) {
      Edge edge = network.edges().get(number);
      if (!(edge instanceof Edge.OfElement inside)
          || inside.element() instanceof Element.Fuse
          || inside.element() instanceof Element.Link) {
        kept.add(number);
        metal.join(network.indexOfA(number), network.indexOfB(number));
      } else if (inside.element() instanceof Element.Contact
          || inside.element() instanceof Element.Diode) {
        choices.add(number);
      }
    }
    choices.sort((one, other) -> Boolean.compare(first.contains(other), first.contains(one)));
    for (int number : choices) {
      int a = network.indexOfA(number);
      int b = network.indexOfB(number);
      boolean leadsOn = metal.find(a) != metal.find(b);
      (leadsOn ? kept : leftOut).add(number);
      metal.join(a, b);
    }
  }

  /** The edges of a reach, those nearer to the starts first. */
  private static List<Integer> inOrder(Network network, Reach reach, Collection<Point> starts) {
    List<Integer> order = new ArrayList<>();
    BitSet done = new BitSet();
    BitSet seen = new BitSet();
    int[] open = new int[network.points().size()];
    int end = 0;
    for (Point start : starts) {
      int at = network.index(start);
      if (!seen.get(at)) {
        seen.set(at);
        open[end++] = at;
      }
    }
    for (int next = 0; next < end; next++) {
      int at = open[next];
      for (int i = 0; i < network.degree(at); i++) {
        int number = network.edgeAt(at, i);
        if (reach.takes(number) && !done.get(number)) {
          done.set(number);
          order.add(number);
          int there = network.across(number, at);
          if (!seen.get(there)) {
            seen.set(there);
            open[end++] = there;
          }
        }
      }
    }
    return order;
  }

  /** What carries current, by number. */
  List<Integer> kept() {
    return kept;
  }

  /** Contacts and diodes that would lead to what is reached otherwise, by number. */
  List<Integer> leftOut() {
    return leftOut;
  }
}
