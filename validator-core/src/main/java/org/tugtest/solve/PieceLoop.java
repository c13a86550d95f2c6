package org.tugtest.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Finds the pieces on which sources and diodes work for one set of relay contacts: all that are
 * wrong change at once; after a set that was there before, only the one of the lowest number does
 * (which ends, for resistances: Murty's least index rule).
 */
final class PieceLoop {
  private static final int ROUGH_ROUNDS = 2;
  private static final int NEAR_ROUNDS = 8;
  private final Circuit circuit;
  private final LoadLoop loads;
  private final boolean[] refused;
  private final Grids grids;

  /**
   * Volts and currents with these contacts.
   *
   * @param flow empty when they cannot be computed
   */
  record Outcome(
      Optional<Flow> flow, Grid grid, Pieces pieces, List<Trouble> troubles, int rounds) {}

  /**
   * A loop for a circuit.
   *
   * @param refused sources that are left out
   */
  PieceLoop(Circuit circuit, boolean[] refused, Grids grids) {
    this.grids = grids;
    this.circuit = circuit;
    this.loads = new LoadLoop(circuit);
    this.refused = refused.clone();
  }

  /**
   * Solves the circuit with the relay contacts that these coils make, true being pulled. While
   * pieces are still wrong the loads come to rest roughly only.
   *
   * @param near pieces to begin with, from another set of contacts; null: diodes off
   */
  Outcome settle(boolean[] pulled, @Nullable Pieces near) {
    Outcome outcome = onPieces(pulled, near);
    if (outcome.troubles().isEmpty() || !FromAbove.applies(circuit)) {
      return outcome;
    }
    return new FromAbove(circuit, loads, grids)
        .settle(pulled, new Pieces(circuit, refused))
        .orElse(outcome);
  }

  /**
   * Solves the circuit from an answer to nearly the same one, on its pieces; empty where those do
   * not fit, or the loads do not rest at once with each on its side of its floor. An answer whose
   * tangents hold with all loads over their floors is the highest that there is.
   *
   * @param volts of the branches in that answer
   */
  Optional<Outcome> settleNear(boolean[] pulled, Pieces near, IntToDoubleFunction volts) {
    Optional<LoadLoop.Descent> down =
        FromAbove.applies(circuit) ? Optional.empty() : loads.fromNear(volts);
    Linear linear = ContactSet.linear(circuit, pulled);
    near.lay(linear);
    loads.lay(linear);
    if (down.isEmpty() || near.unstrand(linear)) {
      return Optional.empty();
    }
    Grid grid = grids.of(linear);
    LoadLoop.Outcome outcome = loads.settle(grid, linear, NEAR_ROUNDS, down.get());
    return outcome
        .flow()
        .filter(flow -> outcome.settled())
        .filter(flow -> near.wrong(flow).isEmpty() && near.lifts(flow).isEmpty())
        .map(flow -> new Outcome(Optional.of(flow), grid, near, List.of(), outcome.rounds()));
  }

  /** Lets the loads come to rest on pieces, and then changes those that are wrong. */
  private Outcome onPieces(boolean[] pulled, @Nullable Pieces near) {
    Linear linear = ContactSet.linear(circuit, pulled);
    Pieces pieces = near == null ? new Pieces(circuit, refused) : near.copy();
    Set<String> seen = new HashSet<>();
    boolean lowestOnly = false;
    boolean rough = true;
    LoadLoop.Descent down = loads.fromNoLoad();
    int rounds = 0;
    int most = 100 + 4 * pieces.numbers().length;
    for (int change = 0; ; change++) {
      pieces.lay(linear);
      loads.lay(linear);
      if (pieces.unstrand(linear)) {
        continue;
      }
      Grid grid = grids.of(linear);
      LoadLoop.Outcome outcome =
          loads.settle(grid, linear, rough ? ROUGH_ROUNDS : LoadLoop.MOST_ROUNDS, down);
      rounds += outcome.rounds();
      List<Trouble> troubles = new ArrayList<>();
      if (outcome.flow().isEmpty()) {
        troubles.add(new Trouble.NotSolvable(sources()));
        return new Outcome(outcome.flow(), grid, pieces, troubles, rounds);
      }
      Flow flow = outcome.flow().get();
      List<Map<Integer, Pieces.Piece>> wrong = pieces.wrong(flow);
      Map<Integer, Pieces.Piece> lifts = wrong.isEmpty() ? pieces.lifts(flow) : Map.of();
      boolean again = !wrong.isEmpty() || !lifts.isEmpty();
      boolean repeated = !wrong.isEmpty() && !seen.add(pieces.key());
      if (rough && !outcome.settled() && (!again || repeated)) {
        rough = false;
        seen.clear();
        continue;
      }
      if (!again || change > most || (repeated && lowestOnly)) {
        if (!outcome.settled()) {
          troubles.add(new Trouble.LoadsUnsettled(loads.numbers()));
        }
        if (!wrong.isEmpty()) {
          troubles.add(new Trouble.PiecesUnsettled(numbers(wrong)));
        }
        return new Outcome(Optional.of(grid.refined(flow)), grid, pieces, troubles, rounds);
      }
      down = loads.fromNoLoad();
      if (repeated) {
        lowestOnly = true;
        seen.clear();
      }
      lifts.forEach(pieces::set);
      if (lowestOnly && !wrong.isEmpty()) {
        lowest(wrong).forEach(pieces::set);
      } else {
        wrong.forEach(changes -> changes.forEach(pieces::set));
      }
    }
  }

  /** Of changes, that of the lowest number. */
  static Map<Integer, Pieces.Piece> lowest(List<Map<Integer, Pieces.Piece>> wrong) {
    Map<Integer, Pieces.Piece> lowest = wrong.get(0);
    for (Map<Integer, Pieces.Piece> changes : wrong) {
      if (first(changes) < first(lowest)) {
        lowest = changes;
      }
    }
    return lowest;
  }

  private static int first(Map<Integer, Pieces.Piece> changes) {
    return changes.keySet().iterator().next();
  }

  private static List<Integer> numbers(List<Map<Integer, Pieces.Piece>> wrong) {
    Set<Integer> numbers = new TreeSet<>();
    wrong.forEach(changes -> numbers.addAll(changes.keySet()));
    return List.copyOf(numbers);
  }

  private List<Integer> sources() {
    List<Integer> sources = new ArrayList<>();
    for (int i = 0; i < circuit.branches().size(); i++) {
      if (circuit.branches().get(i) instanceof Branch.Source && !refused[i]) {
        sources.add(i);
      }
    }
    return sources;
  }
}
