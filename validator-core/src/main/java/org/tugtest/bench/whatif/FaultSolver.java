package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Grids;
import org.tugtest.solve.Nearby;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;

/**
 * The faults of one state. A fault in a part that carries nothing there changes nothing, and faults
 * in a row have the same effect. The others are worked out from the factor of the state, and those
 * for which that is not certain by solving the circuit again, relays starting as they stood.
 */
final class FaultSolver {
  private static final double SOME_AMPS = 1e-6;
  private static final double CLOSED_OHMS = 0.001;
  private final OperatingPoint state;
  private final Network network;
  private final Rows rows;
  private final Symptoms symptoms;
  private final @Nullable Nearby nearby;
  private final Map<Key, Effect.InState> known = new HashMap<>();
  private final Grids grids = new Grids();
  private int again;

  /** What a fault changes: these branches are opened, or closed. */
  private record Key(List<Integer> branches, boolean closes) {}

  /**
   * The faults of a state.
   *
   * @param always solves the circuit again for every fault
   */
  FaultSolver(Facts facts, OperatingPoint state, List<Fault> faults, boolean always) {
    this.state = state;
    this.network = facts.network();
    this.rows = Rows.of(network, state, SOME_AMPS);
    this.symptoms = new Symptoms(facts, state);
    this.nearby = always ? null : Nearby.of(state.solution(), changing(faults)).orElse(null);
  }

  private BitSet changing(List<Fault> faults) {
    BitSet changing = new BitSet();
    for (Fault fault : faults) {
      key(fault).branches().forEach(changing::set);
    }
    return changing;
  }

  /** What a fault does. */
  Effect.InState of(Fault fault) {
    Key key = key(fault);
    Effect.InState before = known.get(key);
    if (before == null) {
      before = key.branches().isEmpty() ? symptoms.none() : found(key);
      known.put(key, before);
    }
    return before;
  }

  /** How many circuits were solved again. */
  int again() {
    return again;
  }

  /** The branches that a fault changes, one for each row; none: it has no effect. */
  private Key key(Fault fault) {
    List<Integer> branches = new ArrayList<>();
    for (Edge edge : fault.edges()) {
      int number = network.number(edge);
      if (fault.kind().closes()) {
        branches.add(number);
      } else if (Math.abs(state.amps(edge)) > SOME_AMPS) {
        int row = rows.of(number);
        if (!branches.contains(row)) {
          branches.add(row);
        }
      }
    }
    branches.sort(null);
    return new Key(branches, fault.kind().closes());
  }

  private Effect.InState found(Key key) {
    double ohms = key.closes() ? CLOSED_OHMS : Double.POSITIVE_INFINITY;
    Effect.InState[] effect = new Effect.InState[1];
    if (nearby != null
        && nearby.after(
            key.branches(),
            ohms,
            (across, within) -> {
              boolean certain = symptoms.certain(across, within);
              effect[0] = certain ? symptoms.of(across) : symptoms.none();
              return certain;
            })) {
      return effect[0];
    }
    again++;
    return symptoms.of(solvedAgain(key)::across);
  }

  private Solution solvedAgain(Key key) {
    Circuit circuit = state.solution().circuit();
    List<Branch> branches = new ArrayList<>(circuit.branches());
    for (int number : key.branches()) {
      Branch old = branches.get(number);
      branches.set(
          number,
          key.closes()
              ? new Branch.Resistor(old.a(), old.b(), CLOSED_OHMS)
              : new Branch.Open(old.a(), old.b()));
    }
    return Solver.volts(
        new Circuit(circuit.nodes(), branches), state.solution().allPulled(), grids);
  }
}
