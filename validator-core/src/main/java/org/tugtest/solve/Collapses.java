package org.tugtest.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Which constant-power loads cannot be fed at all. A source E behind R gives at most E²/4R: a load
 * that wants more falls below its floor. Several that could each be fed may still be too many
 * together.
 */
final class Collapses {
  private static final double SOME_VOLTS = 1e-3;
  private static final double ROUNDING = 1 + 1e-9;
  private final Circuit circuit;

  Collapses(Circuit circuit) {
    this.circuit = circuit;
  }

  List<Trouble> in(Flow flow, Grid grid) {
    List<Trouble> troubles = new ArrayList<>();
    List<Integer> together = new ArrayList<>();
    DrivingPoints points = null;
    for (int i = 0; i < circuit.branches().size(); i++) {
      if (circuit.branches().get(i) instanceof Branch.Load load
          && load.watts()
          && load.amount() > 0
          && Math.abs(flow.across(i)) < load.floorV()
          && Math.abs(flow.across(i)) > SOME_VOLTS) {
        points = points == null ? flow.factor().drivingPoints() : points;
        double most = mostWatts(flow, points, i, load);
        if (load.amount() > most * ROUNDING) {
          troubles.add(new Trouble.Collapse(List.of(i), most));
        } else {
          together.add(i);
        }
      }
    }
    if (together.size() > 1 && !canBeFed(flow, grid, together)) {
      troubles.add(new Trouble.Collapse(together, Double.NaN));
    }
    return troubles;
  }

  /** The greatest power that can reach a load, all else staying as it is. */
  private static double mostWatts(Flow flow, DrivingPoints points, int i, Branch.Load load) {
    int a = flow.islands().clusterOf(flow.linear().a(i));
    int b = flow.islands().clusterOf(flow.linear().b(i));
    double siemens = load.siemens(flow.across(i));
    double with = points.ohmsBetween(a, b).orElseGet(() -> flow.factor().ohmsBetween(a, b));
    double ohms = 1 / (1 / with - siemens);
    double open = Math.abs(flow.across(i)) * (1 + siemens * ohms);
    return open * open / (4 * ohms);
  }

  /** Whether these loads would all draw their watts if they had no floor. */
  private boolean canBeFed(Flow flow, Grid grid, List<Integer> loads) {
    List<Branch> branches = new ArrayList<>(circuit.branches());
    for (int i : loads) {
      branches.set(i, ((Branch.Load) branches.get(i)).withFloor(SOME_VOLTS));
    }
    LoadLoop.Outcome outcome =
        new LoadLoop(new Circuit(circuit.nodes(), branches)).settle(grid, flow.linear().copy());
    return outcome.settled()
        && !outcome.tangentFailed()
        && outcome.flow().isPresent()
        && loads.stream().allMatch(i -> Math.abs(outcome.flow().get().across(i)) > SOME_VOLTS);
  }
}
