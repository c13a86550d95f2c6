package org.tugtest.route;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps the wires of a group together: the way of one of them is the group's, and another, whose
 * ends differ, leaves it as late and as little as it can. What lies off the group's way costs 256
 * times what lies on it. Only where the layout has loops is there anything to choose.
 */
final class Together {
  private static final long OFF = 256;
  private final LoomWays ways;
  private final Set<Integer> trunk = new HashSet<>();

  /** Keeps to the way of these pieces. */
  Together(LoomWays ways, List<Piece> leader) {
    this.ways = ways;
    for (Piece piece : leader) {
      trunk.add(ways.rank(piece.segment()));
    }
  }

  /** Whether a way leaves that of the group at all. */
  boolean strays(List<Piece> pieces) {
    return pieces.stream().anyMatch(piece -> !trunk.contains(ways.rank(piece.segment())));
  }

  /** The way between two stands that keeps to the group's. */
  Optional<LegWays.Leg> leg(Stand from, Stand to) {
    PairWays pairs = new PairWays(ways, this::cost);
    LegWays legs = new LegWays(pairs);
    legs.ask(from, to);
    pairs.find();
    return legs.leg(from, to);
  }

  private long cost(int rank) {
    return ways.cost(rank) * (trunk.contains(rank) ? 1 : OFF);
  }
}
