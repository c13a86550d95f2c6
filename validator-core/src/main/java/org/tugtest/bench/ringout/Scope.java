package org.tugtest.bench.ringout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Loom;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Meter;
import org.tugtest.network.MeterOhms;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;

/**
 * What lies on the bench, or in the vehicle: its wires, what joins them there, and where a probe
 * can be held.
 *
 * @param title {@code front, revision C}
 * @param loom id; null: wires of no loom, or everything
 * @param plugged everything is plugged together and bolted down
 * @param wires that belong to it
 * @param edges what joins its points
 * @param probes where a probe can be held: cavities with a wire, and pins on which a wire ends
 * @param meter its points and edges
 */
public record Scope(
    String title,
    @Nullable String loom,
    boolean plugged,
    List<Wire> wires,
    List<Edge> edges,
    Set<Point> probes,
    Meter meter) {

  /** One loom, taken out and unplugged; its ring terminals are clipped together stud by stud. */
  public static Scope ofLoom(Facts facts, String loom) {
    Loom found = facts.harness().looms().get(loom);
    String revision = found == null ? null : found.revision();
    String title = revision == null ? loom : loom + ", revision " + revision;
    return of(facts, title, loom, false, wire -> loom.equals(wire.loom()));
  }

  /** The wires of no loom, unplugged. */
  public static Scope ofLoose(Facts facts) {
    boolean all = facts.harness().looms().isEmpty();
    return of(facts, all ? "all wires" : "loose wires", null, false, wire -> wire.loom() == null);
  }

  /** Everything plugged together and bolted down, fuses pulled, switches open. */
  public static Scope plugged(Facts facts) {
    return of(facts, "everything, plugged together", null, true, wire -> true);
  }

  /** Each loom that has wires, then the wires of no loom when there are any. */
  public static List<Scope> all(Facts facts) {
    List<Scope> all = new ArrayList<>();
    for (String loom : facts.harness().looms().keySet()) {
      all.add(ofLoom(facts, loom));
    }
    all.add(ofLoose(facts));
    return all.stream().filter(scope -> !scope.wires().isEmpty()).toList();
  }

  private static Scope of(
      Facts facts, String title, @Nullable String loom, boolean plugged, Predicate<Wire> in) {
    List<Wire> wires = facts.harness().wires().values().stream().filter(in).toList();
    Set<String> ids = new HashSet<>();
    wires.forEach(wire -> ids.add(wire.id()));
    List<Edge> edges =
        facts.network().edges().stream()
            .filter(
                edge ->
                    edge instanceof Edge.OfWire wire
                        ? ids.contains(wire.wire().id())
                        : plugged && !(edge instanceof Edge.OfElement))
            .toList();
    Set<Point> probes = new TreeSet<>();
    Set<Point> points = new TreeSet<>();
    for (Wire wire : wires) {
      point(facts, wire.from()).ifPresent(probes::add);
      point(facts, wire.to()).ifPresent(probes::add);
    }
    points.addAll(probes);
    probes.removeIf(point -> point.kind() == Point.Kind.SPLICE);
    for (Edge edge : edges) {
      points.add(edge.a());
      points.add(edge.b());
    }
    MeterOhms ohms =
        new MeterOhms(facts.harness(), facts.wiring(), facts.fitting(), facts.lengths());
    Meter meter = Meter.of(List.copyOf(points), edges, ohms);
    return new Scope(title, loom, plugged, wires, edges, probes, meter);
  }

  private static Optional<Point> point(Facts facts, @Nullable Ref ref) {
    return ref != null && facts.wiring().resolve(ref) instanceof Resolution.Found found
        ? Optional.of(found.point())
        : Optional.empty();
  }
}
