package org.tugtest.protect;

import java.util.List;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;

/**
 * A place at which the first fuses behind a source stand.
 *
 * @param way from the plus of the source to that place; the shortest as far as lengths are known
 * @param fuses those that begin there, in the order of the network
 * @param mm length of the wires on the way whose lengths are known
 * @param unknown wires on the way whose lengths are not known
 */
public record FirstFuse(
    Edge.OfElement source,
    Path way,
    List<Edge.OfElement> fuses,
    double mm,
    List<Edge.OfWire> unknown) {
  public FirstFuse {
    fuses = List.copyOf(fuses);
    unknown = List.copyOf(unknown);
  }

  /** The wires on the way, from the source on. */
  public List<Edge.OfWire> wires() {
    return way.edges().stream()
        .filter(Edge.OfWire.class::isInstance)
        .map(Edge.OfWire.class::cast)
        .toList();
  }
}
