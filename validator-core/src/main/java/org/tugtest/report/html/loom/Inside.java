package org.tugtest.report.html.loom;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.heat.BundleHeat;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.heat.Section;
import org.tugtest.model.Layout;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.route.Bundle;
import org.tugtest.route.CoverLayers;

/**
 * How thick, how full and how warm a segment is. A figure that is not known is NaN.
 *
 * @param mm expected diameter of its thickest piece, without coverings
 * @param fill greatest share that the bundle fills of a covering's inner circle, 1 being full
 * @param covering the covering that is fullest; empty when none is known
 * @param celsius of its hottest piece in the state in which that is hottest; infinite when the
 *     currents of a state leave it no steady temperature
 * @param state that state
 */
record Inside(double mm, double fill, String covering, double celsius, String state) {
  static final Inside NOTHING = new Inside(Double.NaN, Double.NaN, "", Double.NaN, "");

  private record Warm(double celsius, String state) {}

  /** The inside of each segment with wires, by its id. */
  static Map<String, Inside> of(Facts facts) {
    Map<String, Inside> insides = new LinkedHashMap<>();
    Map<String, Warm> warm = warm(facts);
    for (String id : facts.bundles().all().keySet()) {
      Layout.Segment segment = facts.harness().layout().segments().get(id);
      Warm its = warm.getOrDefault(id, new Warm(Double.NaN, ""));
      insides.put(id, inside(facts, facts.bundles().thickest(id), segment, its));
    }
    return insides;
  }

  private static Inside inside(
      Facts facts, Optional<Bundle> thickest, Layout.Segment segment, Warm warm) {
    Bundle bundle = thickest.filter(its -> !its.strands().isEmpty()).orElse(null);
    if (bundle == null) {
      return new Inside(Double.NaN, Double.NaN, "", warm.celsius(), warm.state());
    }
    double fill = Double.NaN;
    String covering = "";
    List<CoverLayers.Layer> layers =
        CoverLayers.of(
                facts.harness().parts().coverings(),
                segment == null ? List.of() : segment.coverings(),
                bundle.expectedMm(),
                bundle.looseMm())
            .layers();
    for (CoverLayers.Layer layer : layers) {
      Double most = layer.mostMm();
      if (most != null && most > 0) {
        double share = Math.pow(layer.insideMm() / most, 2);
        if (Double.isNaN(fill) || share > fill) {
          fill = share;
          covering = layer.id();
        }
      }
    }
    return new Inside(bundle.expectedMm(), fill, covering, warm.celsius(), warm.state());
  }

  /** The hottest piece of each segment over all states. */
  private static Map<String, Warm> warm(Facts facts) {
    Map<String, String> segments = new HashMap<>();
    facts
        .bundles()
        .all()
        .forEach((id, pieces) -> pieces.forEach(its -> segments.put(where(facts, its), id)));
    Map<String, Warm> warm = new HashMap<>();
    for (OperatingPoint point : facts.operating().all()) {
      LoomWarmth warmth = point.warmth().orElse(null);
      for (int i = 0; warmth != null && i < warmth.sections().all().size(); i++) {
        Section section = warmth.sections().all().get(i);
        String segment = segments.get(section.where());
        if (segment != null && !section.conductors().isEmpty()) {
          BundleHeat heat = warmth.of(i);
          double celsius = heat.steady() ? heat.hottestC() : Double.POSITIVE_INFINITY;
          Warm most = warm.get(segment);
          if (most == null || celsius > most.celsius() + 1e-9) {
            warm.put(segment, new Warm(celsius, point.state()));
          }
        }
      }
    }
    return warm;
  }

  /** A piece as the heat of the looms names it. */
  private static String where(Facts facts, Bundle bundle) {
    Layout.Segment segment = facts.harness().layout().segments().get(bundle.segment());
    Double length = segment == null ? null : segment.lengthMm();
    return bundle.text(length == null ? bundle.toMm() : length);
  }
}
