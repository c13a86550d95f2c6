package org.tugtest.operate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.model.Element;
import org.tugtest.model.State;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Resistance;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Trouble;

/** Volts, currents and relay positions of a harness in one state. Immutable. */
public final class OperatingPoint {
  /** The state of a harness that names none. */
  public static final String AS_DRAWN = "as drawn";

  /** Current under which nothing is said to flow, in amperes. */
  private static final double SOME_AMPS = 1e-6;

  private final @Nullable State state;
  private final Network network;
  private final Intent intent;
  private final ConductorTemperature temperature;
  private final List<Resistance> figures;
  private final Solution solution;
  private final HeatLoop.@Nullable Rest heat;

  /** Told when first asked for; two threads that ask at once tell the same. */
  private volatile @Nullable Map<Integer, Rests> rests;

  OperatingPoint(
      @Nullable State state,
      Network network,
      Intent intent,
      List<Resistance> figures,
      Solution solution,
      ConductorTemperature temperature,
      HeatLoop.@Nullable Rest heat) {
    this.state = state;
    this.network = network;
    this.intent = intent;
    this.temperature = temperature;
    this.figures = List.copyOf(figures);
    this.solution = solution;
    this.heat = heat;
  }

  /** The name of the state. */
  public String state() {
    return state == null ? AS_DRAWN : state.id();
  }

  /** Whether the state lasts less than two minutes. */
  public boolean brief() {
    return state != null && state.brief();
  }

  /** The state it is entered from. */
  public Optional<String> from() {
    return Optional.ofNullable(state).map(State::from);
  }

  /**
   * Volts of a point against the minus of the first source of its island that is no generator, else
   * of its first generator; empty where nothing is live or the harness has no such point.
   */
  public OptionalDouble volts(Point point) {
    int at = network.index(point);
    return at < 0 ? OptionalDouble.empty() : solution.volts(at);
  }

  /** Whether a point is on an island with a source that gives. */
  public boolean powered(Point point) {
    return volts(point).isPresent();
  }

  /** The current through an edge in amperes; {@code a} to {@code b} is positive. */
  public double amps(Edge edge) {
    return solution.amps(number(edge));
  }

  /** The power that goes into an edge, in watts; negative for a source that gives. */
  public double watts(Edge edge) {
    return solution.watts(number(edge));
  }

  /** Volts from {@code a} to {@code b} of an edge; 0 where one of them is not live. */
  public double across(Edge edge) {
    return solution.across(number(edge));
  }

  /**
   * The temperature of a wire's conductor that its resistance was reckoned with, in degrees
   * Celsius: its mean along the way, as the resistance rises straight with it; in a brief state
   * that of the air at its warmer end.
   */
  public double celsius(Wire wire) {
    return temperature.celsius(wire);
  }

  /**
   * How warm the wires become in it, piece by piece; empty for a brief state, which ends long
   * before they do, and where its currents have no steady answer.
   */
  public Optional<LoomWarmth> warmth() {
    return Optional.ofNullable(heat).map(HeatLoop.Rest::warmth);
  }

  /** Whether currents and temperatures came to rest together; always so in a brief state. */
  public boolean warmthSettled() {
    return heat == null || heat.settled();
  }

  /**
   * The current through an edge that heats it, in amperes: the root mean square, for loads that
   * draw only a share of the time no less than if they all drew together. Never negative.
   */
  public double heatAmps(Edge edge) {
    return HeatLoop.heatAmps(number(edge), solution, heat == null ? null : heat.mean());
  }

  /**
   * Whether the current through an edge is known in a lasting state: no load that it feeds leaves
   * open what it draws.
   */
  public boolean ampsKnown(Edge edge) {
    return heat == null || !heat.unknown().get(number(edge));
  }

  /** Whether it lasts and anything flows in it. */
  public boolean flows() {
    return warmth().isPresent()
        && network.edges().stream().anyMatch(edge -> Math.abs(amps(edge)) > SOME_AMPS);
  }

  /** The wires whose current is not known. */
  List<String> unknownWires() {
    List<String> wires = new ArrayList<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfWire wire && !ampsKnown(edge)) {
        wires.add(wire.wire().id());
      }
    }
    return wires;
  }

  /** The mean current through an edge over the times that its loads draw and do not draw. */
  public double meanAmps(Edge edge) {
    Solution mean = heat == null ? null : heat.mean();
    return mean == null ? amps(edge) : mean.amps(number(edge));
  }

  /** The resistance of an edge that was reckoned with; 0 ohms for a source, load, coil or diode. */
  public Resistance resistance(Edge edge) {
    return figures.get(number(edge));
  }

  /** Whether a contact is closed. */
  public boolean closed(Edge.OfElement contact) {
    Branch branch = branch(contact);
    if (branch instanceof Branch.Contact moved) {
      return moved.closed(solution.pulled(moved.coil()));
    }
    return branch instanceof Branch.Resistor;
  }

  /** Whether an edge lets current through as it stands: an open contact or empty way does not. */
  public boolean conducts(Edge edge) {
    if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Contact) {
      return closed(inside);
    }
    return !(branch(edge) instanceof Branch.Open);
  }

  /** Whether a coil is pulled. */
  public boolean pulled(Edge.OfElement coil) {
    return solution.pulled(number(coil));
  }

  /** Whether the state wants a load or coil to work. */
  public boolean wanted(Edge.OfElement load) {
    return intent.wanted(load);
  }

  /** Whether current flows through a load or coil. */
  public boolean draws(Edge.OfElement load) {
    return Math.abs(amps(load)) > SOME_AMPS;
  }

  /** Whether a source gives in this state: always, a generator only where it runs. */
  public boolean gives(Edge.OfElement source) {
    return intent.gives(source);
  }

  /** The position of a device. */
  public String position(String device) {
    return intent.position(device);
  }

  /** What is wrong with the answer. */
  public List<Trouble> troubles() {
    return solution.troubles();
  }

  /** The edges that a trouble is about. */
  public List<Edge> edges(Trouble trouble) {
    return edges(trouble.branches());
  }

  /** The edges of these branches of the solution. */
  public List<Edge> edges(List<Integer> branches) {
    return branches.stream().map(network.edges()::get).toList();
  }

  /** The solution behind this; its nodes and branches are the network's points and edges. */
  public Solution solution() {
    return solution;
  }

  /**
   * What the figures on the island of a point rest on.
   *
   * @param basis the weakest figure of all that carries current there
   * @param standIns what carries current there though a part of its figure is not known
   */
  public record Rests(Basis basis, List<Edge> standIns) {
    public Rests {
      standIns = List.copyOf(standIns);
    }

    /** No current flows there. */
    static final Rests ON_NOTHING = new Rests(Basis.GIVEN, List.of());
  }

  /** What the figures on the island of a point rest on. */
  public Rests rests(Point point) {
    Map<Integer, Rests> known = rests;
    if (known == null) {
      known = restsByIsland();
      rests = known;
    }
    int at = network.index(point);
    return at < 0 ? Rests.ON_NOTHING : known.getOrDefault(solution.island(at), Rests.ON_NOTHING);
  }

  /** What the figures of each island rest on, by its number, told in one walk over all edges. */
  private Map<Integer, Rests> restsByIsland() {
    Map<Integer, Basis> weakest = new HashMap<>();
    Map<Integer, List<Edge>> standIns = new HashMap<>();
    for (int i = 0; i < figures.size(); i++) {
      if (Math.abs(solution.amps(i)) > SOME_AMPS) {
        Edge edge = network.edges().get(i);
        Resistance figure = figures.get(i);
        int island = solution.island(network.index(edge.a()));
        weakest.merge(island, figure.basis(), Basis::weaker);
        List<Edge> its = standIns.computeIfAbsent(island, none -> new ArrayList<>());
        if (!figure.known()) {
          its.add(edge);
        }
      }
    }
    Map<Integer, Rests> rests = new HashMap<>();
    weakest.forEach(
        (island, basis) ->
            rests.put(island, new Rests(basis, standIns.getOrDefault(island, List.of()))));
    return rests;
  }

  private Branch branch(Edge edge) {
    return solution.circuit().branches().get(number(edge));
  }

  private int number(Edge edge) {
    int number = network.number(edge);
    if (number < 0) {
      throw new IllegalArgumentException(edge.text() + " is not in this network");
    }
    return number;
  }
}
