package org.tugtest.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the parts of a circuit that came to rest by themselves together again. */
final class Together {
  private final Circuit circuit;
  private final Linear linear;
  private final Pieces pieces;
  private final List<Integer> pulled = new ArrayList<>();
  private final List<Trouble> troubles = new ArrayList<>();
  private boolean answered = true;
  private int rounds;

  /** A circuit in which nothing is pulled and no source gives anything yet. */
  Together(Circuit circuit, boolean[] refused) {
    this.circuit = circuit;
    this.pieces = new Pieces(circuit, refused);
    this.linear = ContactSet.linear(circuit, new boolean[circuit.branches().size()]);
    for (int i = 0; i < linear.branches(); i++) {
      if (circuit.branches().get(i) instanceof Branch.Load load) {
        linear.set(i, load.siemens(0), 0, 0);
      }
    }
  }

  void add(Part part, Settled settled) {
    pulled.addAll(part.outer(settled.pulled()));
    settled.troubles().forEach(trouble -> troubles.add(trouble.renumbered(part::outer)));
    rounds += settled.rounds();
    for (int i : settled.pieces().numbers()) {
      pieces.set(part.outer(i), settled.pieces().of(i));
    }
    if (settled.flow().isEmpty()) {
      answered = false;
      return;
    }
    Linear its = settled.flow().get().linear();
    for (int i = 0; i < its.branches(); i++) {
      linear.set(part.outer(i), its.siemens(i), its.emf(i), its.amps(i));
    }
  }

  /** The whole: one more linear network, on the pieces that the parts came to rest on. */
  Settled settled(Grids grids) {
    pulled.sort(null);
    Optional<Flow> flow =
        answered ? grids.of(linear).solve(linear).filter(Flow::isFinite) : Optional.empty();
    if (answered && flow.isEmpty()) {
      troubles.add(new Trouble.NotSolvable(sources()));
    }
    return new Settled(flow, pieces, List.copyOf(pulled), List.copyOf(troubles), rounds + 1);
  }

  private List<Integer> sources() {
    List<Integer> sources = new ArrayList<>();
    for (int i = 0; i < circuit.branches().size(); i++) {
      if (circuit.branches().get(i) instanceof Branch.Source) {
        sources.add(i);
      }
    }
    return sources;
  }
}
