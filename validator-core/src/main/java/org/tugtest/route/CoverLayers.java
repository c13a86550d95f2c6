package org.tugtest.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Covering;

/**
 * Coverings over a bundle, the inside first, each over what the ones before it make of it.
 *
 * @param expectedMm the expected diameter with all of them
 * @param looseMm the loose diameter with all of them
 */
public record CoverLayers(List<Layer> layers, double expectedMm, double looseMm) {
  public CoverLayers {
    layers = List.copyOf(layers);
  }

  /**
   * One covering.
   *
   * @param part null when no covering of that id is defined
   * @param insideMm the expected diameter of what it goes over
   * @param insideLooseMm the loose diameter of that
   */
  public record Layer(String id, @Nullable Covering part, double insideMm, double insideLooseMm) {

    /** The greatest diameter it goes over, in mm; null when its part gives none. */
    public @Nullable Double mostMm() {
      return part == null ? null : most(part);
    }

    /** The least diameter it closes on, in mm; null when its part gives none. */
    public @Nullable Double leastMm() {
      return part == null ? null : least(part);
    }
  }

  /** The greatest diameter that a covering goes over, in mm; null when it gives none. */
  public static @Nullable Double most(Covering part) {
    return part.innerMaxMm() == null ? part.innerMm() : part.innerMaxMm();
  }

  /** The least diameter that a covering closes on, in mm; null when it gives none. */
  public static @Nullable Double least(Covering part) {
    return part.innerMinMm() == null ? part.innerMm() : part.innerMinMm();
  }

  /** Coverings over a bundle of these diameters; a wall that is not given counts as nothing. */
  public static CoverLayers of(
      Map<String, Covering> parts, List<String> ids, double expectedMm, double looseMm) {
    List<Layer> layers = new ArrayList<>();
    double expected = expectedMm;
    double loose = looseMm;
    for (String id : ids) {
      Covering part = parts.get(id);
      layers.add(new Layer(id, part, expected, loose));
      double wall = part == null || part.wallMm() == null ? 0 : part.wallMm();
      Double inner = part == null ? null : part.innerMm();
      boolean stiff = part != null && part.kind() == Covering.Kind.SPLIT_CONDUIT && inner != null;
      expected = (stiff ? Math.max(expected, inner) : expected) + 2 * wall;
      loose = (stiff ? Math.max(loose, inner) : loose) + 2 * wall;
    }
    return new CoverLayers(layers, expected, loose);
  }
}
