package org.tugtest.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Finds how relays rest. From a start all coils change at once, each with its own difference
 * between pulling and letting go, until nothing changes. Where that goes round in a ring, one coil
 * at a time changes, the lowest number first, as one of two like relays is always the faster.
 */
final class RelayLoop {
  private static final int MOST_TRIED = 12;
  private static final int MOST_KEPT = 64;
  private final Circuit circuit;
  private final PieceLoop inner;
  private final int[] coils;
  private final Map<String, PieceLoop.Outcome> known = new LinkedHashMap<>();
  private @Nullable Pieces last;
  private int rounds;

  /**
   * How relays rest.
   *
   * @param pulled numbers of the coils that are pulled
   */
  record Outcome(List<Integer> pulled, PieceLoop.Outcome at, List<Trouble> troubles, int rounds) {}

  /** Where one start leads. */
  private record End(List<Integer> pulled, PieceLoop.Outcome at, List<List<Integer>> cycle) {
    boolean rests() {
      return cycle.isEmpty();
    }
  }

  RelayLoop(Circuit circuit, PieceLoop inner) {
    this.circuit = circuit;
    this.inner = inner;
    int[] all = new int[circuit.branches().size()];
    int count = 0;
    for (int i = 0; i < all.length; i++) {
      if (circuit.branches().get(i) instanceof Branch.Coil) {
        all[count++] = i;
      }
    }
    coils = Arrays.copyOf(all, count);
  }

  /**
   * How the relays rest. Whether they could rest in another way is looked for only where nothing
   * says what was before.
   *
   * @param before the coils that were pulled in the state before; null: not known, all released
   */
  Outcome settle(@Nullable List<Integer> before) {
    if (before != null) {
      Optional<Outcome> first = first(before);
      if (first.isPresent()) {
        return first.get();
      }
    }
    List<End> ends = ends(before);
    List<Trouble> troubles = new ArrayList<>();
    End first = ends.get(0);
    End taken = taken(ends).orElse(null);
    if (!first.rests()) {
      troubles.addAll(chatters(first, taken != null));
    }
    End answer = taken == null ? first : taken;
    if (before == null) {
      holdsItself(answer, ends).ifPresent(troubles::add);
    }
    return new Outcome(answer.pulled(), answer.at(), troubles, rounds);
  }

  /**
   * The same answer as {@link #settle}, without what may be wrong with it: the other starts are
   * tried only when the first leads to no rest.
   */
  Outcome rest(List<Integer> before) {
    Optional<Outcome> first = first(before);
    if (first.isPresent()) {
      return first.get();
    }
    List<End> ends = ends(before);
    End answer = taken(ends).orElse(ends.get(0));
    return new Outcome(answer.pulled(), answer.at(), List.of(), rounds);
  }

  /**
   * Where the first start alone leads; empty when to no rest.
   *
   * @param before the coils that were pulled in the state before; null: all released
   */
  Optional<Outcome> first(@Nullable List<Integer> before) {
    End end = follow(flags(before == null ? List.of() : before));
    return end.rests()
        ? Optional.of(new Outcome(end.pulled(), end.at(), List.of(), rounds))
        : Optional.empty();
  }

  /**
   * The rest near one of nearly the same circuit: relays that stay as they were, since what changes
   * slowly changes none that need not. Empty when they do not rest so.
   *
   * @param before the coils that were pulled in it
   * @param pieces of its sources and diodes
   * @param volts of its branches
   */
  Optional<Outcome> near(List<Integer> before, Pieces pieces, IntToDoubleFunction volts) {
    boolean[] pulled = flags(before);
    return inner
        .settleNear(pulled, pieces, volts)
        .filter(at -> Arrays.equals(pulled, next(pulled, at, false)))
        .map(at -> new Outcome(before, at, List.of(), at.rounds()));
  }

  /** Where every start leads: what was before, all released, all pulled. */
  private List<End> ends(@Nullable List<Integer> before) {
    boolean[] released = new boolean[circuit.branches().size()];
    boolean[] all = released.clone();
    for (int coil : coils) {
      all[coil] = true;
    }
    List<End> ends = new ArrayList<>();
    ends.add(follow(before == null ? released : flags(before)));
    if (coils.length > 0) {
      if (before != null) {
        ends.add(follow(released));
      }
      ends.add(follow(all));
    }
    return ends;
  }

  /** The end that is taken: the first that rests, else any other rest there is. */
  private Optional<End> taken(List<End> ends) {
    Optional<End> resting = ends.stream().filter(End::rests).findFirst();
    return resting.isPresent() ? resting : search(ends);
  }

  /** Coils that chatter by themselves, each alone, and then those that do so together. */
  private List<Trouble> chatters(End end, boolean restsElsewhere) {
    List<Trouble> troubles = new ArrayList<>();
    Set<Integer> alone = new LinkedHashSet<>();
    for (int coil : new Trouble.Chatter(end.cycle(), false).branches()) {
      boolean[] released = flags(end.cycle().get(0));
      released[coil] = false;
      boolean[] pulled = released.clone();
      pulled[coil] = true;
      if (next(released, solve(released), false)[coil]
          && !next(pulled, solve(pulled), false)[coil]) {
        alone.add(coil);
        troubles.add(
            new Trouble.Chatter(List.of(numbers(released), numbers(pulled)), restsElsewhere));
      }
    }
    List<List<Integer>> others = new ArrayList<>();
    for (List<Integer> step : end.cycle()) {
      List<Integer> left = step.stream().filter(coil -> !alone.contains(coil)).toList();
      if (others.isEmpty() || !others.get(others.size() - 1).equals(left)) {
        others.add(left);
      }
    }
    Trouble together = new Trouble.Chatter(others, restsElsewhere);
    if (!together.branches().isEmpty()) {
      troubles.add(together);
    }
    return troubles;
  }

  private Optional<Trouble> holdsItself(End taken, List<End> ends) {
    Set<List<Integer>> sets = new LinkedHashSet<>();
    sets.add(taken.pulled());
    ends.stream().filter(End::rests).forEach(end -> sets.add(end.pulled()));
    if (!taken.rests() || sets.size() < 2) {
      return Optional.empty();
    }
    List<Integer> differ = new ArrayList<>();
    for (int coil : coils) {
      long in = sets.stream().filter(set -> set.contains(coil)).count();
      if (in > 0 && in < sets.size()) {
        differ.add(coil);
      }
    }
    return Optional.of(new Trouble.HoldsItself(differ, List.copyOf(sets)));
  }

  private End follow(boolean[] start) {
    End together = follow(start, false);
    return together.rests() ? together : orElse(follow(start, true), together);
  }

  private static End orElse(End end, End other) {
    return end.rests() ? end : other;
  }

  /** Goes on from a start until the relays rest or a set of pulled coils comes again. */
  private End follow(boolean[] start, boolean oneByOne) {
    boolean[] pulled = start.clone();
    List<List<Integer>> steps = new ArrayList<>();
    Map<List<Integer>, Integer> stepOf = new LinkedHashMap<>();
    while (true) {
      PieceLoop.Outcome at = solve(pulled);
      boolean[] next = next(pulled, at, oneByOne);
      if (Arrays.equals(pulled, next)) {
        return new End(numbers(pulled), at, List.of());
      }
      List<Integer> step = numbers(pulled);
      Integer before = stepOf.putIfAbsent(step, steps.size());
      if (before != null) {
        return new End(numbers(pulled), at, List.copyOf(steps.subList(before, steps.size())));
      }
      steps.add(step);
      pulled = next;
    }
  }

  private boolean[] next(boolean[] pulled, PieceLoop.Outcome at, boolean oneByOne) {
    boolean[] next = pulled.clone();
    for (int coil : coils) {
      double volts = at.flow().map(flow -> volts(flow, coil)).orElse(0.0);
      boolean now = ((Branch.Coil) circuit.branches().get(coil)).pulled(volts, pulled[coil]);
      if (now != pulled[coil]) {
        next[coil] = now;
        if (oneByOne) {
          return next;
        }
      }
    }
    return next;
  }

  private static double volts(Flow flow, int coil) {
    return flow.across(coil);
  }

  private PieceLoop.Outcome solve(boolean[] pulled) {
    String key = numbers(pulled).toString();
    PieceLoop.Outcome outcome = known.get(key);
    if (outcome == null) {
      outcome = inner.settle(pulled, last);
      last = outcome.pieces();
      rounds += outcome.rounds();
      if (known.size() < MOST_KEPT) {
        known.put(key, outcome);
      }
    }
    return outcome;
  }

  /** A set of coils that rests though no start led to it; tried for few coils only. */
  private Optional<End> search(List<End> ends) {
    int[] open = coils;
    if (open.length > MOST_TRIED) {
      Set<Integer> restless = new LinkedHashSet<>();
      ends.forEach(end -> restless.addAll(new Trouble.Chatter(end.cycle(), false).branches()));
      open = restless.stream().mapToInt(Integer::intValue).sorted().toArray();
    }
    if (open.length > MOST_TRIED) {
      return Optional.empty();
    }
    PieceLoop.Outcome first = ends.get(0).at();
    Optional<Nearby> nearby =
        first
            .flow()
            .flatMap(
                flow ->
                    Nearby.of(circuit, flow, first.pieces(), ends.get(0).pulled(), new BitSet()));
    for (int set = 0; set < 1 << open.length; set++) {
      boolean[] pulled = flags(ends.get(0).pulled());
      for (int i = 0; i < open.length; i++) {
        pulled[open[i]] = ((set >> i) & 1) == 1;
      }
      if (nearby.filter(near -> near.refutes(pulled)).isPresent()) {
        continue;
      }
      PieceLoop.Outcome at = solve(pulled);
      if (Arrays.equals(pulled, next(pulled, at, false))) {
        return Optional.of(new End(numbers(pulled), at, List.of()));
      }
    }
    return Optional.empty();
  }

  private boolean[] flags(List<Integer> pulled) {
    boolean[] flags = new boolean[circuit.branches().size()];
    pulled.forEach(coil -> flags[coil] = true);
    return flags;
  }

  private static List<Integer> numbers(boolean[] pulled) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < pulled.length; i++) {
      if (pulled[i]) {
        numbers.add(i);
      }
    }
    return numbers;
  }
}
