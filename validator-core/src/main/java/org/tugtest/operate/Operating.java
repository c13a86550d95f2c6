package org.tugtest.operate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.heat.Beside;
import org.tugtest.heat.LoomHeat;
import org.tugtest.heat.LoomSections;
import org.tugtest.model.Harness;
import org.tugtest.model.State;
import org.tugtest.network.Network;
import org.tugtest.network.WorkingResistances;
import org.tugtest.solve.Grids;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;
import org.tugtest.threads.ManyHands;

/** The operating points of a harness: one for each of its states, in the order of their names. */
public final class Operating {
  private final WorkingResistances resistances;
  private final Map<String, OperatingPoint> points;

  private Operating(WorkingResistances resistances, Map<String, OperatingPoint> points) {
    this.resistances = resistances;
    this.points = points;
  }

  /**
   * Solves all states with wires as warm as the air; a harness without states is solved as drawn.
   */
  public static Operating of(
      Harness harness, Network network, WorkingResistances resistances, ConductorTemperature air) {
    return of(harness, network, resistances, air, null);
  }

  /**
   * Solves all states, those that last with wires as warm as their currents make them. A brief
   * state ends long before that, so its wires are as warm as the air.
   *
   * @param heat of the looms; null: no wire is warmer than the air
   */
  public static Operating of(
      Harness harness,
      Network network,
      WorkingResistances resistances,
      ConductorTemperature air,
      @Nullable LoomHeat heat) {
    Grids grids = new Grids();
    Unchanging unchanging = new Unchanging(network, resistances, harness.defaults().nominalV());
    HeatLoop loop =
        heat == null
            ? null
            : new HeatLoop(harness, network, resistances, unchanging, air, heat, grids);
    List<@Nullable State> order = new ArrayList<>(inOrder(harness.states()));
    if (order.isEmpty()) {
      order.add(null);
    }
    Map<String, OperatingPoint> solved = new ConcurrentHashMap<>();
    for (List<@Nullable State> wave : waves(order)) {
      ManyHands.all(
          wave.stream()
              .map(
                  state ->
                      (Runnable)
                          () -> {
                            OperatingPoint point =
                                point(
                                    harness,
                                    network,
                                    resistances,
                                    unchanging,
                                    air,
                                    loop,
                                    state,
                                    solved,
                                    grids);
                            solved.put(point.state(), point);
                          })
              .toList());
    }
    Map<String, OperatingPoint> points = new LinkedHashMap<>();
    harness.states().keySet().forEach(id -> points.put(id, solved.get(id)));
    if (points.isEmpty()) {
      points.putAll(solved);
    }
    return new Operating(resistances, points);
  }

  private static OperatingPoint point(
      Harness harness,
      Network network,
      WorkingResistances resistances,
      Unchanging unchanging,
      ConductorTemperature air,
      @Nullable HeatLoop loop,
      @Nullable State state,
      Map<String, OperatingPoint> before,
      Grids grids) {
    String from = state == null ? null : state.from();
    OperatingPoint entered = from == null ? null : before.get(from);
    List<Integer> pulled = entered == null ? null : entered.solution().allPulled();
    if (loop == null || (state != null && state.brief())) {
      return entered(harness, network, resistances, unchanging, air, state, pulled, grids);
    }
    Intent intent = new Intent(harness, state);
    HeatLoop.Outcome end = loop.settle(intent, pulled);
    return new OperatingPoint(
        state, network, intent, end.figures(), end.solution(), end.temperature(), end.rest());
  }

  /** States that wait for none of each other: those entered from a state stand in a later wave. */
  private static List<List<@Nullable State>> waves(List<@Nullable State> order) {
    Map<String, Integer> waveOf = new HashMap<>();
    List<List<@Nullable State>> waves = new ArrayList<>();
    for (State state : order) {
      String from = state == null ? null : state.from();
      int wave = from == null ? 0 : waveOf.getOrDefault(from, -1) + 1;
      if (state != null) {
        waveOf.put(state.id(), wave);
      }
      if (wave == waves.size()) {
        waves.add(new ArrayList<>());
      }
      waves.get(wave).add(state);
    }
    return waves;
  }

  /**
   * One state with wires as warm as the air.
   *
   * @param state null: the harness as drawn
   * @param pulled numbers of the coils that were pulled in the state before; null: none was
   * @param grids of this network
   */
  public static OperatingPoint entered(
      Harness harness,
      Network network,
      WorkingResistances resistances,
      ConductorTemperature air,
      @Nullable State state,
      @Nullable List<Integer> pulled,
      Grids grids) {
    Unchanging unchanging = new Unchanging(network, resistances, harness.defaults().nominalV());
    return entered(harness, network, resistances, unchanging, air, state, pulled, grids);
  }

  private static OperatingPoint entered(
      Harness harness,
      Network network,
      WorkingResistances resistances,
      Unchanging unchanging,
      ConductorTemperature air,
      @Nullable State state,
      @Nullable List<Integer> pulled,
      Grids grids) {
    Intent intent = new Intent(harness, state);
    Drawn drawn =
        new Drawn(harness, network, resistances, unchanging, air, intent, Drawn.Draws.WHILE_ON);
    Solution solution = Solver.solve(drawn.circuit(), pulled, grids);
    return new OperatingPoint(state, network, intent, drawn.figures(), solution, air, null);
  }

  /** Every operating point. */
  public List<OperatingPoint> all() {
    return List.copyOf(points.values());
  }

  /** Those that last. */
  public List<OperatingPoint> lasting() {
    return all().stream().filter(state -> !state.brief()).toList();
  }

  /** The operating point of a state; empty when there is no such state. */
  public Optional<OperatingPoint> in(String state) {
    return Optional.ofNullable(points.get(state));
  }

  /**
   * What flows beside wires in the states that last and have currents that do; nothing is known
   * where nothing flows in any of them.
   *
   * @param lasts whether what a state comes to can last; a short does not
   */
  public Beside beside(LoomSections sections, Predicate<OperatingPoint> lasts) {
    List<Beside.State> states = new ArrayList<>();
    Set<String> unknown = new LinkedHashSet<>();
    for (OperatingPoint point : points.values().stream().filter(lasts).toList()) {
      point.warmth().ifPresent(warmth -> states.add(new Beside.State(point.state(), warmth)));
      unknown.addAll(point.unknownWires());
    }
    boolean some = points.values().stream().anyMatch(OperatingPoint::flows);
    return new Beside(sections, some ? states : List.of(), unknown);
  }

  /** The resistances that were reckoned with. */
  public WorkingResistances resistances() {
    return resistances;
  }

  /** States after those they are entered from; of a ring, the first by name starts afresh. */
  private static List<State> inOrder(Map<String, State> states) {
    Set<String> done = new LinkedHashSet<>();
    for (State state : states.values()) {
      List<String> way = new ArrayList<>();
      String at = state.id();
      while (at != null && states.containsKey(at) && !done.contains(at) && !way.contains(at)) {
        way.add(0, at);
        at = states.get(at).from();
      }
      done.addAll(way);
    }
    return done.stream().map(states::get).toList();
  }
}
