package org.tugtest.protect;

import java.util.List;
import org.tugtest.finding.Basis;
import org.tugtest.network.Edge;

/**
 * What a bolted short draws at first.
 *
 * @param amps through the fault
 * @param fuses that carry current of it, the one nearest to the fault first
 * @param basis the weakest figure on the way
 * @param missing what is not known of an edge on the way and therefore not in it, as in {@code the
 *     length of W3}; empty when all is known
 */
public record ShortCircuit(double amps, List<Through> fuses, Basis basis, String missing) {
  public ShortCircuit {
    fuses = List.copyOf(fuses);
  }

  /** A fuse and the current through it, in amperes. */
  public record Through(Edge.OfElement fuse, double amps) {}

  /** Whether all is known. */
  public boolean known() {
    return missing.isEmpty();
  }
}
