package org.tugtest.network;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Some points and what joins them, as a meter sees it: a loom on the bench, or everything plugged
 * together. Tells what is joined, by which way, with which resistance, and which breaks would show.
 */
public final class Meter {
  private final List<Point> points;
  private final Map<Point, Integer> indexes = new HashMap<>();
  private final List<Edge> edges;
  private final Links links;
  private final Rings rings;
  private final WayOhms ohms;

  private Meter(List<Point> points, List<Edge> edges, MeterOhms resistances) {
    this.points = List.copyOf(points);
    for (Point point : this.points) {
      indexes.putIfAbsent(point, indexes.size());
    }
    this.edges =
        edges.stream()
            .filter(edge -> !(edge instanceof Edge.OfElement))
            .filter(edge -> indexes.containsKey(edge.a()) && indexes.containsKey(edge.b()))
            .toList();
    int[] from = this.edges.stream().mapToInt(edge -> index(edge.a())).toArray();
    int[] to = this.edges.stream().mapToInt(edge -> index(edge.b())).toArray();
    this.links = new Links(this.points.size(), from, to);
    this.rings = new Rings(links);
    this.ohms = new WayOhms(this.edges, links, rings, resistances);
  }

  /**
   * These points with what lies between them; elements, and edges to other points, are left out.
   * Near linear, whatever the shape.
   */
  public static Meter of(List<Point> points, List<Edge> edges, MeterOhms resistances) {
    return new Meter(points.stream().distinct().toList(), edges, resistances);
  }

  /** Its points, each once. */
  public List<Point> points() {
    return points;
  }

  /** Whether it has that point. */
  public boolean has(Point point) {
    return indexes.containsKey(point);
  }

  /** Whether two of its points are joined. */
  public boolean joined(Point one, Point other) {
    return has(one) && has(other) && rings.part[index(one)] == rings.part[index(other)];
  }

  /** The points in groups that are joined, each group and all groups in the order of the points. */
  public List<List<Point>> groups() {
    Map<Integer, List<Point>> groups = new TreeMap<>();
    for (int i = 0; i < points.size(); i++) {
      groups.computeIfAbsent(rings.part[i], none -> new ArrayList<>(2)).add(points.get(i));
    }
    return List.copyOf(groups.values());
  }

  /** A way between two joined points that takes no detour but inside rings the fewest edges. */
  public Optional<Path> path(Point one, Point other) {
    if (!joined(one, other)) {
      return Optional.empty();
    }
    List<Edge> way = new ArrayList<>();
    rings.walk(links, index(one), index(other), new Ways(way));
    return Optional.of(new Path(one, way));
  }

  /** What the meter should show between two points; empty when they are not joined. */
  public Optional<Shown> between(Point one, Point other) {
    if (!joined(one, other)) {
      return Optional.empty();
    }
    return Optional.of(ohms.between(index(one), index(other)));
  }

  /**
   * The edges whose loss parts two of these points: the breaks that a meter on these points finds.
   */
  public Set<Edge> telling(Collection<Point> probes) {
    int[] below = new int[points.size()];
    Map<Integer, Integer> all = new HashMap<>();
    for (Point probe : new HashSet<>(probes)) {
      int at = indexes.getOrDefault(probe, -1);
      if (at >= 0) {
        below[at]++;
        all.merge(rings.part[at], 1, Integer::sum);
      }
    }
    Set<Edge> telling = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int i = rings.order.length - 1; i >= 0; i--) {
      int point = rings.order[i];
      int edge = rings.by[point];
      if (edge >= 0) {
        below[links.across(edge, point)] += below[point];
        int whole = all.getOrDefault(rings.part[point], 0);
        if (rings.bridge[edge] && below[point] > 0 && below[point] < whole) {
          telling.add(edges.get(edge));
        }
      }
    }
    return telling;
  }

  /** Whether an edge of this meter is the only way between its ends. */
  public boolean single(Edge edge) {
    int a = index(edge.a());
    int b = index(edge.b());
    return rings.ring[a] != rings.ring[b];
  }

  /**
   * What else joins the ends of an edge, the shortest way round; empty when it is the only way, or
   * the ring is too large to look.
   */
  public Optional<Path> around(Edge edge) {
    int a = index(edge.a());
    int b = index(edge.b());
    if (rings.ring[a] != rings.ring[b] || rings.size(rings.ring[a]) > RingOhms.MOST) {
      return Optional.empty();
    }
    List<Edge> way = new ArrayList<>();
    int without = numberOf(edge);
    RingWay.without(links, rings.ring, a, b, without).forEach(i -> way.add(edges.get(i)));
    return Optional.of(new Path(edge.a(), way));
  }

  /**
   * For each group the least tree between those of its points that are {@code probes}, as pairs of
   * them, the nearest first ({@link NearestPairs}).
   */
  public List<NearestPairs.Pair> nearest(Collection<Point> probes, ToDoubleFunction<Edge> length) {
    int[] starts =
        probes.stream().mapToInt(p -> indexes.getOrDefault(p, -1)).filter(i -> i >= 0).toArray();
    double[] lengths = edges.stream().mapToDouble(length).toArray();
    return NearestPairs.of(links, starts, lengths, points);
  }

  private int numberOf(Edge edge) {
    int at = index(edge.a());
    for (int i = 0; i < links.degree(at); i++) {
      if (edges.get(links.edge(at, i)).equals(edge)) {
        return links.edge(at, i);
      }
    }
    return -1;
  }

  private int index(Point point) {
    return indexes.getOrDefault(point, -1);
  }

  /** Collects the edges of a way. */
  private final class Ways implements Rings.Walker {
    private final List<Edge> way;

    Ways(List<Edge> way) {
      this.way = way;
    }

    @Override
    public void bridge(int edge) {
      way.add(edges.get(edge));
    }

    @Override
    public void ring(int ring, int from, int to) {
      RingWay.of(links, rings.ring, from, to).forEach(edge -> way.add(edges.get(edge)));
    }
  }
}
