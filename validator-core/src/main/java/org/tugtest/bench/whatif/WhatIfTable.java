package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;

/** What each single fault does in each state, relays starting as they stood. */
public final class WhatIfTable {
  /** Wires over which no table is made. */
  public static final int MOST_WIRES = 5_000;

  /** So many faults are solved from the start, times the parts of the harness, and no more. */
  private static final long MOST_WORK = 2_000_000;

  private final List<Effect> effects;
  private final String leftOut;
  private final int again;

  private WhatIfTable(List<Effect> effects, String leftOut, int again) {
    this.effects = List.copyOf(effects);
    this.leftOut = leftOut;
    this.again = again;
  }

  /** The table of a harness. */
  public static WhatIfTable of(Facts facts) {
    return of(facts, false);
  }

  /**
   * The table of a harness.
   *
   * @param always every fault is solved from the start; much slower, with the same answer
   */
  static WhatIfTable of(Facts facts, boolean always) {
    Network network = facts.network();
    if (network.sources().isEmpty()) {
      return new WhatIfTable(List.of(), "the harness gives no source", 0);
    }
    int wires = facts.harness().wires().size();
    if (wires > MOST_WIRES) {
      return new WhatIfTable(
          List.of(), wires + " wires are more than the " + MOST_WIRES + " that it is made for", 0);
    }
    List<Fault> faults = Faults.of(facts);
    Map<Fault, List<Effect.InState>> found = new HashMap<>();
    int again = 0;
    for (OperatingPoint state : facts.operating().all()) {
      FaultSolver solver = new FaultSolver(facts, state, faults, always);
      for (Fault fault : faults) {
        if (!always && (again + solver.again()) * (long) network.edges().size() > MOST_WORK) {
          return new WhatIfTable(List.of(), "too many faults need another solution", 0);
        }
        Effect.InState effect = solver.of(fault);
        if (!effect.isEmpty()) {
          found.computeIfAbsent(fault, key -> new ArrayList<>()).add(effect);
        }
      }
      again += solver.again();
    }
    return new WhatIfTable(
        faults.stream()
            .map(fault -> new Effect(fault, found.getOrDefault(fault, List.of())))
            .toList(),
        "",
        again);
  }

  /** Every fault with what it does, by kind and subject. */
  public List<Effect> effects() {
    return effects;
  }

  /** For how many faults a circuit had to be solved from the start. */
  int again() {
    return again;
  }

  /** Why there is no table; empty when there is one. */
  public String leftOut() {
    return leftOut;
  }
}
