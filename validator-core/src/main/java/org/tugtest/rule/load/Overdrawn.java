package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;

/**
 * Sources that give their greatest current in a state while no other source that is joined to their
 * plus gives or takes any: nothing holds the volts up.
 *
 * @param sources in the order of the network
 * @param loads what draws between their plus and minus, in the order of the network
 * @param mostA what the sources give together
 * @param wantedA what they would give without that limit; empty where even that has no answer
 */
record Overdrawn(
    OperatingPoint state,
    List<Edge.OfElement> sources,
    List<Edge.OfElement> loads,
    double mostA,
    OptionalDouble wantedA) {
  private static final double SOME_AMPS = 1e-6;

  /** All of a harness. */
  private record InAllStates(List<Overdrawn> all) {}

  /** All of a harness, in the order of the states. */
  static List<Overdrawn> all(Facts facts) {
    return facts
        .once(
            InAllStates.class,
            of -> {
              List<Overdrawn> all = new ArrayList<>();
              Live.all(of).forEach(live -> all.addAll(in(of.network(), live)));
              return new InAllStates(List.copyOf(all));
            })
        .all();
  }

  private static List<Overdrawn> in(Network network, Live live) {
    OperatingPoint state = live.state();
    Map<Point, List<Edge.OfElement>> limited = new LinkedHashMap<>();
    for (Edge.OfElement source : network.sources()) {
      if (state.solution().limited(network.number(source))) {
        limited.computeIfAbsent(live.group(source.a()), none -> new ArrayList<>()).add(source);
      }
    }
    for (Edge.OfElement source : network.sources()) {
      if (!state.solution().limited(network.number(source))
          && Math.abs(state.amps(source)) > SOME_AMPS) {
        limited.remove(live.group(source.a()));
      }
    }
    if (limited.isEmpty()) {
      return List.of();
    }
    Solution free = unlimited(state);
    List<Overdrawn> all = new ArrayList<>();
    limited.forEach(
        (plus, sources) -> {
          List<Edge.OfElement> loads = loads(network, live, plus);
          if (!loads.isEmpty()) {
            double most = -sources.stream().mapToDouble(state::amps).sum();
            all.add(new Overdrawn(state, sources, loads, most, amps(free, network, sources)));
          }
        });
    return all;
  }

  private static List<Edge.OfElement> loads(Network network, Live live, Point plus) {
    List<Edge.OfElement> loads = new ArrayList<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement user
          && (user.element() instanceof Element.Load || user.element() instanceof Element.Coil)
          && live.state().draws(user)
          && (live.group(user.a()).equals(plus) != live.group(user.b()).equals(plus))) {
        loads.add(user);
      }
    }
    return loads;
  }

  private static OptionalDouble amps(Solution free, Network network, List<Edge.OfElement> sources) {
    double amps = -sources.stream().mapToDouble(is -> free.amps(network.number(is))).sum();
    return free.troubles().isEmpty() ? OptionalDouble.of(amps) : OptionalDouble.empty();
  }

  /** The state with every source able to give any current. */
  private static Solution unlimited(OperatingPoint state) {
    Circuit circuit = state.solution().circuit();
    List<Branch> branches = new ArrayList<>(circuit.branches());
    for (int i = 0; i < branches.size(); i++) {
      if (branches.get(i) instanceof Branch.Source source) {
        branches.set(i, source.unlimited());
      }
    }
    return Solver.solve(new Circuit(circuit.nodes(), branches), state.solution().allPulled());
  }

  /** The open volts of the first of the sources, as they were reckoned with. */
  double openVolts(Network network) {
    Branch first = state.solution().circuit().branches().get(network.number(sources.get(0)));
    return first instanceof Branch.Source source ? source.volts() : 0;
  }

  /** The fewest volts at one of the sources. */
  double volts() {
    return sources.stream().mapToDouble(state::across).min().orElse(0);
  }

  /** The identity of the finding about these sources. */
  String identity() {
    return sources.stream()
        .map(Edge::subject)
        .sorted()
        .map(Subject::place)
        .collect(Collectors.joining(",", SourceOverloaded.ID + "(", ")"));
  }

  /** Whether a load hangs on them. */
  boolean feeds(Edge.OfElement load) {
    return loads.contains(load);
  }
}
