package org.tugtest.route;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.network.WireSizes;
import org.tugtest.text.NaturalOrder;

/**
 * The bundles along each segment: cut wherever a wire begins or ends, so that a splice or a wire
 * that fills only a part of a segment counts for that part. Cables are one circle each.
 */
public final class Bundles {
  private final Harness harness;
  private final Routes routes;
  private final Surroundings surroundings;
  private final Map<String, List<Bundle>> bySegment = new LinkedHashMap<>();
  private final Map<List<Double>, Packing> packings = new ConcurrentHashMap<>();

  private Bundles(Harness harness, Routes routes, Surroundings surroundings) {
    this.harness = harness;
    this.routes = routes;
    this.surroundings = surroundings;
  }

  /** The bundles of a harness; near linear in its wires and the pieces of their routes. */
  public static Bundles of(
      Harness harness, WireSizes sizes, Routes routes, Surroundings surroundings) {
    Bundles bundles = new Bundles(harness, routes, surroundings);
    BundleCuts cuts = new BundleCuts(harness, new Cables(harness, sizes), sizes, bundles::pack);
    routes.all().forEach((wire, route) -> route.pieces().forEach(p -> cuts.add(wire, p)));
    for (Layout.Segment segment : harness.layout().segments().values()) {
      List<Bundle> pieces = cuts.of(segment.id());
      if (!pieces.isEmpty()) {
        bundles.bySegment.put(segment.id(), pieces);
      }
    }
    return bundles;
  }

  private Packing pack(List<Double> diameters) {
    return packings.computeIfAbsent(diameters, CirclePacking::of);
  }

  /** The segments on which wires run, with their bundles from start to end. */
  public Map<String, List<Bundle>> all() {
    return Collections.unmodifiableMap(bySegment);
  }

  /** The bundles along a segment, from its start to its end; none where no wire runs. */
  public List<Bundle> of(String segment) {
    return bySegment.getOrDefault(segment, List.of());
  }

  /** The thickest piece of a segment by its expected diameter; the first of equal ones. */
  public Optional<Bundle> thickest(String segment) {
    return of(segment).stream().max(BY_SIZE);
  }

  /** The thinnest piece of a segment by its expected diameter; the first of equal ones. */
  public Optional<Bundle> thinnest(String segment) {
    return of(segment).stream().min(Comparator.comparingDouble(Bundles::size));
  }

  private static double size(Bundle bundle) {
    return BundleDiameter.expectedMm(bundle.diametersMm());
  }

  private static final Comparator<Bundle> BY_SIZE =
      Comparator.comparingDouble(Bundles::size)
          .thenComparing(Comparator.comparingDouble(Bundle::fromMm).reversed());

  /**
   * What a wire meets along its route.
   *
   * @param neighbours the greatest number of other conductors beside it on any piece
   * @param coverings coverings on its way, in natural order of their ids
   * @param around the worst of what is round its segments and the nodes it passes, field by field
   */
  public record Company(int neighbours, Set<String> coverings, Surroundings.Around around) {
    /** Whether anything is put round it somewhere. */
    public boolean covered() {
      return !coverings.isEmpty();
    }
  }

  /** What a wire meets along its route; empty for a wire without a route. */
  public Optional<Company> along(String wire) {
    return routes.of(wire).map(this::along);
  }

  private Company along(Route route) {
    int most = 0;
    Set<String> coverings = new TreeSet<>(NaturalOrder.NATURAL);
    Surroundings.Around around = null;
    for (Piece piece : route.pieces()) {
      for (Bundle bundle : of(piece.segment())) {
        if (bundle.fromMm() < piece.highMm() && bundle.toMm() > piece.lowMm()) {
          most = Math.max(most, bundle.wires() - 1);
        }
      }
      Layout.Segment segment = harness.layout().segments().get(piece.segment());
      if (segment != null) {
        coverings.addAll(segment.coverings());
      }
      Surroundings.Around here = surroundings.ofSegment(piece.segment());
      around = around == null ? here : Surroundings.worse(around, here);
    }
    for (String node : route.nodes()) {
      Surroundings.Around here = surroundings.ofNode(node);
      around = around == null ? here : Surroundings.worse(around, here);
    }
    return new Company(
        most,
        Collections.unmodifiableSet(coverings),
        around == null ? surroundings.ofNode("") : around);
  }

  /** What surrounds nodes and segments. */
  public Surroundings surroundings() {
    return surroundings;
  }
}
