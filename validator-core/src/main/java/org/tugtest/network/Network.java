package org.tugtest.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/**
 * All electrical points of a harness and all that lies between them, built once. Points stand in
 * the order of devices' pins, connectors' cavities, splices, each by its owner's id. What hangs on
 * an end that names nothing is left out.
 */
public final class Network {
  private final Points points;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Edge.OfElement> sources = new ArrayList<>();
  private final List<Subject> unplaced = new ArrayList<>();
  private final List<Edge> shownEdges = Collections.unmodifiableList(edges);
  private final int[] partOf;
  private final int[] ends;
  private final int[] firstAt;
  private final int[] edgesAt;

  private Network(Harness harness, Wiring wiring) {
    points = wiring.points();
    addWires(harness, wiring);
    addMated(wiring);
    for (Device device : harness.devices().values()) {
      addBolted(device, wiring);
      addElements(device, harness);
    }
    ends = new int[2 * edges.size()];
    int[] counts = new int[points.all().size() + 1];
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source) {
        sources.add(inside);
      }
      ends[2 * i] = index(edge.a());
      ends[2 * i + 1] = index(edge.b());
      counts[ends[2 * i] + 1]++;
      counts[ends[2 * i + 1] + 1]++;
    }
    Joined joined = new Joined(points.all().size());
    for (int i = 0; i < edges.size(); i++) {
      joined.join(ends[2 * i], ends[2 * i + 1]);
    }
    partOf = joined.numbered();
    Arrays.parallelPrefix(counts, Integer::sum);
    firstAt = counts.clone();
    edgesAt = new int[2 * edges.size()];
    for (int i = 0; i < edges.size(); i++) {
      edgesAt[counts[ends[2 * i]]++] = i;
      edgesAt[counts[ends[2 * i + 1]]++] = i;
    }
  }

  /** The network of a harness; near linear in its size. */
  public static Network of(Harness harness, Wiring wiring) {
    return new Network(harness, wiring);
  }

  /** Every point, each once. */
  public List<Point> points() {
    return points.all();
  }

  /** Where a point stands in {@link #points}; -1 when the harness has no such point. */
  public int index(Point point) {
    return points.number(point);
  }

  /** Everything that lies between two different points. */
  public List<Edge> edges() {
    return shownEdges;
  }

  /** Where an edge of this network stands in {@link #edges}; -1 for any other. */
  public int number(Edge edge) {
    int at = edge.number();
    return at >= 0 && at < edges.size() && edges.get(at).equals(edge) ? at : -1;
  }

  /** Where the point {@code a} of the edge of that number stands in {@link #points}. */
  public int indexOfA(int edge) {
    return ends[2 * edge];
  }

  /** Where its point {@code b} stands. */
  public int indexOfB(int edge) {
    return ends[2 * edge + 1];
  }

  /** Where the point at the other end of the edge of that number stands. */
  public int across(int edge, int point) {
    return ends[2 * edge] == point ? ends[2 * edge + 1] : ends[2 * edge];
  }

  /**
   * The part of the network that the point of that index is in: whatever edges join, open or not.
   */
  public int partOf(int point) {
    return partOf[point];
  }

  /** What lies at a point. */
  public List<Edge> edgesAt(Point point) {
    int at = index(point);
    List<Edge> here = new ArrayList<>();
    for (int i = at < 0 ? 0 : firstAt[at]; at >= 0 && i < firstAt[at + 1]; i++) {
      here.add(edges.get(edgesAt[i]));
    }
    return here;
  }

  /** The sources, in the order of the devices. */
  public List<Edge.OfElement> sources() {
    return Collections.unmodifiableList(sources);
  }

  /** Wires and elements of which an end names no point; they are in no edge. */
  public List<Subject> unplaced() {
    return List.copyOf(unplaced);
  }

  /** How many edges lie at the point of that index. */
  public int degree(int at) {
    return firstAt[at + 1] - firstAt[at];
  }

  /** The index of the {@code i}-th edge at the point of that index. */
  public int edgeAt(int at, int i) {
    return edgesAt[firstAt[at] + i];
  }

  private void addWires(Harness harness, Wiring wiring) {
    for (Wire wire : harness.wires().values()) {
      Optional<Point> from = end(wiring, new WireEnd(wire, true));
      Optional<Point> to = end(wiring, new WireEnd(wire, false));
      if (from.isPresent() && to.isPresent()) {
        add(from.get(), to.get(), (a, b, number) -> new Edge.OfWire(wire, a, b, number));
      } else {
        unplaced.add(Subject.wire(wire.id()));
      }
    }
  }

  static Optional<Point> end(Wiring wiring, WireEnd end) {
    Ref ref = end.ref();
    return ref != null && wiring.resolve(ref) instanceof Resolution.Found found
        ? Optional.of(found.point())
        : Optional.empty();
  }

  private void addMated(Wiring wiring) {
    for (Point point : points.all()) {
      Point other = point.kind() == Point.Kind.CAVITY ? wiring.meets(point).orElse(null) : null;
      if (other != null && (other.kind() == Point.Kind.PIN || index(point) < index(other))) {
        add(point, other, Edge.OfMating::new);
      }
    }
  }

  private void addBolted(Device device, Wiring wiring) {
    device
        .boltedTo()
        .forEach(
            (pin, to) ->
                wiring
                    .pointOf(to)
                    .filter(other -> other.kind() == Point.Kind.PIN && index(other) >= 0)
                    .ifPresent(other -> add(Point.pin(device.id(), pin), other, Edge.OfBolt::new)));
  }

  private void addElements(Device device, Harness harness) {
    DeviceType type = harness.typeOf(device);
    if (type == null) {
      return;
    }
    type.elements()
        .forEach(
            (name, element) -> {
              if (element instanceof Element.Signal) {
                return;
              }
              List<Point> ends =
                  element.ends().stream()
                      .map(pin -> Point.pin(device.id(), pin))
                      .filter(point -> index(point) >= 0)
                      .toList();
              if (ends.size() == 2) {
                boolean fitted = isFitted(harness, device.id(), name, element);
                add(
                    ends.get(0),
                    ends.get(1),
                    (a, b, number) ->
                        new Edge.OfElement(device.id(), name, element, fitted, a, b, number));
              } else {
                unplaced.add(Subject.element(device.id(), name));
              }
            });
  }

  private static boolean isFitted(Harness harness, String device, String name, Element element) {
    return !(element instanceof Element.Fuse fuse)
        || fuse.electronic()
        || fuse.ratingA() != null
        || harness.fitted().containsKey(device + "." + name);
  }

  /** Something between two points of this network. */
  @FunctionalInterface
  private interface Between {
    Edge of(Point a, Point b, int number);
  }

  private void add(Point a, Point b, Between edge) {
    if (!a.equals(b)) {
      edges.add(edge.of(points.own(a), points.own(b), edges.size()));
    }
  }
}
