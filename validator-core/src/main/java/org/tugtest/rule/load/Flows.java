package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/**
 * What brings current to each point in one state and what takes it away, loads and coils left out.
 * Told once for a point: a bar that hundreds of loads share would be looked over for each of them.
 */
final class Flows {
  private static final double LEAST_AMPS = 1e-9;
  private final OperatingPoint state;
  private final Network network;
  private final Map<Point, List<Flow>> bringing = new ConcurrentHashMap<>();
  private final Map<Point, List<Flow>> taking = new ConcurrentHashMap<>();

  /**
   * A current through an edge.
   *
   * @param amps above 0
   */
  record Flow(Edge edge, double amps) {}

  /** The flows in each state that was asked for. */
  private record InStates(Map<OperatingPoint, Flows> known) {}

  private Flows(OperatingPoint state, Network network) {
    this.state = state;
    this.network = network;
  }

  /** The flows in a state of a harness. */
  static Flows in(Facts facts, OperatingPoint state) {
    return facts
        .once(InStates.class, none -> new InStates(new ConcurrentHashMap<>()))
        .known()
        .computeIfAbsent(state, point -> new Flows(point, facts.network()));
  }

  /** What brings current to a point, the most first. */
  List<Flow> bringing(Point at) {
    return bringing.computeIfAbsent(at, point -> flows(point, true));
  }

  /** What takes current from a point, the most first. */
  List<Flow> taking(Point at) {
    return taking.computeIfAbsent(at, point -> flows(point, false));
  }

  private List<Flow> flows(Point at, boolean bringing) {
    List<Flow> flows = new ArrayList<>(2);
    for (Edge edge : network.edgesAt(at)) {
      if (!isUser(edge)) {
        double towards = edge.b().equals(at) ? state.amps(edge) : -state.amps(edge);
        double amps = bringing ? towards : -towards;
        if (amps > LEAST_AMPS) {
          flows.add(new Flow(edge, amps));
        }
      }
    }
    flows.sort(Comparator.comparingDouble((Flow flow) -> -flow.amps()));
    return flows;
  }

  private static boolean isUser(Edge edge) {
    return edge instanceof Edge.OfElement inside
        && (inside.element() instanceof Element.Load || inside.element() instanceof Element.Coil);
  }
}
