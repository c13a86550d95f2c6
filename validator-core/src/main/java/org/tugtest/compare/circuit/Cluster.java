package org.tugtest.compare.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.text.NaturalOrder;

/**
 * Nets before and after that hang together by the pins they share, and which became which: each net
 * has at most one partner, the one with which it shares most pins. A net before without a partner,
 * of which two pins or more are together in a net after, was merged into that net; a net after
 * without a partner, of which two pins or more were together before, was split off that net.
 */
final class Cluster {
  private final Side before;
  private final Side after;
  private final TreeSet<Integer> befores = new TreeSet<>();
  private final TreeSet<Integer> afters = new TreeSet<>();
  private final Map<Integer, Integer> heir = new TreeMap<>();
  private final Map<Integer, Integer> parent = new TreeMap<>();
  private final Map<Integer, List<Integer>> mergedInto = new TreeMap<>();
  private final Map<Integer, List<Integer>> splitOff = new TreeMap<>();

  private record Shared(int before, int after, int count, String least) {}

  private Cluster(Side before, Side after) {
    this.before = before;
    this.after = after;
  }

  /** All clusters but those of one net that stayed what it was, by their first nets. */
  static List<Cluster> of(Side before, Side after) {
    List<Cluster> clusters = new ArrayList<>();
    Set<Integer> seenBefore = new HashSet<>();
    Set<Integer> seenAfter = new HashSet<>();
    for (int net = 0; net < before.count(); net++) {
      if (before.joins(net) && !seenBefore.contains(net) && !isWhole(before, net, after)) {
        Cluster cluster = new Cluster(before, after);
        cluster.befores.add(net);
        clusters.add(cluster.grown(seenBefore, seenAfter));
      }
    }
    for (int net = 0; net < after.count(); net++) {
      if (after.joins(net) && !seenAfter.contains(net) && !isWhole(after, net, before)) {
        Cluster cluster = new Cluster(before, after);
        cluster.afters.add(net);
        clusters.add(cluster.grown(seenBefore, seenAfter));
      }
    }
    return clusters;
  }

  /** Whether a net has the same pins on the other side. */
  private static boolean isWhole(Side side, int net, Side other) {
    int there = other.netOf(side.pins(net).get(0));
    return there >= 0
        && other.pins(there).size() == side.pins(net).size()
        && side.pins(net).stream().allMatch(pin -> other.netOf(pin) == there);
  }

  private Cluster grown(Set<Integer> seenBefore, Set<Integer> seenAfter) {
    List<Integer> openBefore = new ArrayList<>(befores);
    List<Integer> openAfter = new ArrayList<>(afters);
    for (int i = 0, j = 0; i < openBefore.size() || j < openAfter.size(); ) {
      if (i < openBefore.size()) {
        grow(before, openBefore.get(i++), after, afters, openAfter);
      } else {
        grow(after, openAfter.get(j++), before, befores, openBefore);
      }
    }
    seenBefore.addAll(befores);
    seenAfter.addAll(afters);
    pair();
    return this;
  }

  private static void grow(Side side, int net, Side other, Set<Integer> found, List<Integer> open) {
    for (String pin : side.pins(net)) {
      int there = other.netOf(pin);
      if (other.joins(there) && found.add(there)) {
        open.add(there);
      }
    }
  }

  private void pair() {
    List<Shared> all = new ArrayList<>();
    for (int one : befores) {
      Map<Integer, Integer> counts = new TreeMap<>();
      Map<Integer, String> least = new HashMap<>();
      for (String pin : before.pins(one)) {
        int other = after.netOf(pin);
        if (after.joins(other)) {
          counts.merge(other, 1, Integer::sum);
          least.merge(other, pin, (a, b) -> NaturalOrder.NATURAL.compare(a, b) <= 0 ? a : b);
        }
      }
      counts.forEach(
          (other, count) -> all.add(new Shared(one, other, count, least.getOrDefault(other, ""))));
    }
    all.sort(
        Comparator.comparingInt(Shared::count)
            .reversed()
            .thenComparing(Shared::least, NaturalOrder.NATURAL));
    for (Shared shared : all) {
      if (!heir.containsKey(shared.before()) && !parent.containsKey(shared.after())) {
        heir.put(shared.before(), shared.after());
        parent.put(shared.after(), shared.before());
      }
    }
    Set<Integer> placed = new HashSet<>();
    Set<Integer> descended = new HashSet<>();
    for (Shared shared : all) {
      if (shared.count() > 1 && !heir.containsKey(shared.before()) && placed.add(shared.before())) {
        mergedInto.computeIfAbsent(shared.after(), none -> new ArrayList<>()).add(shared.before());
      }
      if (shared.count() > 1
          && !parent.containsKey(shared.after())
          && descended.add(shared.after())) {
        splitOff.computeIfAbsent(shared.before(), none -> new ArrayList<>()).add(shared.after());
      }
    }
    mergedInto.forEach((into, nets) -> nets.forEach(net -> heir.put(net, into)));
    splitOff.forEach((from, nets) -> nets.forEach(net -> parent.put(net, from)));
  }

  Set<Integer> befores() {
    return befores;
  }

  Set<Integer> afters() {
    return afters;
  }

  /** The net after that a net before became or was merged into; -1 for none. */
  int heir(int net) {
    return heir.getOrDefault(net, -1);
  }

  /** The net before that a net after was or was split off; -1 for none. */
  int parent(int net) {
    return parent.getOrDefault(net, -1);
  }

  /** The nets before that were merged into a net after besides its own. */
  List<Integer> mergedInto(int net) {
    return mergedInto.getOrDefault(net, List.of());
  }

  /** The nets after that were split off a net before besides its own. */
  List<Integer> splitOff(int net) {
    return splitOff.getOrDefault(net, List.of());
  }
}
