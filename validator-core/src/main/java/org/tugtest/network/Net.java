package org.tugtest.network;

import java.util.List;
import org.tugtest.model.Wire;

/**
 * Points that are one.
 *
 * @param points in the order of the network: pins, cavities, splices; never empty
 * @param wires those with an end in it, in natural order
 */
public record Net(List<Point> points, List<Wire> wires) {
  public Net {
    points = List.copyOf(points);
    wires = List.copyOf(wires);
  }

  /** The point it is named after: the first. */
  public Point first() {
    return points.get(0);
  }

  /** Its name; no other net has it. */
  public String name() {
    return first().text();
  }
}
