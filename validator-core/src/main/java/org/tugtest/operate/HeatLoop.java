package org.tugtest.operate;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.heat.LoomHeat;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Resistance;
import org.tugtest.network.WorkingResistances;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Grids;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;
import org.tugtest.solve.Trouble;

/**
 * Runs solve and heat in turn for one state until no wire's mean temperature moves by {@value
 * #SETTLED_K} K. Steps that do not shrink are halved: where warmth lowers a current that makes it,
 * whole steps would swing for ever.
 */
final class HeatLoop {
  private static final double SETTLED_K = 0.05;
  private static final int MOST_ROUNDS = 60;
  private static final double LEAST_STEP = 1.0 / 32;
  private static final double SHRINKS = 0.7;
  private static final double WHOLE = 100;
  private static final double SOME_AMPS = 1e-6;
  private final Harness harness;
  private final Network network;
  private final WorkingResistances resistances;
  private final Unchanging unchanging;
  private final ConductorTemperature air;
  private final LoomHeat heat;
  private final Grids grids;
  private final Map<String, Integer> edgeOf = new HashMap<>();
  private final List<Wire> wires;
  private final Map<String, Integer> placeOf = new HashMap<>();

  /**
   * What came of it.
   *
   * @param figures what the branches of the circuit that was solved last rest on
   * @param temperature of the wires in it
   * @param rest what else is asked of it
   */
  record Outcome(
      List<Resistance> figures, ConductorTemperature temperature, Solution solution, Rest rest) {}

  /**
   * How it came to rest.
   *
   * @param mean the solution with the mean of loads that draw only a share of the time; null where
   *     all draw all the time
   * @param warmth what its currents lead to; null where the circuit has no steady answer
   * @param settled whether nothing moves any more; true also where there is no answer in the cold
   * @param unknown edges whose current depends on loads of which nothing says what they draw
   */
  record Rest(
      @Nullable Solution mean, @Nullable LoomWarmth warmth, boolean settled, BitSet unknown) {}

  /** Wires as warm as this, in their order; others as warm as the air. */
  private static final class Warm implements ConductorTemperature {
    private final Map<String, Integer> placeOf;
    private final double[] celsius;
    private final ConductorTemperature air;

    Warm(Map<String, Integer> placeOf, double[] celsius, ConductorTemperature air) {
      this.placeOf = placeOf;
      this.celsius = celsius;
      this.air = air;
    }

    @Override
    public double celsius(Wire wire) {
      Integer place = placeOf.get(wire.id());
      return place == null ? air.celsius(wire) : celsius[place];
    }
  }

  HeatLoop(
      Harness harness,
      Network network,
      WorkingResistances resistances,
      Unchanging unchanging,
      ConductorTemperature air,
      LoomHeat heat,
      Grids grids) {
    this.harness = harness;
    this.network = network;
    this.resistances = resistances;
    this.unchanging = unchanging;
    this.air = air;
    this.heat = heat;
    this.grids = grids;
    for (int i = 0; i < network.edges().size(); i++) {
      if (network.edges().get(i) instanceof Edge.OfWire wire) {
        edgeOf.put(wire.wire().id(), i);
      }
    }
    this.wires = List.copyOf(harness.wires().values());
    wires.forEach(wire -> placeOf.put(wire.id(), placeOf.size()));
  }

  /**
   * Settles a state that is entered with these coils pulled; null: none. Where there is an answer
   * in the cold and none as it warms up, the cold one is given, as not settled.
   */
  Outcome settle(Intent intent, @Nullable List<Integer> pulled) {
    LoomWarmth warmth = heat.at(wire -> 0, null);
    double[] used = new double[wires.size()];
    for (int i = 0; i < used.length; i++) {
      used[i] = warmth.mean(wires.get(i).id()).orElse(air.celsius(wires.get(i)));
    }
    Drawn drawn = null;
    Solution earlier = null;
    double step = 1;
    double last = Double.POSITIVE_INFINITY;
    Outcome cold = null;
    for (int round = 1; ; round++) {
      ConductorTemperature temperature = new Warm(placeOf, used, air);
      drawn =
          drawn == null
              ? new Drawn(
                  harness,
                  network,
                  resistances,
                  unchanging,
                  temperature,
                  intent,
                  Drawn.Draws.WHILE_ON)
              : drawn.warmed(temperature);
      Solution solution =
          earlier == null
              ? Solver.solve(drawn.circuit(), pulled, grids)
              : Solver.again(drawn.circuit(), pulled, earlier, grids);
      earlier = solution;
      if (cold == null) {
        boolean certain = !steady(solution);
        Rest rest = new Rest(null, null, certain, new BitSet());
        cold = new Outcome(List.copyOf(drawn.figures()), temperature, solution, rest);
      }
      if (!steady(solution)) {
        return cold;
      }
      Solution mean = mean(drawn, solution);
      warmth = heat.at(wire -> heatAmps(wire, solution, mean), warmth);
      double moved = moved(used, warmth);
      if (moved < SETTLED_K || round == MOST_ROUNDS) {
        Rest rest = new Rest(mean, warmth, moved < SETTLED_K, unknown(drawn, solution));
        return new Outcome(List.copyOf(drawn.figures()), temperature, solution, rest);
      }
      step = moved > SHRINKS * last ? Math.max(LEAST_STEP, step / 2) : step;
      last = moved;
      used = towards(used, warmth, step);
    }
  }

  /** Whether currents that last were found: those of a collapse or of chatter heat nothing. */
  private static boolean steady(Solution solution) {
    return solution.troubles().stream()
        .allMatch(
            trouble ->
                trouble instanceof Trouble.HoldsItself
                    || trouble instanceof Trouble.ShortedSources);
  }

  private double moved(double[] used, LoomWarmth warmth) {
    double most = 0;
    for (int i = 0; i < used.length; i++) {
      double to = warmth.mean(wires.get(i).id()).orElse(used[i]);
      most = Math.max(most, Math.abs(to - used[i]));
    }
    return most;
  }

  private double[] towards(double[] used, LoomWarmth warmth, double step) {
    double[] next = new double[used.length];
    for (int i = 0; i < used.length; i++) {
      double from = used[i];
      next[i] = from + step * (warmth.mean(wires.get(i).id()).orElse(from) - from);
    }
    return next;
  }

  /** The solution with the mean of the loads that do not draw all the time; null: all do. */
  private @Nullable Solution mean(Drawn drawn, Solution solution) {
    boolean some = false;
    for (int i = 0; i < network.edges().size() && !some; i++) {
      some =
          network.edges().get(i) instanceof Edge.OfElement inside
              && inside.element() instanceof Element.Load load
              && load.dutyPercent() < WHOLE
              && solution.amps(i) != 0;
    }
    if (!some) {
      return null;
    }
    Circuit less = drawn.taking(Drawn.Draws.MEAN).circuit();
    return Solver.again(less, solution.allPulled(), solution, grids);
  }

  /** The edges through which something else flows when those loads draw an ampere. */
  private BitSet unknown(Drawn drawn, Solution solution) {
    BitSet unknown = new BitSet();
    if (drawn.lacksDraws()) {
      Circuit more = drawn.taking(Drawn.Draws.ASSUMED).circuit();
      Solution assumed = Solver.again(more, solution.allPulled(), solution, grids);
      for (int i = 0; i < network.edges().size(); i++) {
        unknown.set(i, Math.abs(assumed.amps(i) - solution.amps(i)) > SOME_AMPS);
      }
    }
    return unknown;
  }

  private double heatAmps(String wire, Solution solution, @Nullable Solution mean) {
    Integer edge = edgeOf.get(wire);
    return edge == null ? 0 : heatAmps(edge, solution, mean);
  }

  /**
   * The root mean square of a current that goes between 0 and its greatest: never more than the
   * root of its greatest times its mean, which it is where all that draws does so together.
   */
  static double heatAmps(int edge, Solution solution, @Nullable Solution mean) {
    double most = Math.abs(solution.amps(edge));
    double middle = mean == null ? most : Math.abs(mean.amps(edge));
    return Math.sqrt(Math.max(most, middle) * middle);
  }
}
