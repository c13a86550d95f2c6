package org.tugtest.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which constant-power loads cannot be fed at all. A source E behind R gives at most E²/4R: a load
 * that wants more falls below its floor. Several that could each be fed may still be too many
 * together.
 */
final class Collapses {
  private static final double SOME_VOLTS = 1e-3;
  private static final int SHARE_ROUNDS = 30;
  private static final int MOST_ALONE = 64;
  private static final double ALL_BUT_NOTHING = 1e-9;
  private static final double ROUNDING = 1 + 1e-9;
  private final Circuit circuit;

  Collapses(Circuit circuit) {
    this.circuit = circuit;
  }

  List<Trouble> in(Flow flow, Grid grid) {
    List<Integer> fallen = new ArrayList<>();
    for (int i = 0; i < circuit.branches().size(); i++) {
      if (circuit.branches().get(i) instanceof Branch.Load load
          && load.watts()
          && load.amount() > 0
          && Math.abs(flow.across(i)) < load.floorV()
          && Math.abs(flow.across(i)) > SOME_VOLTS) {
        fallen.add(i);
      }
    }
    if (fallen.size() == 1) {
      return alone(flow, fallen.get(0));
    }
    List<Trouble> troubles = new ArrayList<>();
    List<Integer> together = new ArrayList<>(fallen);
    if (fallen.size() <= MOST_ALONE) {
      for (int i : fallen) {
        if (!canBeFed(flow, grid, fallen, List.of(i), 1)) {
          troubles.add(collapse(flow, grid, fallen, List.of(i)));
          together.remove((Integer) i);
        }
      }
    }
    if (together.size() > 1 && !canBeFed(flow, grid, fallen, together, 1)) {
      troubles.add(collapse(flow, grid, fallen, together));
    }
    return troubles;
  }

  /** The only load that fell: the greatest power that can reach it, all else staying as it is. */
  private List<Trouble> alone(Flow flow, int i) {
    Branch.Load load = (Branch.Load) circuit.branches().get(i);
    int a = flow.islands().clusterOf(flow.linear().a(i));
    int b = flow.islands().clusterOf(flow.linear().b(i));
    double siemens = load.siemens(flow.across(i));
    double ohms = 1 / (1 / flow.factor().ohmsBetween(a, b) - siemens);
    double open = Math.abs(flow.across(i)) * (1 + siemens * ohms);
    double most = open * open / (4 * ohms);
    return load.amount() > most * ROUNDING
        ? List.of(new Trouble.Collapse(List.of(i), most))
        : List.of();
  }

  /** With the greatest sum of watts that loads get when all draw the same share of theirs. */
  private Trouble collapse(Flow flow, Grid grid, List<Integer> fallen, List<Integer> loads) {
    double sum = 0;
    for (int i : loads) {
      sum += ((Branch.Load) circuit.branches().get(i)).amount();
    }
    double fed = 0;
    double unfed = 1;
    for (int round = 0; round < SHARE_ROUNDS; round++) {
      double share = (fed + unfed) / 2;
      if (canBeFed(flow, grid, fallen, loads, share)) {
        fed = share;
      } else {
        unfed = share;
      }
    }
    return new Trouble.Collapse(loads, fed * sum);
  }

  /**
   * Whether loads would all draw a share of their watts if they had no floor and the others that
   * fell drew all but nothing: a rest at which all of them do so is the proof. That tangents failed
   * on the way there proves nothing, since it may have been those of the others.
   */
  private boolean canBeFed(
      Flow flow, Grid grid, List<Integer> fallen, List<Integer> loads, double share) {
    List<Branch> branches = new ArrayList<>(circuit.branches());
    Set<Integer> drawing = new HashSet<>(loads);
    for (int i : fallen) {
      Branch.Load load = (Branch.Load) branches.get(i);
      double watts = load.amount() * (drawing.contains(i) ? share : ALL_BUT_NOTHING);
      branches.set(i, new Branch.Load(load.a(), load.b(), watts, true, SOME_VOLTS));
    }
    LoadLoop.Outcome outcome =
        new LoadLoop(new Circuit(circuit.nodes(), branches))
            .settle(grid, flow.linear().copy(), LoadLoop.MOST_ROUNDS);
    return outcome.settled()
        && outcome.flow().isPresent()
        && loads.stream().allMatch(i -> Math.abs(outcome.flow().get().across(i)) > SOME_VOLTS);
  }
}
