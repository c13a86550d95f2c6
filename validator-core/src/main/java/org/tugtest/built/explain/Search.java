package org.tugtest.built.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Looks for the smallest sets of suspects with which every reading comes out as it was read. A
 * reading that still comes out wrong needs one more suspect that bears on the nets of its two
 * points, so only those are tried; sets of one first, then of two, then of three. Bounded: of many
 * suspects the most promising are tried, and the search gives up after so many tries.
 */
final class Search {
  private static final int MOST_SUSPECTS = 3;
  private static final int MOST_GREEDY = 12;
  private static final int BREADTH = 60;
  private static final int TRIES = 30_000;
  private final Suspects suspects;
  private final List<Seen> seen;
  private final TreeMap<String, Found> found = new TreeMap<>();
  private final Set<String> tried = new TreeSet<>();
  private int tries;
  private boolean cut;
  private boolean proven;

  /** What was read between two points. */
  record Seen(int from, int to, boolean joined) {}

  /** A set that explains all, with the loom as it then is. */
  record Found(List<Suspect> suspects, Bench bench) {
    int weight() {
      return suspects.stream().mapToInt(suspect -> suspect.kind().weight()).sum();
    }

    String key() {
      return String.join("; ", suspects.stream().map(Suspect::what).sorted().toList());
    }
  }

  private record Ranked(Step step, int wrong) {}

  Search(Loom loom, List<Seen> seen) {
    this.suspects = new Suspects(loom);
    this.seen = seen;
  }

  /** The smallest sets, the likeliest first; none when no set of at most three explains all. */
  List<Found> smallest(Bench planned) {
    for (int size = 1; size <= MOST_SUSPECTS && found.isEmpty() && tries < TRIES; size++) {
      tried.clear();
      proven = !cut;
      look(planned, List.of(), size);
    }
    List<Found> sets = new ArrayList<>(found.values());
    sets.sort(Comparator.comparingInt(Found::weight).thenComparing(Found::key));
    return sets;
  }

  /** Whether every smaller set was looked at. */
  boolean proven() {
    return proven;
  }

  /** The best step each time; empty when that leads nowhere. */
  List<Found> greedy(Bench planned) {
    List<Suspect> taken = new ArrayList<>();
    Bench bench = planned;
    int wrong = wrong(bench);
    while (wrong > 0 && taken.size() < MOST_GREEDY) {
      List<Ranked> next = ranked(bench);
      if (next.isEmpty() || next.get(0).wrong() >= wrong) {
        return List.of();
      }
      taken.add(next.get(0).step().suspect());
      bench = next.get(0).step().bench();
      wrong = next.get(0).wrong();
    }
    return wrong > 0 ? List.of() : List.of(new Found(taken, bench));
  }

  private void look(Bench bench, List<Suspect> taken, int left) {
    List<Ranked> next = ranked(bench);
    cut |= left > 1 && (next.size() > BREADTH || tries >= TRIES);
    for (Ranked ranked : next.subList(0, Math.min(BREADTH, next.size()))) {
      List<Suspect> more = new ArrayList<>(taken);
      more.add(ranked.step().suspect());
      Found set = new Found(more, ranked.step().bench());
      if (!tried.add(set.key())) {
        continue;
      }
      if (ranked.wrong() == 0) {
        found.putIfAbsent(set.key(), set);
      } else if (left > 1 && tries < TRIES) {
        look(ranked.step().bench(), more, left - 1);
      }
    }
  }

  /** What could be wrong besides, that which leaves the fewest readings wrong first. */
  private List<Ranked> ranked(Bench bench) {
    Seen first = null;
    for (Seen reading : seen) {
      if (first == null && bench.joined(reading.from(), reading.to()) != reading.joined()) {
        first = reading;
      }
    }
    if (first == null) {
      return List.of();
    }
    List<Ranked> ranked = new ArrayList<>();
    for (Step step : suspects.of(bench, first.from(), first.to())) {
      tries++;
      ranked.add(new Ranked(step, wrong(step.bench())));
    }
    ranked.sort(
        Comparator.comparingInt(Ranked::wrong)
            .thenComparingInt(one -> one.step().suspect().kind().weight())
            .thenComparing(one -> one.step().suspect().what()));
    return ranked;
  }

  private int wrong(Bench bench) {
    int wrong = 0;
    for (Seen reading : seen) {
      if (bench.joined(reading.from(), reading.to()) != reading.joined()) {
        wrong++;
      }
    }
    return wrong;
  }
}
