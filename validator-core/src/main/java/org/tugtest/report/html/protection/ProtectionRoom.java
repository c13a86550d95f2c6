package org.tugtest.report.html.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Sides;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.FaultCourse;
import org.tugtest.protect.Faults;
import org.tugtest.protect.ShortCircuit;
import org.tugtest.report.html.text.Few;

/**
 * The charts of all fuses whose times are known.
 *
 * @param unknown fuses of which it is not known when they open
 * @param returns whether wires of the return side are in the charts too
 */
public record ProtectionRoom(Few<ProtectionChart> charts, Few<String> unknown, boolean returns) {
  private static final int MOST_CHARTS = 60;
  private static final int CHARTS_OF_MANY = 24;
  private static final int MOST_UNKNOWN = 60;
  private static final int MOST_SPOTS = 600;

  /** So many return wires are asked for their fuses; each asks the whole network. */
  private static final int MOST_RETURNS = 400;

  /** A short in a load, and what it sends through a fuse. */
  record Shorted(Edge.OfElement load, double leastA, double mostA) {}

  /** The charts of a harness. */
  public static ProtectionRoom of(Facts facts) {
    Faults faults = facts.faults();
    List<Edge.OfElement> known = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse && Sides.isFuse(edge) && fuse.fitted()) {
        if (faults.bands().of(fuse).isPresent()) {
          known.add(fuse);
        } else {
          unknown.add(fuse.text());
        }
      }
    }
    Map<String, Map<String, Edge.OfWire>> wires = wires(facts);
    Map<String, List<Shorted>> shorts = known.isEmpty() ? Map.of() : shorts(faults);
    List<ProtectionChart> charts = new ArrayList<>();
    for (Edge.OfElement fuse :
        known.subList(0, known.size() > MOST_CHARTS ? CHARTS_OF_MANY : known.size())) {
      charts.add(
          new ChartSketcher(facts, fuse)
              .chart(
                  charts.size() + 1,
                  List.copyOf(wires.getOrDefault(fuse.text(), Map.of()).values()),
                  shorts.getOrDefault(fuse.text(), List.of())));
    }
    return new ProtectionRoom(
        new Few<>(charts, known.size() - charts.size()),
        Few.of(unknown, MOST_UNKNOWN),
        facts.protection().returning().size() <= MOST_RETURNS);
  }

  /** The wires that each fuse bounds, on the feed side and, unless there are many, the return. */
  private static Map<String, Map<String, Edge.OfWire>> wires(Facts facts) {
    Map<String, Map<String, Edge.OfWire>> wires = new LinkedHashMap<>();
    for (Exposure exposure : facts.protection().exposures()) {
      for (Edge.OfElement fuse : exposure.cut()) {
        put(wires, fuse, exposure.wire());
      }
    }
    List<Exposure> returning = facts.protection().returning();
    for (Exposure exposure : returning.size() > MOST_RETURNS ? List.<Exposure>of() : returning) {
      Edge.OfWire wire = exposure.wire();
      for (Edge.OfElement fuse : facts.protection().fusesBehind(wire.wire().id())) {
        put(wires, fuse, wire);
      }
    }
    return wires;
  }

  private static void put(
      Map<String, Map<String, Edge.OfWire>> wires, Edge.OfElement fuse, Edge.OfWire wire) {
    wires.computeIfAbsent(fuse.text(), none -> new LinkedHashMap<>()).put(wire.wire().id(), wire);
  }

  /** Shorts by the fuse nearest to them. */
  private static Map<String, List<Shorted>> shorts(Faults faults) {
    Map<String, List<Shorted>> shorts = new LinkedHashMap<>();
    List<Faults.Spot> spots = faults.inLoads();
    for (Faults.Spot spot : spots.subList(0, Math.min(MOST_SPOTS, spots.size()))) {
      FaultCourse least = faults.slowest(spot).orElse(null);
      ShortCircuit most = faults.greatest(spot).orElse(null);
      Edge.OfElement load = spot.load();
      if (least != null && most != null && load != null) {
        least.first().fuses().stream()
            .findFirst()
            .ifPresent(
                through -> {
                  double greatest =
                      most.fuses().stream()
                          .filter(other -> other.fuse().equals(through.fuse()))
                          .mapToDouble(ShortCircuit.Through::amps)
                          .findFirst()
                          .orElse(most.amps());
                  shorts
                      .computeIfAbsent(through.fuse().text(), none -> new ArrayList<>())
                      .add(new Shorted(load, through.amps(), greatest));
                });
      }
    }
    return shorts;
  }
}
