package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/** The way by which current comes to a load when it has to pass other loads: a sneak path. */
final class Sneak {
  private static final double LEAST_AMPS = 1e-9;

  private Sneak() {}

  /** Against the current, from the load to a source, whatever lies between; from the source on. */
  static Optional<String> way(Facts facts, OperatingPoint state, Edge.OfElement user) {
    Point at = state.amps(user) >= 0 ? user.a() : user.b();
    List<Edge> edges = new ArrayList<>();
    Set<Point> passed = new HashSet<>();
    while (passed.add(at)) {
      Edge best = null;
      double most = LEAST_AMPS;
      for (Edge edge : facts.network().edgesAt(at)) {
        double in = edge.b().equals(at) ? state.amps(edge) : -state.amps(edge);
        if (!edge.equals(user) && in > most && !passed.contains(edge.across(at))) {
          best = edge;
          most = in;
        }
      }
      if (best == null) {
        return Optional.empty();
      }
      if (best instanceof Edge.OfElement inside && inside.element() instanceof Element.Source) {
        Collections.reverse(edges);
        return Optional.of(new Path(at, edges).text());
      }
      edges.add(best);
      at = best.across(at);
    }
    return Optional.empty();
  }
}
