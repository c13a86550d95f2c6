package org.tugtest.rule.written;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.rule.Ledger;

/** Sources whose minus is joined to nothing outside their device, though their plus is. */
final class LooseSources {
  private final Network network;

  LooseSources(Facts facts) {
    this.network = facts.network();
  }

  void tell(Ledger ledger) {
    for (Edge.OfElement source : network.sources()) {
      if (leavesDevice(source.a(), source) && !leavesDevice(source.b(), source)) {
        ledger.finding(
            Finding.on(source.subject())
                .kind("loose")
                .message(
                    "source "
                        + source.text()
                        + " gives nothing: its minus, "
                        + source.b().text()
                        + ", is joined to nothing outside "
                        + source.device())
                .remedy(
                    "join "
                        + source.b().text()
                        + " to the return, by a wire, a plug or \"boltedTo\""));
      }
    }
  }

  /** Whether a wire, plug or bolted joint is reached from a pin without crossing a load. */
  private boolean leavesDevice(Point pin, Edge.OfElement own) {
    Reach inside =
        Reach.from(
            network,
            List.of(pin),
            (edge, from) -> edge instanceof Edge.OfElement in && !edge.equals(own) && joins(in));
    return inside.points().stream()
        .anyMatch(
            point ->
                network.edgesAt(point).stream()
                    .anyMatch(edge -> !(edge instanceof Edge.OfElement)));
  }

  private static boolean joins(Edge.OfElement inside) {
    return !(inside.element() instanceof Element.Load)
        && !(inside.element() instanceof Element.Coil);
  }
}
