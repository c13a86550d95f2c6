package org.tugtest.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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
  private final RelayLoop.Outcome rest;
  private final boolean[] refused;

  /**
   * @param rest how the circuit came to rest
   * @param refused sources that are left out
   */
  Collapses(Circuit circuit, RelayLoop.Outcome rest, boolean[] refused) {
    this.circuit = circuit;
    this.rest = rest;
    this.refused = refused;
  }

  List<Trouble> in(Flow flow) {
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
    if (fallen.isEmpty()) {
      return List.of();
    }
    if (fallen.size() == 1 && limited(flow, fallen).isEmpty()) {
      return alone(flow, fallen.get(0));
    }
    List<Trouble> troubles = new ArrayList<>();
    List<Integer> together = new ArrayList<>(fallen);
    if (fallen.size() <= MOST_ALONE) {
      for (int i : fallen) {
        if (!canBeFed(flow, fallen, List.of(i), 1)) {
          troubles.add(collapse(flow, fallen, List.of(i)));
          together.remove((Integer) i);
        }
      }
    }
    if (together.size() > 1 && !canBeFed(flow, fallen, together, 1)) {
      troubles.add(collapse(flow, fallen, together));
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
        ? List.of(new Trouble.Collapse(List.of(i), most, List.of()))
        : List.of();
  }

  /** With the greatest sum of watts that loads get when all draw the same share of theirs. */
  private Trouble collapse(Flow flow, List<Integer> fallen, List<Integer> loads) {
    double sum = 0;
    for (int i : loads) {
      sum += ((Branch.Load) circuit.branches().get(i)).amount();
    }
    double fed = 0;
    double unfed = 1;
    for (int round = 0; round < SHARE_ROUNDS; round++) {
      double share = (fed + unfed) / 2;
      if (canBeFed(flow, fallen, loads, share)) {
        fed = share;
      } else {
        unfed = share;
      }
    }
    List<Integer> limited = limited(flow, loads);
    boolean toBlame =
        !limited.isEmpty() && fed(drawing(unlimited(limited), fallen, loads, 1), loads);
    return new Trouble.Collapse(loads, fed * sum, toBlame ? limited : List.of());
  }

  /** The sources that give their greatest current on the islands of these loads. */
  private List<Integer> limited(Flow flow, List<Integer> loads) {
    Set<Integer> islands = new HashSet<>();
    loads.forEach(i -> islands.add(flow.islands().islandOf(flow.linear().a(i))));
    List<Integer> limited = new ArrayList<>();
    for (int i : rest.at().pieces().numbers()) {
      if (rest.at().pieces().of(i) == Pieces.Piece.LIMITED
          && islands.contains(flow.islands().islandOf(flow.linear().a(i)))) {
        limited.add(i);
      }
    }
    return limited;
  }

  /** The branches with these sources able to give any current. */
  private List<Branch> unlimited(List<Integer> sources) {
    List<Branch> branches = new ArrayList<>(circuit.branches());
    for (int i : sources) {
      branches.set(i, ((Branch.Source) branches.get(i)).unlimited());
    }
    return branches;
  }

  /** Whether loads are fed with every source and diode free to go to another piece. */
  private boolean fed(List<Branch> branches, List<Integer> loads) {
    boolean[] pulled = new boolean[branches.size()];
    rest.pulled().forEach(coil -> pulled[coil] = true);
    PieceLoop.Outcome outcome =
        new PieceLoop(new Circuit(circuit.nodes(), branches), refused, new Grids())
            .settle(pulled, null);
    return outcome.troubles().isEmpty() && fed(outcome.flow(), loads);
  }

  private static boolean fed(Optional<Flow> flow, List<Integer> loads) {
    return flow.isPresent()
        && loads.stream().allMatch(i -> Math.abs(flow.get().across(i)) > SOME_VOLTS);
  }

  /**
   * Whether loads would all draw a share of their watts if they had no floor and the others that
   * fell drew all but nothing: a rest at which all of them do so is the proof. That tangents failed
   * on the way there proves nothing, since it may have been those of the others.
   */
  private boolean canBeFed(Flow flow, List<Integer> fallen, List<Integer> loads, double share) {
    List<Branch> branches = drawing(circuit.branches(), fallen, loads, share);
    if (!limited(flow, fallen).isEmpty()) {
      return fed(branches, loads);
    }
    LoadLoop.Outcome outcome =
        new LoadLoop(new Circuit(circuit.nodes(), branches))
            .settle(rest.at().grid(), flow.linear().copy(), LoadLoop.MOST_ROUNDS);
    return outcome.settled() && fed(outcome.flow(), loads);
  }

  private static List<Branch> drawing(
      List<Branch> all, List<Integer> fallen, List<Integer> loads, double share) {
    List<Branch> branches = new ArrayList<>(all);
    Set<Integer> drawing = new HashSet<>(loads);
    for (int i : fallen) {
      Branch.Load load = (Branch.Load) branches.get(i);
      double watts = load.amount() * (drawing.contains(i) ? share : ALL_BUT_NOTHING);
      branches.set(i, new Branch.Load(load.a(), load.b(), watts, true, SOME_VOLTS));
    }
    return branches;
  }
}
