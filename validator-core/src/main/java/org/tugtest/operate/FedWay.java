package org.tugtest.operate;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/** The way by which current comes from a source to a point, through whatever it comes. */
public final class FedWay {
  private static final double SOME_AMPS = 1e-6;

  private FedWay() {}

  /** The way to the end of a load at which current comes in; empty when none flows. */
  public static Optional<Path> to(Network network, OperatingPoint state, Edge.OfElement load) {
    return to(network, state, state.across(load) >= 0 ? load.a() : load.b(), load);
  }

  /**
   * The shortest way along the current from the plus of a source that gives.
   *
   * @param without an edge that it does not take; null for none
   */
  public static Optional<Path> to(
      Network network, OperatingPoint state, Point point, @Nullable Edge without) {
    List<Point> plus =
        network.sources().stream().filter(state::gives).map(Edge.OfElement::a).toList();
    return Reach.from(
            network, plus, (edge, from) -> !edge.equals(without) && isAlong(state, edge, from))
        .path(point);
  }

  private static boolean isAlong(OperatingPoint state, Edge edge, Point from) {
    if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source) {
      return false;
    }
    double amps = state.amps(edge);
    return (from.equals(edge.a()) ? amps : -amps) > SOME_AMPS;
  }
}
