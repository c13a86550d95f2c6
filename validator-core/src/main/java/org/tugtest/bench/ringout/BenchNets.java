package org.tugtest.bench.ringout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.network.Point;

/** The nets of a scope, numbered from 0 in the order of their first points to probe. */
final class BenchNets {
  private final List<List<Point>> probes = new ArrayList<>();
  private final List<List<Point>> hidden = new ArrayList<>();
  private final Map<Point, Integer> numbers = new HashMap<>();

  private BenchNets() {}

  static BenchNets of(Scope scope) {
    BenchNets nets = new BenchNets();
    List<List<Point>> groups = new ArrayList<>();
    for (List<Point> group : scope.meter().groups()) {
      Set<Point> all = scope.probes();
      if (group.stream().anyMatch(all::contains)) {
        groups.add(group);
      } else {
        nets.hidden.add(group);
      }
    }
    groups.sort(Comparator.comparing(group -> firstOf(group, scope.probes())));
    for (List<Point> group : groups) {
      group.forEach(point -> nets.numbers.put(point, nets.probes.size()));
      nets.probes.add(group.stream().filter(scope.probes()::contains).toList());
    }
    return nets;
  }

  private static Point firstOf(List<Point> group, Set<Point> probes) {
    return group.stream().filter(probes::contains).findFirst().orElseThrow();
  }

  /** How many nets can be probed. */
  int count() {
    return probes.size();
  }

  /** The points to probe of a net, in order. */
  List<Point> probes(int number) {
    return probes.get(number);
  }

  /** The number of the net that a point is in; the greatest number of all when it is in none. */
  int number(Point point) {
    return numbers.getOrDefault(point, Integer.MAX_VALUE);
  }

  /** The number of the net that a point is in, when it can be probed. */
  Optional<Integer> of(Point point) {
    return Optional.ofNullable(numbers.get(point));
  }

  /** The first point to probe of the net that a point is in. */
  Point first(Point point) {
    Integer number = numbers.get(point);
    return number == null ? point : probes.get(number).get(0);
  }

  /** The nets that no probe reaches, each with its points. */
  List<List<Point>> hidden() {
    return hidden;
  }
}
