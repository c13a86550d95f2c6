package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.report.html.text.Few;
import org.tugtest.text.NaturalOrder;

/**
 * What is joined with what, by wires, plugged contacts, splices and bolted metal.
 *
 * @param nets those of two points or more
 * @param alone points that are joined with nothing
 */
record NetsRoom(Few<Row> nets, int alone) {
  private static final int MOST = 600;
  private static final int MOST_IN_NET = 40;
  private static final int STRETCH = 200;

  /**
   * One net.
   *
   * @param circuits names that its wires give it
   */
  record Row(String name, Few<String> points, Few<String> wires, Few<String> circuits) {}

  static NetsRoom of(Facts facts) {
    List<Net> nets = new ArrayList<>();
    int alone = 0;
    for (Net net : facts.nets().all()) {
      if (net.points().size() < 2 && net.wires().isEmpty()) {
        alone++;
      } else {
        nets.add(net);
      }
    }
    Few<Net> few = Few.of(nets, MOST);
    return new NetsRoom(
        new Few<>(few.shown().stream().map(NetsRoom::row).toList(), few.more()), alone);
  }

  private static Row row(Net net) {
    List<String> circuits =
        net.wires().stream()
            .map(Wire::circuit)
            .filter(circuit -> circuit != null && !circuit.isBlank())
            .distinct()
            .sorted(NaturalOrder.NATURAL)
            .toList();
    return new Row(
        net.name(),
        Few.of(net.points().stream().map(Point::text).toList(), MOST_IN_NET),
        Few.of(net.wires().stream().map(Wire::id).toList(), MOST_IN_NET),
        Few.of(circuits, MOST_IN_NET));
  }

  /** The rows, in stretches that a browser lays out one by one. */
  List<List<Row>> stretches() {
    return nets.stretches(STRETCH);
  }
}
