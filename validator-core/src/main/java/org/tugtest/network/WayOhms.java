package org.tugtest.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.finding.Basis;
import org.tugtest.table.Cited;

/** Adds up resistances along the ways of a graph; each ring is solved once, when it is met. */
final class WayOhms {
  private final List<Edge> edges;
  private final Links links;
  private final Rings rings;
  private final MeterOhms resistances;
  private final Map<Integer, Ring> solved = new HashMap<>();
  private final Map<Integer, List<Integer>> members = new HashMap<>();

  /**
   * A ring with its resistances.
   *
   * @param numbers its points, numbered from 0
   * @param missing what one of its edges lacks; then {@code ohms} means nothing
   */
  private record Ring(RingOhms ohms, Map<Integer, Integer> numbers, Basis basis, String missing) {}

  WayOhms(List<Edge> edges, Links links, Rings rings, MeterOhms resistances) {
    this.edges = edges;
    this.links = links;
    this.rings = rings;
    this.resistances = resistances;
    for (int i = 0; i < rings.ring.length; i++) {
      if (rings.size(rings.ring[i]) > 1) {
        members.computeIfAbsent(rings.ring[i], none -> new ArrayList<>()).add(i);
      }
    }
  }

  /** What a meter should show between two joined points. */
  synchronized Shown between(int from, int to) {
    Sum sum = new Sum();
    rings.walk(links, from, to, sum);
    return sum.shown();
  }

  private final class Sum implements Rings.Walker {
    private double milliohm;
    private Basis basis = Basis.GIVEN;
    private boolean atMost;
    private String missing = "";

    @Override
    public void bridge(int edge) {
      Optional<Cited> its = resistances.milliohm(edges.get(edge));
      if (its.isEmpty()) {
        missing = missing.isEmpty() ? lack(edges.get(edge)) : missing;
        return;
      }
      milliohm += its.get().value();
      basis = basis.weaker(its.get().basis());
    }

    @Override
    public void ring(int ring, int from, int to) {
      if (from == to) {
        return;
      }
      if (rings.size(ring) > RingOhms.MOST) {
        atMost = true;
        RingWay.of(links, rings.ring, from, to).forEach(this::bridge);
        return;
      }
      Ring its = solved.computeIfAbsent(ring, WayOhms.this::solve);
      if (!its.missing().isEmpty()) {
        missing = missing.isEmpty() ? its.missing() : missing;
        return;
      }
      basis = basis.weaker(its.basis());
      milliohm += its.ohms().between(number(its.numbers(), from), number(its.numbers(), to));
    }

    Shown shown() {
      return new Shown(missing.isEmpty() ? milliohm : null, basis, atMost, missing);
    }
  }

  private static int number(Map<Integer, Integer> numbers, int point) {
    return numbers.getOrDefault(point, 0);
  }

  private String lack(Edge edge) {
    return edge.text() + " gives " + resistances.missing(edge);
  }

  private Ring solve(int ring) {
    Map<Integer, Integer> numbers = new HashMap<>();
    List<Integer> its = members.getOrDefault(ring, List.of());
    its.forEach(point -> numbers.put(point, numbers.size()));
    List<int[]> ends = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    Basis basis = Basis.GIVEN;
    String missing = "";
    for (int point : its) {
      for (int i = 0; i < links.degree(point); i++) {
        int edge = links.edge(point, i);
        if (links.from(edge) != point || rings.ring[links.to(edge)] != ring) {
          continue;
        }
        Optional<Cited> milliohm = resistances.milliohm(edges.get(edge));
        if (milliohm.isEmpty()) {
          missing = missing.isEmpty() ? lack(edges.get(edge)) : missing;
          continue;
        }
        basis = basis.weaker(milliohm.get().basis());
        ends.add(new int[] {number(numbers, point), number(numbers, links.to(edge))});
        values.add(milliohm.get().value());
      }
    }
    boolean known = missing.isEmpty();
    RingOhms ohms =
        new RingOhms(
            known ? numbers.size() : 1,
            ends.stream().mapToInt(pair -> pair[0]).toArray(),
            ends.stream().mapToInt(pair -> pair[1]).toArray(),
            values.stream().mapToDouble(Double::doubleValue).toArray());
    return new Ring(ohms, numbers, basis, missing);
  }
}
