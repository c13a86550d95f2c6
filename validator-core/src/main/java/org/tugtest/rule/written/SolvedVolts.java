package org.tugtest.rule.written;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/** The greatest volts between any two points that are joined, as the states are solved. */
final class SolvedVolts {
  private SolvedVolts() {}

  /**
   * Two points of one island.
   *
   * @param sources the sources on the island that give
   */
  record Apart(
      OperatingPoint state, Point high, Point low, double volts, List<Edge.OfElement> sources) {}

  /** The two points furthest apart in any state; the first of equals. */
  static Optional<Apart> greatest(Facts facts) {
    Network network = facts.network();
    int count = network.points().size();
    Apart worst = null;
    for (OperatingPoint state : facts.operating().all()) {
      int[] highest = new int[count];
      int[] lowest = new int[count];
      Arrays.fill(highest, -1);
      for (int at = 0; at < count; at++) {
        OptionalDouble volts = state.solution().volts(at);
        if (volts.isEmpty()) {
          continue;
        }
        int island = state.solution().island(at);
        if (highest[island] < 0) {
          highest[island] = at;
          lowest[island] = at;
        }
        highest[island] =
            volts(state, highest[island]) < volts.getAsDouble() ? at : highest[island];
        lowest[island] = volts(state, lowest[island]) > volts.getAsDouble() ? at : lowest[island];
      }
      for (int island = 0; island < count; island++) {
        if (highest[island] >= 0) {
          double apart = volts(state, highest[island]) - volts(state, lowest[island]);
          if (worst == null || apart > worst.volts()) {
            worst = apart(network, state, highest[island], lowest[island], apart);
          }
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  private static Apart apart(
      Network network, OperatingPoint state, int high, int low, double volts) {
    List<Edge.OfElement> sources =
        network.sources().stream()
            .filter(source -> state.conducts(source))
            .filter(source -> state.solution().oneIsland(high, network.index(source.a())))
            .toList();
    return new Apart(state, network.points().get(high), network.points().get(low), volts, sources);
  }

  private static double volts(OperatingPoint state, int at) {
    return state.solution().volts(at).orElse(0);
  }
}
