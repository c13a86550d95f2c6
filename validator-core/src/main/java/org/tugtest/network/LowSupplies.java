package org.tugtest.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.model.Element;

/**
 * What is fed by sources of far less than the nominal volts of the harness alone, such as the
 * sensors on the 5 V of a control unit: it is made for those volts.
 */
public final class LowSupplies {
  /** So much of nominal is still a battery that is rather flat. */
  private static final double LOW = 0.75;

  private final double nominalV;
  private final Map<Point, Double> volts = new HashMap<>();

  private LowSupplies(Network network, double nominalV) {
    this.nominalV = nominalV;
    List<Edge.OfElement> low = new ArrayList<>();
    List<Point> others = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      if (volts(source) < LOW * nominalV && !standsOnAnother(network, source)) {
        low.add(source);
      } else {
        others.add(source.a());
      }
    }
    if (low.isEmpty()) {
      return;
    }
    Reach fed = Reach.from(network, others, Sides::feeds);
    for (Edge.OfElement source : low) {
      for (Point point : Reach.from(network, List.of(source.a()), Sides::feeds).points()) {
        if (!fed.reaches(point)) {
          volts.merge(point, volts(source), Math::max);
        }
      }
    }
  }

  /** The low supplies of a network. */
  public static LowSupplies of(Network network, double nominalV) {
    return new LowSupplies(network, nominalV);
  }

  private static double volts(Edge.OfElement source) {
    Double volts = ((Element.Source) source.element()).volts();
    return volts == null || !(volts > 0) ? Double.POSITIVE_INFINITY : volts;
  }

  /** Whether a source stands on another, whose plus metal joins to its minus. */
  private static boolean standsOnAnother(Network network, Edge.OfElement source) {
    Reach below = Reach.from(network, List.of(source.b()), (edge, from) -> isMetal(edge));
    return network.sources().stream()
        .anyMatch(other -> !other.equals(source) && below.reaches(other.a()));
  }

  private static boolean isMetal(Edge edge) {
    return !(edge instanceof Edge.OfElement inside)
        || inside.element() instanceof Element.Link
        || inside.element() instanceof Element.Fuse;
  }

  /** The volts that a load or coil is made for: those of the low sources that feed it, else all. */
  public double nominalV(Edge.OfElement load) {
    Double one = volts.get(load.a());
    Double other = volts.get(load.b());
    if (one == null && other == null) {
      return nominalV;
    }
    return Math.max(one == null ? 0 : one, other == null ? 0 : other);
  }
}
