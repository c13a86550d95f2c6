package org.tugtest.rule.load;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;

/**
 * What brings current to each point in one state and what takes it away, loads and coils left out:
 * found once for all points, since a bar that hundreds of loads share would be looked over for each
 * of them. Only the numbers of the edges are kept.
 */
final class Flows {
  private static final double LEAST_AMPS = 1e-9;
  private final OperatingPoint state;
  private final Network network;

  /** For every point where what brings current begins, then where what takes it does. */
  private final int[] firstAt;

  private final int[] edges;

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
    int points = network.points().size();
    firstAt = new int[2 * points + 1];
    int[] found = new int[2 * network.edges().size()];
    int count = 0;
    for (int i = 0; i < 2 * points; i++) {
      firstAt[i] = count;
      for (Flow flow : flows(i / 2, i % 2 == 0)) {
        found[count++] = flow.edge().number();
      }
    }
    firstAt[2 * points] = count;
    edges = Arrays.copyOf(found, count);
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
    return new Kept(at, 0);
  }

  /** What takes current from the point that stands there in the network, the most first. */
  List<Flow> taking(int at) {
    return new Kept(at, 1);
  }

  /** Flows of which the edges stand in a row, each made when it is asked for. */
  private final class Kept extends AbstractList<Flow> {
    private final int at;
    private final int from;
    private final int to;

    Kept(int at, int side) {
      this.at = at;
      this.from = firstAt[2 * at + side];
      this.to = firstAt[2 * at + side + 1];
    }

    @Override
    public Flow get(int index) {
      int number = edges[Objects.checkIndex(index, to - from) + from];
      Edge edge = network.edges().get(number);
      return new Flow(edge, network.across(number, at), Math.abs(state.amps(edge)));
    }

    @Override
    public int size() {
      return to - from;
    }
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
