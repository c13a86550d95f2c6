package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;

/**
 * What each single fault does in each state: the circuit of the state is solved again with the
 * fault in it, relays starting as they stood. A fault in a part that carries nothing in a state
 * changes nothing there, and faults in a row have the same effect, so few are solved.
 */
public final class WhatIfTable {
  /** Wires over which no table is made. */
  public static final int MOST_WIRES = 1_000;

  private static final double SOME_AMPS = 1e-6;
  private static final double CLOSED_OHMS = 0.001;
  private final List<Effect> effects;
  private final String leftOut;

  private WhatIfTable(List<Effect> effects, String leftOut) {
    this.effects = List.copyOf(effects);
    this.leftOut = leftOut;
  }

  /** The table of a harness. */
  public static WhatIfTable of(Facts facts) {
    Network network = facts.network();
    if (network.sources().isEmpty()) {
      return new WhatIfTable(List.of(), "the harness gives no source");
    }
    int wires = facts.harness().wires().size();
    if (wires > MOST_WIRES) {
      return new WhatIfTable(
          List.of(), wires + " wires are more than the " + MOST_WIRES + " that it is made for");
    }
    List<Fault> faults = Faults.of(facts);
    Map<Fault, List<Effect.InState>> found = new HashMap<>();
    for (OperatingPoint state : facts.operating().all()) {
      new InOneState(facts, state).add(faults, found);
    }
    return new WhatIfTable(
        faults.stream()
            .map(fault -> new Effect(fault, found.getOrDefault(fault, List.of())))
            .toList(),
        "");
  }

  /** Every fault with what it does, by kind and subject. */
  public List<Effect> effects() {
    return effects;
  }

  /** Why there is no table; empty when there is one. */
  public String leftOut() {
    return leftOut;
  }

  /** The faults of one state, each row of parts solved once. */
  private static final class InOneState {
    private final OperatingPoint state;
    private final Network network;
    private final Rows rows;
    private final Symptoms symptoms;
    private final Map<List<Integer>, Effect.InState> solved = new HashMap<>();

    InOneState(Facts facts, OperatingPoint state) {
      this.state = state;
      this.network = facts.network();
      this.rows = Rows.of(network, state, SOME_AMPS);
      this.symptoms = new Symptoms(facts, state);
    }

    void add(List<Fault> faults, Map<Fault, List<Effect.InState>> found) {
      for (Fault fault : faults) {
        List<Integer> branches = branches(fault);
        if (!branches.isEmpty()) {
          Effect.InState effect =
              solved.computeIfAbsent(
                  branches, key -> symptoms.of(solve(key, fault.kind().closes())));
          if (!effect.isEmpty()) {
            found.computeIfAbsent(fault, key -> new ArrayList<>()).add(effect);
          }
        }
      }
    }

    /** The branches that the fault changes in this state, one for each row; none: no effect. */
    private List<Integer> branches(Fault fault) {
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
      return branches;
    }

    private Solution solve(List<Integer> changed, boolean closes) {
      Circuit circuit = state.solution().circuit();
      List<Branch> branches = new ArrayList<>(circuit.branches());
      for (int number : changed) {
        Branch old = branches.get(number);
        branches.set(
            number,
            closes
                ? new Branch.Resistor(old.a(), old.b(), CLOSED_OHMS)
                : new Branch.Open(old.a(), old.b()));
      }
      return Solver.solve(new Circuit(circuit.nodes(), branches), state.solution().allPulled());
    }
  }
}
