package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;

/**
 * What brings current to each point in one state and what takes it away, loads and coils left out.
 * Told once for a point: a bar that hundreds of loads share would be looked over for each of them.
 */
final class Flows {
  private static final double LEAST_AMPS = 1e-9;
  private final OperatingPoint state;
  private final Network network;
  private final AtomicReferenceArray<List<Flow>> bringing;
  private final AtomicReferenceArray<List<Flow>> taking;

  /**
   * A current through an edge.
   *
   * @param to where the point at its other end stands in the network
   * @param amps above 0
   */
  record Flow(Edge edge, int to, double amps) {}

  /** The flows in each state that was asked for. */
  private record InStates(Map<OperatingPoint, Flows> known) {}

  private Flows(OperatingPoint state, Network network) {
    this.state = state;
    this.network = network;
    this.bringing = new AtomicReferenceArray<>(network.points().size());
    this.taking = new AtomicReferenceArray<>(network.points().size());
  }

  /** The network they are in. */
  Network network() {
    return network;
  }

  /** The flows in a state of a harness. */
  static Flows in(Facts facts, OperatingPoint state) {
    return facts
        .once(InStates.class, none -> new InStates(new ConcurrentHashMap<>()))
        .known()
        .computeIfAbsent(state, point -> new Flows(point, facts.network()));
  }

  /** What brings current to the point that stands there in the network, the most first. */
  List<Flow> bringing(int at) {
    return told(bringing, at, true);
  }

  /** What takes current from the point that stands there in the network, the most first. */
  List<Flow> taking(int at) {
    return told(taking, at, false);
  }

  private List<Flow> told(AtomicReferenceArray<List<Flow>> known, int at, boolean brings) {
    List<Flow> flows = known.get(at);
    if (flows == null) {
      flows = flows(at, brings);
      known.set(at, flows);
    }
    return flows;
  }

  private List<Flow> flows(int at, boolean brings) {
    List<Flow> flows = new ArrayList<>(2);
    for (int i = 0; i < network.degree(at); i++) {
      int number = network.edgeAt(at, i);
      Edge edge = network.edges().get(number);
      if (!isUser(edge)) {
        double amps = state.amps(edge);
        double towards = network.indexOfB(number) == at ? amps : -amps;
        double here = brings ? towards : -towards;
        if (here > LEAST_AMPS) {
          flows.add(new Flow(edge, network.across(number, at), here));
        }
      }
    }
    if (flows.size() > 1) {
      flows.sort(Comparator.comparingDouble((Flow flow) -> -flow.amps()));
    }
    return flows;
  }

  private static boolean isUser(Edge edge) {
    return edge instanceof Edge.OfElement inside
        && (inside.element() instanceof Element.Load || inside.element() instanceof Element.Coil);
  }
}
