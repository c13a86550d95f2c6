package org.tugtest.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The rest of a circuit in which a source gives its greatest current and loads draw no less at
 * fewer volts. There the loads must not come to rest on pieces that they do not fit: with a source
 * of constant current the volts of a constant power have no bound. So the pieces of all sources and
 * diodes are found anew in every round, for loads that are resistances in it, which have one answer
 * each, and the volts of the loads go down from no-load volts.
 */
final class FromAbove {
  private static final int MOST_ROUNDS = 400;
  private final Circuit circuit;
  private final LoadLoop loads;
  private final Grids grids;

  FromAbove(Circuit circuit, LoadLoop loads, Grids grids) {
    this.circuit = circuit;
    this.loads = loads;
    this.grids = grids;
  }

  /** Whether a circuit has a source of a greatest current, and loads of their own mind. */
  static boolean applies(Circuit circuit) {
    boolean limited = false;
    boolean load = false;
    for (Branch branch : circuit.branches()) {
      limited |= branch instanceof Branch.Source source && source.maxA() < Double.POSITIVE_INFINITY;
      load |= branch instanceof Branch.Load;
    }
    return limited && load;
  }

  /**
   * The rest with the contacts that these coils make; empty when none is found.
   *
   * @param fresh all sources giving and all diodes off
   */
  Optional<PieceLoop.Outcome> settle(boolean[] pulled, Pieces fresh) {
    Linear linear = ContactSet.linear(circuit, pulled);
    Pieces pieces = fresh;
    double[] at = new double[loads.numbers().size()];
    Arrays.fill(at, loads.bound());
    double stride = 1;
    for (int round = 1; round <= MOST_ROUNDS; round++) {
      Optional<Flow> flow = Optional.empty();
      if (round > 1) {
        loads.lay(linear, at, true);
        Optional<Flow> tangent = grids.of(linear).solve(linear).filter(Flow::isFinite);
        stride = tangent.isPresent() ? 1 : loads.longer(stride);
        flow =
            tangent
                .filter(found -> loads.keepsSides(found, at))
                .filter(found -> pieces.wrong(found).isEmpty());
      }
      if (flow.isEmpty()) {
        loads.lay(linear, at, false);
        flow = withItsPieces(linear, pieces);
      }
      if (flow.isEmpty()) {
        return Optional.empty();
      }
      Flow found = flow.get();
      if (loads.move(at, found, stride)) {
        return Optional.of(new PieceLoop.Outcome(flow, grids.of(linear), pieces, List.of(), round));
      }
    }
    return Optional.empty();
  }

  /** Volts and currents with loads as they are, on the pieces that fit them. */
  private Optional<Flow> withItsPieces(Linear linear, Pieces pieces) {
    Set<String> seen = new HashSet<>();
    boolean lowestOnly = false;
    int most = 100 + 4 * pieces.numbers().length;
    for (int change = 0; change < most; change++) {
      pieces.lay(linear);
      if (pieces.unstrand(linear)) {
        continue;
      }
      Optional<Flow> flow = grids.of(linear).solve(linear).filter(Flow::isFinite);
      if (flow.isEmpty()) {
        return flow;
      }
      List<Map<Integer, Pieces.Piece>> wrong = new ArrayList<>(pieces.wrong(flow.get()));
      if (wrong.isEmpty()) {
        Map<Integer, Pieces.Piece> lifts = pieces.lifts(flow.get());
        if (lifts.isEmpty()) {
          return flow;
        }
        wrong.add(lifts);
      } else if (lowestOnly) {
        wrong = List.of(PieceLoop.lowest(wrong));
      } else if (!seen.add(pieces.key())) {
        lowestOnly = true;
        wrong = List.of(PieceLoop.lowest(wrong));
      }
      wrong.forEach(changes -> changes.forEach(pieces::set));
    }
    return Optional.empty();
  }
}
