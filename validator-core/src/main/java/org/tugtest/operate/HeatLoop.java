package org.tugtest.operate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.heat.LoomHeat;
import org.tugtest.heat.LoomSections;
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
  private final Map<String, Integer> placeOf = new HashMap<>();
  private final int[] placeOfEdge;
  private final int[] edgeOfHeated;
  private final List<List<LoomSections.Stretch>> stretches = new ArrayList<>();
  private final LoomWarmth cold;
  private final double[] coldC;

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
    private final int[] placeOfEdge;
    private final double[] celsius;
    private final ConductorTemperature air;

    Warm(
        Map<String, Integer> placeOf,
        int[] placeOfEdge,
        double[] celsius,
        ConductorTemperature air) {
      this.placeOf = placeOf;
      this.placeOfEdge = placeOfEdge;
      this.celsius = celsius;
      this.air = air;
    }

    @Override
    public double celsius(Wire wire) {
      Integer place = placeOf.get(wire.id());
      return place == null ? air.celsius(wire) : celsius[place];
    }

    @Override
    public double celsius(int edge, Wire wire) {
      int place = placeOfEdge[edge];
      return place < 0 ? air.celsius(wire) : celsius[place];
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
    List<Wire> wires = List.copyOf(harness.wires().values());
    wires.forEach(wire -> placeOf.put(wire.id(), placeOf.size()));
    Map<String, Integer> edgeOf = new HashMap<>();
    this.placeOfEdge = new int[network.edges().size()];
    for (int i : unchanging.wireEdges()) {
      String id = ((Edge.OfWire) network.edges().get(i)).wire().id();
      edgeOf.put(id, i);
      placeOfEdge[i] = placeOf.getOrDefault(id, -1);
    }
    this.edgeOfHeated =
        heat.wires().stream().mapToInt(wire -> edgeOf.getOrDefault(wire, -1)).toArray();
    this.cold = heat.at(wire -> 0, null);
    this.coldC = new double[wires.size()];
    for (int i = 0; i < coldC.length; i++) {
      stretches.add(cold.sections().of(wires.get(i).id()));
      coldC[i] = cold.mean(stretches.get(i)).orElse(air.celsius(wires.get(i)));
    }
  }

  /**
   * Settles a state that is entered with these coils pulled; null: none. Where there is an answer
   * in the cold and none as it warms up, the cold one is given, as not settled.
   */
  Outcome settle(Intent intent, @Nullable List<Integer> pulled) {
    LoomWarmth warmth = cold;
    double[] made = coldC;
    double[] used = coldC;
    Drawn drawn = null;
    Solution earlier = null;
    double step = 1;
    double last = Double.POSITIVE_INFINITY;
    Outcome first = null;
    for (int round = 1; ; round++) {
      ConductorTemperature temperature = new Warm(placeOf, placeOfEdge, used, air);
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
      if (first == null) {
        boolean certain = !steady(solution);
        Rest rest = new Rest(null, null, certain, new BitSet());
        first = new Outcome(List.copyOf(drawn.figures()), temperature, solution, rest);
      }
      if (!steady(solution)) {
        return first;
      }
      Solution mean = mean(drawn, solution);
      LoomWarmth now = heat.at(wire -> heatAmps(edgeOfHeated[wire], solution, mean), warmth);
      made = means(now, warmth, made);
      warmth = now;
      double moved = moved(used, made);
      if (moved < SETTLED_K || round == MOST_ROUNDS) {
        Rest rest = new Rest(mean, warmth, moved < SETTLED_K, unknown(drawn, solution));
        return new Outcome(List.copyOf(drawn.figures()), temperature, solution, rest);
      }
      step = moved > SHRINKS * last ? Math.max(LEAST_STEP, step / 2) : step;
      last = moved;
      used = towards(used, made, step);
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

  /** The mean temperatures of all wires; those of wires along which nothing changed are kept. */
  private double[] means(LoomWarmth warmth, LoomWarmth before, double[] beforeC) {
    double[] means = beforeC.clone();
    for (int i = 0; i < means.length; i++) {
      if (!warmth.same(stretches.get(i), before)) {
        means[i] = warmth.mean(stretches.get(i)).orElse(means[i]);
      }
    }
    return means;
  }

  private static double moved(double[] used, double[] made) {
    double most = 0;
    for (int i = 0; i < used.length; i++) {
      most = Math.max(most, Math.abs(made[i] - used[i]));
    }
    return most;
  }

  private static double[] towards(double[] used, double[] made, double step) {
    double[] next = new double[used.length];
    for (int i = 0; i < used.length; i++) {
      next[i] = used[i] + step * (made[i] - used[i]);
    }
    return next;
  }

  /** The solution with the mean of the loads that do not draw all the time; null: all do. */
  private @Nullable Solution mean(Drawn drawn, Solution solution) {
    boolean some = false;
    for (int i : unchanging.loadEdges()) {
      some |=
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

  /**
   * The root mean square of a current that goes between 0 and its greatest: never more than the
   * root of its greatest times its mean, which it is where all that draws does so together. 0 where
   * there is no such edge.
   */
  static double heatAmps(int edge, Solution solution, @Nullable Solution mean) {
    if (edge < 0) {
      return 0;
    }
    double most = Math.abs(solution.amps(edge));
    double middle = mean == null ? most : Math.abs(mean.amps(edge));
    return Math.sqrt(Math.max(most, middle) * middle);
  }
}
