package org.tugtest.network;

import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.rule.Judged;

/** What is built of one harness; for tests. */
record Built(Facts facts) {
  static Built json(String json) {
    return new Built(Judged.facts(Map.of(Judged.ROOT, json)));
  }

  /** A harness of these sections, each {@code "name": value}. */
  static Built of(String... sections) {
    return json("{\"format\": 1, " + String.join(", ", sections) + "}");
  }

  /** The same in a sketch. */
  static Built sketch(String... sections) {
    return json("{\"format\": 1, \"sketch\": true, " + String.join(", ", sections) + "}");
  }

  Wiring wiring() {
    return facts.wiring();
  }

  Network network() {
    return facts.network();
  }

  Nets nets() {
    return facts.nets();
  }

  Sides sides() {
    return facts.sides();
  }

  Resolution resolved(String ref) {
    return wiring().resolve(Ref.parse(ref));
  }

  Point at(String ref) {
    return wiring().pointOf(Ref.parse(ref)).orElseThrow(() -> new AssertionError(ref));
  }

  /** What meets a contact, as the files write it; empty when nothing does. */
  String meets(String ref) {
    return wiring().meets(at(ref)).map(Point::text).orElse("");
  }

  /** The points of each net of more than one point. */
  List<String> netsOfSeveral() {
    return nets().all().stream()
        .filter(net -> net.points().size() > 1)
        .map(net -> String.join(" ", net.points().stream().map(Point::text).toList()))
        .toList();
  }

  static List<String> texts(List<Point> points) {
    return points.stream().map(Point::text).toList();
  }
}
