package org.tugtest.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Volts and currents of a network with loads of constant power or current, from no-load volts
 * downwards. Each round puts straight pieces in place of the loads: their present amps per volt,
 * which never passes the highest answer, or their tangent (Newton), which comes to rest fast, for
 * as long as the matrix stays positive definite and no load crosses its floor.
 */
final class LoadLoop {
  /** So many rounds are made before loads are said not to come to rest. */
  static final int MOST_ROUNDS = 200;

  private static final double SETTLED = 1e-12;

  /** Of the bound: from here on volts are solved to all their digits. */
  private static final double FINE = 1e-6;

  private static final double FITS = 1e-12;
  private static final double DEAD_VOLTS = 1e-6;
  private static final double LONGEST_STRIDE = 1e9;
  private final List<Branch.Load> loads = new ArrayList<>();
  private final List<Integer> numbers = new ArrayList<>();
  private final double bound;

  /**
   * What came of it.
   *
   * @param flow volts and currents; empty when they cannot be computed
   * @param settled whether the loads came to rest
   * @param tangentFailed whether the loads had no tangent answer at some volts over the highest
   *     answer: with all of them over their floors this proves that there is none
   */
  record Outcome(Optional<Flow> flow, boolean settled, boolean tangentFailed, int rounds) {}

  LoadLoop(Circuit circuit) {
    double sum = 0;
    for (int i = 0; i < circuit.branches().size(); i++) {
      Branch branch = circuit.branches().get(i);
      if (branch instanceof Branch.Load load) {
        loads.add(load);
        numbers.add(i);
      } else if (branch instanceof Branch.Source source) {
        sum += Math.abs(source.volts());
      }
    }
    bound = sum;
  }

  /** Writes loads at their least conductance into a network, for its structure. */
  void lay(Linear linear) {
    double[] at = new double[loads.size()];
    Arrays.fill(at, bound);
    lay(linear, at, false);
  }

  /** The loads, by number. */
  List<Integer> numbers() {
    return List.copyOf(numbers);
  }

  /** On the way down to where the loads rest. */
  static final class Descent {
    private final double[] at;

    /** Whether it begins at an answer to nearly the same, and is given up where that is no help. */
    private final boolean near;

    private double stride = 1;
    private boolean tangentFailed;
    private boolean fine;
    private int rounds;

    private Descent(double[] at, boolean near) {
      this.at = at;
      this.near = near;
      this.rounds = near ? 1 : 0;
    }
  }

  /** From no-load volts. */
  Descent fromNoLoad() {
    double[] at = new double[loads.size()];
    Arrays.fill(at, bound);
    return new Descent(at, false);
  }

  /**
   * From an answer to nearly the same; empty where a load is fed and yet under its floor, so that
   * there may be a higher one.
   *
   * @param volts of the branches in it
   */
  Optional<Descent> fromNear(IntToDoubleFunction volts) {
    double[] at = new double[loads.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = volts.applyAsDouble(numbers.get(i));
      double size = Math.abs(at[i]);
      if (!(size >= loads.get(i).floorV() || size < DEAD_VOLTS)) {
        return Optional.empty();
      }
    }
    return Optional.of(new Descent(at, true));
  }

  Outcome settle(Grid grid, Linear linear, int most) {
    return settle(grid, linear, most, fromNoLoad());
  }

  /**
   * Goes down until the loads rest, or so many rounds were made from the start of the descent. A
   * flow in which they do not rest is a rough one.
   */
  Outcome settle(Grid grid, Linear linear, int most, Descent down) {
    double[] at = down.at;
    int before = down.rounds;
    Optional<Flow> flow = Optional.empty();
    while (down.rounds < most) {
      down.rounds++;
      flow = Optional.empty();
      boolean rests = false;
      if (down.rounds > 1) {
        lay(linear, at, true);
        flow = (down.fine ? grid.solve(linear) : grid.rough(linear)).filter(Flow::isFinite);
        down.stride = flow.isPresent() ? 1 : longer(down.stride);
        down.tangentFailed |= flow.isEmpty();
        flow = flow.filter(found -> keepsSides(found, at));
        rests = flow.isPresent() && fits(flow.get(), at);
      }
      if (flow.isEmpty() && !down.near) {
        lay(linear, at, false);
        flow = grid.solve(linear).filter(Flow::isFinite);
      }
      if (flow.isEmpty()) {
        return new Outcome(flow, false, down.tangentFailed, down.rounds - before);
      }
      double moved = moved(at, flow.get(), down.stride);
      if (rests || moved <= SETTLED * bound) {
        return new Outcome(flow.map(grid::refined), true, down.tangentFailed, down.rounds - before);
      }
      down.fine |= moved <= FINE * bound;
    }
    return new Outcome(flow, false, down.tangentFailed, down.rounds - before);
  }

  /** The sum of the open volts of all sources: no load ever gets more. */
  double bound() {
    return bound;
  }

  /** The next stride where the tangents have no answer. */
  double longer(double stride) {
    return Math.min(2 * stride, LONGEST_STRIDE);
  }

  /**
   * Goes on from the volts of the loads to those of a flow.
   *
   * @param at the volts that it was solved with; changed
   * @return whether they are at rest
   */
  boolean move(double[] at, Flow flow, double stride) {
    return moved(at, flow, stride) <= SETTLED * bound;
  }

  private double moved(double[] at, Flow flow, double stride) {
    double moved = 0;
    for (int i = 0; i < at.length; i++) {
      double next = flow.across(numbers.get(i));
      moved = Math.max(moved, Math.abs(next - at[i]));
      at[i] = stride(at[i], next, stride);
    }
    return moved;
  }

  /** Whether the loads draw in a flow what their tangents at other volts say that they do. */
  private boolean fits(Flow flow, double[] tangentAt) {
    for (int i = 0; i < tangentAt.length; i++) {
      Branch.Load load = loads.get(i);
      double volts = flow.across(numbers.get(i));
      double draws = load.amps(volts);
      double before = load.amps(tangentAt[i]);
      double tangent = before + load.slope(tangentAt[i]) * (volts - tangentAt[i]);
      if (!(Math.abs(draws - tangent) <= FITS * Math.max(Math.abs(draws), Math.abs(before)))) {
        return false;
      }
    }
    return true;
  }

  /**
   * The volts to go on with. Where the tangents have no answer there is none above, so longer steps
   * pass over nothing; none takes more than half of what is left.
   */
  private static double stride(double before, double next, double stride) {
    double there = before + stride * (next - before);
    boolean falls = Math.abs(next) < Math.abs(before) && next * before > 0;
    return stride == 1 || !falls || Math.abs(next) < Math.abs(before) / 2
        ? next
        : Math.copySign(Math.max(Math.abs(before) / 2, there * Math.signum(before)), before);
  }

  /**
   * Writes loads into a network: as resistances that draw what they do at these volts, or as their
   * tangents there.
   */
  void lay(Linear linear, double[] at, boolean tangent) {
    for (int i = 0; i < at.length; i++) {
      Branch.Load load = loads.get(i);
      double slope = tangent ? load.slope(at[i]) : load.siemens(at[i]);
      double rest = tangent ? load.amps(at[i]) - slope * at[i] : 0;
      linear.set(numbers.get(i), slope, 0, rest);
    }
  }

  /** Whether every load stays on its side of its floor, and of zero, between two rounds. */
  boolean keepsSides(Flow flow, double[] before) {
    for (int i = 0; i < before.length; i++) {
      double floor = loads.get(i).floorV();
      double now = flow.across(numbers.get(i));
      if ((Math.abs(now) < floor) != (Math.abs(before[i]) < floor)
          || now * before[i] < 0
          || Math.abs(now) > bound * (1 + SETTLED)) {
        return false;
      }
    }
    return true;
  }
}
