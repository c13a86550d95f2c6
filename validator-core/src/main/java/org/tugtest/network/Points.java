package org.tugtest.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All points of a harness, each once and numbered, in the order of devices' pins, connectors'
 * cavities, splices, each by its owner's id. A point that comes from here knows its number, so that
 * nothing has to look it up.
 */
final class Points {
  private final List<Point> points = new ArrayList<>();
  private final List<Point> shown = Collections.unmodifiableList(points);
  private final Map<Point, Integer> numbers = new HashMap<>();
  private final Map<String, List<Point>> ofConnector = new HashMap<>();

  /** The points of these devices, connectors and splices, and what their cavities meet. */
  Points(Iterable<String> devices, Wiring wiring, Contacts contacts) {
    for (String device : devices) {
      wiring.pinsOf(device).forEach(pin -> add(Point.pin(device, pin)));
    }
    Map<String, Integer> firsts = new LinkedHashMap<>();
    for (String connector : wiring.connectors()) {
      firsts.put(connector, points.size());
      wiring.cavitiesOf(connector).forEach(cavity -> add(Point.cavity(connector, cavity)));
    }
    List<Point> unnamed = new ArrayList<>();
    for (Point point : points) {
      contacts.meets(point).filter(other -> number(other) < 0).ifPresent(unnamed::add);
    }
    unnamed.forEach(this::add);
    wiring.splices().forEach(splice -> add(Point.splice(splice)));
    firsts.forEach(
        (connector, first) -> {
          int count = wiring.cavitiesOf(connector).size();
          ofConnector.put(connector, shown.subList(first, first + count));
        });
  }

  private void add(Point point) {
    Point own = point.at(points.size());
    if (numbers.putIfAbsent(own, own.number()) == null) {
      points.add(own);
    }
  }

  /** Every point, in order. */
  List<Point> all() {
    return shown;
  }

  /** The cavities of a connector, in order. */
  List<Point> ofConnector(String connector) {
    return ofConnector.getOrDefault(connector, List.of());
  }

  /** Where a point stands; -1 when the harness has no such point. */
  int number(Point point) {
    int at = point.number();
    return at >= 0 && at < points.size() && points.get(at).equals(point)
        ? at
        : numbers.getOrDefault(point, -1);
  }

  /** The point of these that is equal to a point; that itself when there is none. */
  Point own(Point point) {
    int at = number(point);
    return at < 0 ? point : points.get(at);
  }
}
