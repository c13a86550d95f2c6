package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/**
 * What is joined with what, by wires, plugged contacts, splices and bolted metal.
 *
 * @param chunks the nets of two points or more, in stretches that a browser lays out one by one
 * @param alone points that are joined with nothing
 */
record NetsRoom(List<List<Row>> chunks, int alone) {
  private static final int CHUNK = 200;

  /**
   * One net.
   *
   * @param circuits names that its wires give it
   */
  record Row(String name, List<String> points, List<String> wires, List<String> circuits) {}

  static NetsRoom of(Facts facts) {
    List<List<Row>> chunks = new ArrayList<>();
    List<Row> chunk = new ArrayList<>();
    int alone = 0;
    for (Net net : facts.nets().all()) {
      if (net.points().size() < 2 && net.wires().isEmpty()) {
        alone++;
        continue;
      }
      chunk.add(row(net));
      if (chunk.size() == CHUNK) {
        chunks.add(List.copyOf(chunk));
        chunk.clear();
      }
    }
    if (!chunk.isEmpty()) {
      chunks.add(List.copyOf(chunk));
    }
    return new NetsRoom(List.copyOf(chunks), alone);
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
        net.points().stream().map(Point::text).toList(),
        net.wires().stream().map(Wire::id).toList(),
        circuits);
  }

  /** How many nets are shown. */
  int count() {
    return chunks.stream().mapToInt(List::size).sum();
  }
}
