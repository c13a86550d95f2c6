package org.tugtest.solve;

import java.util.List;
import java.util.Optional;

/**
 * How a circuit, or a part of one, came to rest.
 *
 * @param flow empty when there is no answer
 * @param pieces of its sources and diodes
 * @param pulled numbers of the coils that are pulled, ascending
 * @param troubles what is wrong with it
 * @param rounds how many linear networks were solved
 */
record Settled(
    Optional<Flow> flow, Pieces pieces, List<Integer> pulled, List<Trouble> troubles, int rounds) {
  /** What the relays' loop found, and what is wrong with it. */
  static Settled of(RelayLoop.Outcome outcome, List<Trouble> troubles) {
    return new Settled(
        outcome.at().flow(), outcome.at().pieces(), outcome.pulled(), troubles, outcome.rounds());
  }

  /** The same with the currents through metal. */
  Settled withMetal() {
    return new Settled(flow.map(Flow::withMetal), pieces, pulled, troubles, rounds);
  }

  Solution solution(Circuit circuit) {
    return new Solution(circuit, flow.orElse(null), pieces, pulled, troubles, rounds);
  }
}
