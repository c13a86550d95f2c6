package org.tugtest.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;

/**
 * Which points are one, by wires, plugged contacts, splices and bolted metal alone: what a meter
 * shows as joined with every fuse pulled and every switch open. Every point is in exactly one net.
 */
public final class Nets {
  private final Network network;
  private final int[] netOf;
  private final List<Net> nets;

  private Nets(Network network, int[] netOf, List<Net> nets) {
    this.network = network;
    this.netOf = netOf;
    this.nets = nets;
  }

  /** The nets of a harness; near linear in its size. */
  public static Nets of(Harness harness, Wiring wiring, Network network) {
    Joined joined = new Joined(network.points().size());
    for (int i = 0; i < network.edges().size(); i++) {
      if (!(network.edges().get(i) instanceof Edge.OfElement)) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
      }
    }
    int[] netOf = joined.numbered();
    int count = Arrays.stream(netOf).max().orElse(-1) + 1;
    List<List<Point>> points = lists(count);
    List<List<Wire>> wires = lists(count);
    for (int i = 0; i < netOf.length; i++) {
      points.get(netOf[i]).add(network.points().get(i));
    }
    for (Wire wire : harness.wires().values()) {
      Network.end(wiring, new WireEnd(wire, true))
          .or(() -> Network.end(wiring, new WireEnd(wire, false)))
          .ifPresent(point -> wires.get(netOf[network.index(point)]).add(wire));
    }
    List<Net> nets = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      nets.add(new Net(points.get(i), wires.get(i)));
    }
    return new Nets(network, netOf, nets);
  }

  /** All nets, those of a single point included, by their first points. */
  public List<Net> all() {
    return Collections.unmodifiableList(nets);
  }

  /** The net that a point is in; empty when the harness has no such point. */
  public Optional<Net> of(Point point) {
    int at = network.index(point);
    return at < 0 ? Optional.empty() : Optional.of(nets.get(netOf[at]));
  }

  /** Whether two points are one. */
  public boolean joined(Point one, Point other) {
    int a = network.index(one);
    int b = network.index(other);
    return a >= 0 && b >= 0 && netOf[a] == netOf[b];
  }

  private static <T> List<List<T>> lists(int count) {
    List<List<T>> lists = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      lists.add(new ArrayList<>(2));
    }
    return lists;
  }
}
