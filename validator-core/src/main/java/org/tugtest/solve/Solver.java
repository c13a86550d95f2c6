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
   * @param before numbers of the coils that were pulled before; null: not known, and none is taken
   *     to be
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
    return settled(circuit, before, grids, Solver::fresh, null).solution(circuit);
  }

  /**
   * Solves a circuit again of which only resistances changed a little, or what loads draw: where
   * its relays rest as they did, that they hold themselves is taken from before and not looked for
   * again.
   *
   * @param before numbers of the coils that were pulled before; null: none was
   * @param earlier the solution of the circuit as it was
   * @param grids of these circuits
   */
  public static Solution again(
      Circuit circuit, @Nullable List<Integer> before, Solution earlier, Grids grids) {
    if (circuit.branches().equals(earlier.circuit().branches())) {
      return earlier;
    }
    Way way = (part, pulled, its) -> again(part, pulled, earlier, its);
    return settled(circuit, before, grids, way, earlier).solution(circuit);
  }

  /**
   * The volts of the same answer without all that may be wrong with it, and without the currents
   * through metal: for circuits that are solved by the hundred.
   *
   * @param before numbers of the coils that were pulled before
   * @param grids of circuits with the same branches between the same nodes
   */
  public static Solution volts(Circuit circuit, List<Integer> before, Grids grids) {
    return settled(circuit, before, grids, Solver::rest, null).solution(circuit);
  }

  /** How a part comes to rest that is entered with these coils pulled; null: not from any state. */
  private interface Way {
    Settled settle(Part part, @Nullable List<Integer> before, Grids grids);
  }

  /**
   * Lets every part come to rest.
   *
   * @param earlier a solution of which parts that did not change are kept; null: none
   */
  private static Settled settled(
      Circuit circuit,
      @Nullable List<Integer> before,
      Grids grids,
      Way way,
      @Nullable Solution earlier) {
    Parts parts = grids.parts(circuit);
    if (parts.count() == 1) {
      return way.settle(parts.part(0, circuit), before, grids);
    }
    Together together = new Together(circuit, refused(shorted(circuit), circuit), earlier);
    for (int i = 0; i < parts.count(); i++) {
      Part part = parts.part(i, circuit);
      if (!together.keeps(part)) {
        List<Integer> its = before == null ? null : part.inner(before);
        together.add(part, way.settle(part, its, grids.of(part)));
      }
    }
    return together.settled(grids);
  }

  private static Settled fresh(Part part, @Nullable List<Integer> before, Grids grids) {
    Optional<Settled> known = grids.settled(part, before);
    if (known.isPresent()) {
      return known.get();
    }
    Circuit circuit = part.circuit();
    List<Trouble.ShortedSources> shorted = shorted(circuit);
    RelayLoop.Outcome outcome = relays(circuit, shorted, grids).settle(before);
    Settled settled = judged(circuit, outcome, shorted, outcome.troubles());
    grids.settled(part, before, settled);
    return settled;
  }

  private static Settled again(
      Part part, @Nullable List<Integer> before, Solution earlier, Grids grids) {
    Circuit circuit = part.circuit();
    List<Trouble.ShortedSources> shorted = shorted(circuit);
    RelayLoop relays = relays(circuit, shorted, grids);
    List<Integer> pulled = part.inner(earlier.allPulled());
    Optional<RelayLoop.Outcome> near = near(part, relays, pulled, shorted, earlier);
    if (near.isEmpty()) {
      near = relays.first(before).filter(outcome -> outcome.pulled().equals(pulled));
    }
    if (near.isEmpty()) {
      RelayLoop.Outcome outcome = relays.settle(before);
      return judged(circuit, outcome, shorted, outcome.troubles());
    }
    List<Trouble> holds = new ArrayList<>();
    for (Trouble trouble : earlier.troubles()) {
      if (trouble instanceof Trouble.HoldsItself && part.has(trouble.branches())) {
        holds.add(trouble.renumbered(part::inner));
      }
    }
    return judged(circuit, near.get(), shorted, holds);
  }

  private static Optional<RelayLoop.Outcome> near(
      Part part,
      RelayLoop relays,
      List<Integer> pulled,
      List<Trouble.ShortedSources> shorted,
      Solution earlier) {
    if (earlier.flow().isEmpty()) {
      return Optional.empty();
    }
    Pieces pieces = new Pieces(part.circuit(), refused(shorted, part.circuit()));
    for (int i : pieces.numbers()) {
      pieces.set(i, earlier.pieces().of(part.outer(i)));
    }
    return relays.near(pulled, pieces, branch -> earlier.across(part.outer(branch)));
  }

  private static Settled rest(Part part, @Nullable List<Integer> before, Grids grids) {
    Circuit circuit = part.circuit();
    RelayLoop.Outcome outcome =
        relays(circuit, shorted(circuit), grids).rest(before == null ? List.of() : before);
    return Settled.of(outcome, List.of());
  }

  private static RelayLoop relays(
      Circuit circuit, List<Trouble.ShortedSources> shorted, Grids grids) {
    return new RelayLoop(circuit, new PieceLoop(circuit, refused(shorted, circuit), grids));
  }

  /** An outcome with all that is wrong with it. */
  private static Settled judged(
      Circuit circuit,
      RelayLoop.Outcome outcome,
      List<Trouble.ShortedSources> shorted,
      List<Trouble> ofRelays) {
    List<Trouble> troubles = new ArrayList<>(shorted);
    troubles.addAll(ofRelays);
    troubles.addAll(outcome.at().troubles());
    outcome
        .at()
        .flow()
        .ifPresent(
            flow ->
                troubles.addAll(
                    new Collapses(circuit, outcome, refused(shorted, circuit)).in(flow)));
    return Settled.of(outcome, troubles).withMetal();
  }

  /** Sources whose both ends one piece of metal joins whatever the relays do. */
  private static List<Trouble.ShortedSources> shorted(Circuit circuit) {
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
    return shorted.values().stream().map(Trouble.ShortedSources::new).toList();
  }

  /** Of those: one alone gives what its own resistance lets through, several are left out. */
  private static boolean[] refused(List<Trouble.ShortedSources> shorted, Circuit circuit) {
    boolean[] refused = new boolean[circuit.branches().size()];
    for (Trouble.ShortedSources sources : shorted) {
      if (sources.branches().size() > 1) {
        sources.branches().forEach(i -> refused[i] = true);
      }
    }
    return refused;
  }
}
