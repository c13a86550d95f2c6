package org.tugtest.network;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.model.Element;

/**
 * Feed side and return side. The feed side is what can be reached from the plus of any source
 * through wires, plugged contacts, splices, bolted metal, fuses that are fitted, links, contacts
 * and diodes from anode to cathode, never through a load or a coil; the return side is the same
 * from minus, through diodes against their direction. Contacts count as closed, as far as they can
 * be closed together.
 *
 * @param feed the feed side
 * @param unfused the part of the feed side that is reached without passing a fuse; what a {@code
 *     selfLimiting} source with {@code maxA} feeds is not in it on that source's account
 * @param back the return side
 */
public record Sides(Reach feed, Reach unfused, Reach back) {
  /** The sides of a network. */
  public static Sides of(Network network, ClosedTogether together) {
    List<Point> plus = new ArrayList<>();
    List<Point> unlimited = new ArrayList<>();
    List<Point> minus = new ArrayList<>();
    for (Edge.OfElement edge : network.sources()) {
      plus.add(edge.a());
      minus.add(edge.b());
      if (edge.element() instanceof Element.Source source
          && !(source.selfLimiting() && source.maxA() != null)) {
        unlimited.add(edge.a());
      }
    }
    return new Sides(
        Reach.from(network, together, plus, Sides::feeds),
        Reach.from(
            network, together, unlimited, (edge, from) -> !isFuse(edge) && feeds(edge, from)),
        Reach.from(network, together, minus, (edge, from) -> passes(edge, from, edge.b())));
  }

  /** Whether the feed side goes on through an edge, coming from {@code from}. */
  public static boolean feeds(Edge edge, Point from) {
    return passes(edge, from, edge.a());
  }

  /** Whether a side goes on through an edge; through a diode only from one of its ends. */
  private static boolean passes(Edge edge, Point from, Point intoDiode) {
    if (!(edge instanceof Edge.OfElement inside)) {
      return true;
    }
    Element element = inside.element();
    return element instanceof Element.Contact
        || element instanceof Element.Link
        || (element instanceof Element.Fuse && inside.fitted())
        || (element instanceof Element.Diode && from.equals(intoDiode));
  }

  /** Whether an edge is a fuse, a trip or an empty way for one. */
  public static boolean isFuse(Edge edge) {
    return edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Fuse;
  }
}
