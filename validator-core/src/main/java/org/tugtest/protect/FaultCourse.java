package org.tugtest.protect;

import java.util.List;
import org.tugtest.finding.Basis;
import org.tugtest.network.Edge;

/**
 * How a fault goes on: its fuses open one after another until it is dead or nothing opens any more.
 *
 * @param first what it draws at first
 * @param openings in the order of time
 * @param lastingA what flows in the end, in amperes; 0 when it is dead
 * @param lasting what each fuse that stays carries in the end, the one nearest to the fault first
 * @param from the sources that feed it in the end
 */
public record FaultCourse(
    ShortCircuit first,
    List<Opening> openings,
    double lastingA,
    List<ShortCircuit.Through> lasting,
    List<Edge.OfElement> from) {
  public FaultCourse {
    openings = List.copyOf(openings);
    lasting = List.copyOf(lasting);
    from = List.copyOf(from);
  }

  /**
   * A fuse opens.
   *
   * @param amps what it carries until then
   * @param atS seconds since the fault
   * @param extrapolated whether its time lies past the last point of its curve
   * @param basis of its time
   */
  public record Opening(
      Edge.OfElement fuse, double amps, double atS, boolean extrapolated, Basis basis) {}

  /** Whether nothing flows in the end. */
  public boolean dead() {
    return lastingA == 0;
  }

  /** Seconds until the last fuse that opens has opened; 0 when none does. */
  public double seconds() {
    return openings.isEmpty() ? 0 : openings.get(openings.size() - 1).atS();
  }

  /** Whether a time in it is extrapolated. */
  public boolean extrapolated() {
    return openings.stream().anyMatch(Opening::extrapolated);
  }

  /** The weakest figure of its currents and times. */
  public Basis basis() {
    Basis basis = first.basis();
    for (Opening opening : openings) {
      basis = basis.weaker(opening.basis());
    }
    return basis;
  }
}
