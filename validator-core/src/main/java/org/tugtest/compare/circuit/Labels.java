package org.tugtest.compare.circuit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;

/**
 * The points that have an identity of their own: pins of devices, and cavities of connectors that
 * mate with nothing, where the harness meets what it does not describe. By the name that both
 * revisions know them by.
 */
final class Labels {
  private Labels() {}

  /** The name of each labelled point of a revision. */
  static Map<Point, String> of(Facts facts, Renames names) {
    Map<Point, String> labels = new LinkedHashMap<>();
    for (Point point : facts.network().points()) {
      if (isLabelled(facts, point)) {
        labels.put(point, names.owner(point.owner()) + ":" + point.name());
      }
    }
    return labels;
  }

  private static boolean isLabelled(Facts facts, Point point) {
    return switch (point.kind()) {
      case PIN -> true;
      case CAVITY -> facts.wiring().mating().mateOf(point.owner()).isEmpty();
      case SPLICE -> false;
    };
  }
}
