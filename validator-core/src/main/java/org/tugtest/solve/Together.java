package org.tugtest.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts the parts of a circuit that came to rest by themselves together again. */
final class Together {
  private final Linear linear;
  private final Pieces pieces;
  private final double[] amps;
  private final List<Part> parts = new ArrayList<>();
  private final List<Flow> flows = new ArrayList<>();
  private final List<Part> kept = new ArrayList<>();
  private final List<Integer> pulled = new ArrayList<>();
  private final List<Trouble> troubles = new ArrayList<>();
  private final @Nullable Solution earlier;
  private boolean answered = true;
  private int rounds;

  /**
   * A circuit in which nothing is pulled and no source gives anything yet.
   *
   * @param earlier a solution of which parts are kept that did not change; null: none
   */
  Together(Circuit circuit, boolean[] refused, @Nullable Solution earlier) {
    this.earlier = earlier;
    this.pieces = new Pieces(circuit, refused);
    this.linear = ContactSet.linear(circuit, new boolean[circuit.branches().size()]);
    this.amps = new double[linear.branches()];
    for (int i = 0; i < linear.branches(); i++) {
      if (circuit.branches().get(i) instanceof Branch.Load load) {
        linear.set(i, load.siemens(0), 0, 0);
      }
    }
  }

  /** Adds a part as it came to rest. */
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
    Flow flow = settled.flow().get();
    Linear its = flow.linear();
    for (int i = 0; i < its.branches(); i++) {
      linear.set(part.outer(i), its.siemens(i), its.emf(i), its.amps(i));
      amps[part.outer(i)] = flow.amps(i);
    }
    parts.add(part);
    flows.add(flow);
  }

  /** Adds a part as it is in the earlier solution; false where it is not the same there. */
  boolean keeps(Part part) {
    Solution before = earlier;
    Flow flow = before == null ? null : before.flow().orElse(null);
    if (before == null || flow == null || !part.isIn(before.circuit())) {
      return false;
    }
    Linear its = flow.linear();
    for (int i : part.branches()) {
      linear.set(i, its.siemens(i), its.emf(i), its.amps(i));
      amps[i] = flow.amps(i);
      pieces.set(i, before.pieces().of(i));
    }
    before.allPulled().stream().filter(coil -> part.inner(coil) >= 0).forEach(pulled::add);
    before.troubles().stream()
        .filter(trouble -> part.has(trouble.branches()))
        .forEach(troubles::add);
    kept.add(part);
    return true;
  }

  /** The whole, with the volts and currents of its parts; what has no source has none. */
  Settled settled(Grids grids) {
    pulled.sort(null);
    Optional<Flow> flow = answered ? Optional.of(flow(grids.of(linear))) : Optional.empty();
    return new Settled(flow, pieces, List.copyOf(pulled), List.copyOf(troubles), rounds);
  }

  private Flow flow(Grid grid) {
    Islands islands = grid.islands();
    double[] high = new double[islands.clusters()];
    double[] low = new double[islands.clusters()];
    for (int i = 0; i < parts.size(); i++) {
      Flow flow = flows.get(i);
      int[] nodes = parts.get(i).nodes();
      for (int inner = 0; inner < nodes.length; inner++) {
        int from = flow.islands().clusterOf(inner);
        int to = islands.clusterOf(nodes[inner]);
        high[to] = flow.high()[from];
        low[to] = flow.low()[from];
      }
    }
    Flow before = earlier == null ? null : earlier.flow().orElse(null);
    for (Part part : before == null ? List.<Part>of() : kept) {
      for (int node : part.nodes()) {
        int from = before.islands().clusterOf(node);
        int to = islands.clusterOf(node);
        high[to] = before.high()[from];
        low[to] = before.low()[from];
      }
    }
    return new Flow(linear, grid, null, high, low, amps);
  }
}
