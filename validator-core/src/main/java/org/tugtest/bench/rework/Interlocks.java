package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.text.Series;

/**
 * Loops that go: wires that join two pins of one device, or two cavities of one plug, and nothing
 * else. A module may watch such a loop.
 */
final class Interlocks {
  private Interlocks() {}

  static List<String> cautions(Facts now, Facts target, Matching matching) {
    List<String> cautions = new ArrayList<>();
    for (Net net : now.nets().all()) {
      if (net.points().size() < 2 || net.wires().isEmpty()) {
        continue;
      }
      List<Point> ends = ends(now, net);
      Set<String> owners = ends.stream().map(Point::owner).collect(Collectors.toSet());
      if (ends.size() >= 2 && owners.size() == 1 && !stays(target, matching, ends)) {
        cautions.add(
            Series.and(net.wires().stream().map(Wire::id).toList())
                + (net.wires().size() == 1 ? " joins " : " join ")
                + Series.and(ends.stream().map(Point::text).toList())
                + " and nothing else. Such a loop may be an interlock: find out what it does before"
                + " it goes");
      }
    }
    return cautions;
  }

  /** Where a net ends: pins of devices, and cavities in which nothing is plugged. */
  private static List<Point> ends(Facts now, Net net) {
    Set<Point> ends = new TreeSet<>();
    for (Point point : net.points()) {
      Optional<Point> meets = now.wiring().meets(point);
      boolean wired = !now.wiring().endsAt(point).isEmpty();
      if (point.kind() == Point.Kind.PIN && (wired || meets.isPresent())) {
        ends.add(point);
      } else if (point.kind() == Point.Kind.CAVITY && meets.isEmpty() && wired) {
        ends.add(point);
      }
    }
    return List.copyOf(ends);
  }

  private static boolean stays(Facts target, Matching matching, List<Point> ends) {
    List<Point> becomes = ends.stream().map(point -> becomes(matching, point)).toList();
    return becomes.stream().allMatch(point -> target.nets().joined(becomes.get(0), point));
  }

  private static Point becomes(Matching matching, Point point) {
    return point.kind() == Point.Kind.CAVITY
        ? Point.cavity(
            matching.connectors().getOrDefault(point.owner(), point.owner()), point.name())
        : point;
  }
}
