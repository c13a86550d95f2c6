package org.tugtest.bench.ringout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.network.Point;

/**
 * A pair of points that a meter must show as joined.
 *
 * @param number in the list, from 1
 * @param net the first point of the net they are in
 * @param wires what the pair proves, in order from one to the other
 * @param ohms what the meter should show at 20 °C, leads taken off; null when a figure is missing
 * @param limitOhms the greatest reading that is still good; null with {@code ohms}
 * @param basis of the weakest figure
 * @param remark what is missing, or that the figure is an upper bound; empty when nothing is
 */
public record Probe(
    int number,
    Point from,
    Point to,
    Point net,
    List<String> wires,
    @Nullable Double ohms,
    @Nullable Double limitOhms,
    Basis basis,
    String remark) {
  public Probe {
    wires = List.copyOf(wires);
  }

  /** The same pair under another number. */
  public Probe numbered(int other) {
    return new Probe(other, from, to, net, wires, ohms, limitOhms, basis, remark);
  }
}
