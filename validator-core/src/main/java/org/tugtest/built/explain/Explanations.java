package org.tugtest.built.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.network.Net;
import org.tugtest.network.Point;

/**
 * From readings alone: what could be wrong with a loom, so that all of them come out as they were
 * read. Readings that can have nothing to do with each other are explained apart.
 */
public final class Explanations {
  private static final int MOST_SETS = 3;
  private static final int MOST_POINTS = 400;
  private final Facts built;

  private Explanations(Facts built) {
    this.built = built;
  }

  /** A reading, and whether it shows a joint. */
  public record Shown(TakenReading reading, boolean joined) {}

  /**
   * Explains the readings that contradict a harness as it is believed to be.
   *
   * @param built the plan, with what is known to be built otherwise
   * @param readings all of them; those that agree rule out what would contradict them
   */
  public static List<Explanation> of(Facts built, List<Shown> readings) {
    return new Explanations(built).explain(readings);
  }

  private List<Explanation> explain(List<Shown> readings) {
    List<Shown> wrong =
        readings.stream()
            .filter(
                shown ->
                    built.nets().joined(shown.reading().from(), shown.reading().to())
                        != shown.joined())
            .toList();
    List<Explanation> explanations = new ArrayList<>();
    for (List<Shown> cluster : clusters(wrong)) {
      explanations.add(explain(cluster, readings));
    }
    return explanations;
  }

  /** Readings whose nets meet in a net or in a connector. */
  private List<List<Shown>> clusters(List<Shown> wrong) {
    Map<String, Integer> clusterOf = new HashMap<>();
    Map<Integer, List<Shown>> clusters = new TreeMap<>();
    for (int i = 0; i < wrong.size(); i++) {
      List<Shown> members = new ArrayList<>(List.of(wrong.get(i)));
      Set<String> keys = keys(wrong.get(i));
      Set<Integer> others = new HashSet<>();
      keys.forEach(key -> Optional.ofNullable(clusterOf.get(key)).ifPresent(others::add));
      for (int other : others.stream().sorted().toList()) {
        members.addAll(clusters.getOrDefault(other, List.of()));
        clusters.remove(other);
      }
      for (Shown member : members) {
        for (String key : keys(member)) {
          clusterOf.put(key, i);
        }
      }
      members.sort(Comparator.comparing(shown -> shown.reading().at()));
      clusters.put(i, members);
    }
    List<List<Shown>> all = new ArrayList<>(clusters.values());
    all.sort(Comparator.comparing(members -> members.get(0).reading().at()));
    return all;
  }

  private Set<String> keys(Shown shown) {
    Set<String> keys = new HashSet<>();
    for (Point end : List.of(shown.reading().from(), shown.reading().to())) {
      for (Point point : built.nets().of(end).map(Net::points).orElse(List.of(end))) {
        keys.add(point.kind() == Point.Kind.CAVITY ? "plug " + point.owner() : point.text());
      }
    }
    return keys;
  }

  private Explanation explain(List<Shown> cluster, List<Shown> all) {
    Set<Point> starts = new HashSet<>();
    for (Shown shown : cluster) {
      starts.add(shown.reading().from());
      starts.add(shown.reading().to());
    }
    Loom loom = Loom.around(built, starts);
    Map<String, Search.Seen> seen = new LinkedHashMap<>();
    for (List<Shown> some : List.of(cluster, all)) {
      for (Shown shown : some) {
        int from = loom.number(shown.reading().from());
        int to = loom.number(shown.reading().to());
        if (from >= 0 && to >= 0) {
          seen.putIfAbsent(
              Math.min(from, to) + " " + Math.max(from, to),
              new Search.Seen(from, to, shown.joined()));
        }
      }
    }
    Search search = new Search(loom, List.copyOf(seen.values()));
    Bench planned = new Bench(loom);
    List<Search.Found> sets = search.smallest(planned);
    boolean smallest = !sets.isEmpty() && search.proven();
    if (sets.isEmpty()) {
      sets = search.greedy(planned);
    }
    List<Search.Found> best = sets.subList(0, Math.min(MOST_SETS, sets.size()));
    return new Explanation(
        cluster.stream().map(Shown::reading).toList(),
        best.stream().map(Search.Found::suspects).toList(),
        best.size() < 2
            ? Optional.empty()
            : telling(loom, seen, best.get(0).bench(), best.get(1).bench()),
        smallest);
  }

  /**
   * The pair of points, not read yet, that the two disagree on: with a probe where one was held
   * already, since the rest may not lie on the bench; then one that shows a joint; then by name.
   */
  private Optional<Telling> telling(
      Loom loom, Map<String, Search.Seen> seen, Bench one, Bench other) {
    List<Integer> probes = new ArrayList<>();
    for (int i = 0; i < loom.points().size() && probes.size() < MOST_POINTS; i++) {
      Point point = loom.points().get(i);
      boolean reached = one.holds(i) || other.holds(i);
      if (point.kind() != Point.Kind.SPLICE && reached) {
        probes.add(i);
      }
    }
    Set<String> held = new HashSet<>();
    for (Search.Seen reading : seen.values()) {
      held.add(loom.points().get(reading.from()).owner());
      held.add(loom.points().get(reading.to()).owner());
    }
    Telling best = null;
    int least = Integer.MAX_VALUE;
    for (int a : probes) {
      for (int b : probes) {
        boolean joined = a < b && one.joined(a, b);
        if (a < b && joined != other.joined(a, b) && !seen.containsKey(a + " " + b)) {
          Telling telling = new Telling(loom.points().get(a), loom.points().get(b), joined);
          int cost =
              (held.contains(telling.from().owner()) ? 0 : 2)
                  + (held.contains(telling.to().owner()) ? 0 : 2)
                  + (joined ? 0 : 1);
          if (cost < least) {
            least = cost;
            best = telling;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }
}
