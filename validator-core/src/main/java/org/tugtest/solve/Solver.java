package org.tugtest.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Joined;

/**
 * Solves circuits by nodal analysis: relays outside, in them the pieces of sources and diodes, in
 * them the loads, each loop bounded. What has no answer is a {@link Trouble}, never an exception.
 */
public final class Solver {
  private Solver() {}

  /** Solves a circuit whose relays start released. */
  public static Solution solve(Circuit circuit) {
    return solve(circuit, null);
  }

  /**
   * Solves a circuit.
   *
   * @param before numbers of the coils that were pulled before; null: none was
   */
  public static Solution solve(Circuit circuit, @Nullable List<Integer> before) {
    return solve(circuit, before, new Grids());
  }

  /**
   * Solves a circuit that has the same branches between the same nodes as others before it.
   *
   * @param before numbers of the coils that were pulled before; null: none was
   * @param grids of these circuits
   */
  public static Solution solve(Circuit circuit, @Nullable List<Integer> before, Grids grids) {
    List<Trouble> troubles = new ArrayList<>();
    boolean[] refused = shorted(circuit, troubles);
    RelayLoop.Outcome outcome =
        new RelayLoop(circuit, new PieceLoop(circuit, refused, grids)).settle(before);
    troubles.addAll(outcome.troubles());
    return solution(circuit, outcome, troubles);
  }

  /**
   * Solves a circuit again of which only resistances changed a little: where its relays rest as
   * they did, that they hold themselves is taken from before and not looked for again.
   *
   * @param before numbers of the coils that were pulled before; null: none was
   * @param earlier the solution of the circuit as it was
   * @param grids of these circuits
   */
  public static Solution again(
      Circuit circuit, @Nullable List<Integer> before, Solution earlier, Grids grids) {
    List<Trouble> troubles = new ArrayList<>();
    boolean[] refused = shorted(circuit, troubles);
    RelayLoop relays = new RelayLoop(circuit, new PieceLoop(circuit, refused, grids));
    RelayLoop.Outcome outcome =
        relays
            .first(before)
            .filter(first -> first.pulled().equals(earlier.allPulled()))
            .orElse(null);
    if (outcome == null) {
      outcome = relays.settle(before);
      troubles.addAll(outcome.troubles());
    } else {
      earlier.troubles().stream()
          .filter(Trouble.HoldsItself.class::isInstance)
          .forEach(troubles::add);
    }
    return solution(circuit, outcome, troubles);
  }

  /**
   * The volts of the same answer without all that may be wrong with it, and without the currents
   * through metal: for circuits that are solved by the hundred.
   *
   * @param before numbers of the coils that were pulled before
   * @param grids of circuits with the same branches between the same nodes
   */
  public static Solution volts(Circuit circuit, List<Integer> before, Grids grids) {
    List<Trouble> troubles = new ArrayList<>();
    boolean[] refused = shorted(circuit, troubles);
    RelayLoop.Outcome outcome =
        new RelayLoop(circuit, new PieceLoop(circuit, refused, grids)).rest(before);
    return solution(circuit, outcome, outcome.at().flow(), List.of());
  }

  /** The solution of an outcome, with what is wrong with it besides its relays. */
  private static Solution solution(
      Circuit circuit, RelayLoop.Outcome outcome, List<Trouble> troubles) {
    troubles.addAll(outcome.at().troubles());
    outcome
        .at()
        .flow()
        .ifPresent(flow -> troubles.addAll(new Collapses(circuit).in(flow, outcome.at().grid())));
    return solution(circuit, outcome, outcome.at().flow().map(Flow::withMetal), troubles);
  }

  private static Solution solution(
      Circuit circuit, RelayLoop.Outcome outcome, Optional<Flow> flow, List<Trouble> troubles) {
    return new Solution(
        circuit,
        flow.orElse(null),
        outcome.at().pieces(),
        outcome.pulled(),
        troubles,
        outcome.rounds());
  }

  /**
   * Sources whose both ends one piece of metal joins whatever the relays do. One alone gives what
   * its own resistance lets through; where there are several on one piece they are left out.
   */
  private static boolean[] shorted(Circuit circuit, List<Trouble> troubles) {
    Joined metal = new Joined(circuit.nodes());
    for (Branch branch : circuit.branches()) {
      if (branch instanceof Branch.Resistor resistor && resistor.ohms() < Branch.LEAST_OHMS) {
        metal.join(branch.a(), branch.b());
      }
    }
    Map<Integer, List<Integer>> shorted = new TreeMap<>();
    for (int i = 0; i < circuit.branches().size(); i++) {
      Branch branch = circuit.branches().get(i);
      if (branch instanceof Branch.Source && metal.find(branch.a()) == metal.find(branch.b())) {
        shorted.computeIfAbsent(metal.find(branch.a()), none -> new ArrayList<>()).add(i);
      }
    }
    boolean[] refused = new boolean[circuit.branches().size()];
    for (List<Integer> sources : shorted.values()) {
      troubles.add(new Trouble.ShortedSources(sources));
      if (sources.size() > 1) {
        sources.forEach(i -> refused[i] = true);
      }
    }
    return refused;
  }
}
