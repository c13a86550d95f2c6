package org.tugtest.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.route.Bundle;
import org.tugtest.route.Packing;
import org.tugtest.route.Strand;

/**
 * What the {@link HeatNetwork} says of a section of a loom, packed as its circles are and spread as
 * a laid bundle is; the wires of a cable lie round its middle.
 */
public final class SecondOpinion {
  /** More conductors than this are not gone through. */
  private static final int MOST = 150;

  private SecondOpinion() {}

  /**
   * The temperatures of a section; empty for a free end, a wire alone, a section of more than
   * {@value #MOST} conductors, or one in which a wire has no diameter.
   */
  public static Optional<BundleHeat> of(LoomWarmth warmth, int section) {
    Bundle bundle = warmth.sections().bundle(section).orElse(null);
    Section its = warmth.sections().all().get(section);
    int count = its.conductors().size();
    if (bundle == null || count < 2 || count > MOST || !bundle.unsized().isEmpty()) {
      return Optional.empty();
    }
    List<BundledWire> wires = its.bundled(warmth.amps(section));
    List<Placed> placed = places(bundle, bundle.packing(), wires);
    return placed.size() == count
        ? Optional.of(new HeatNetwork(placed, its.envelope(), its.ambientC().value()).heat())
        : Optional.empty();
  }

  private static List<Placed> places(Bundle bundle, Packing packing, List<BundledWire> wires) {
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < bundle.strands().size() && i < packing.circles().size(); i++) {
      Strand strand = bundle.strands().get(i);
      Packing.Circle circle = packing.circles().get(i);
      int inside = strand.wires().size();
      for (int k = 0; k < inside && placed.size() < wires.size(); k++) {
        BundledWire wire = wires.get(placed.size());
        double far = inside == 1 ? 0 : (circle.diameterMm() - wire.wire().outerMm()) / 2;
        double turn = 2 * Math.PI * k / inside;
        double x = circle.x() + Math.max(0, far) * StrictMath.cos(turn);
        double y = circle.y() + Math.max(0, far) * StrictMath.sin(turn);
        placed.add(new Placed(wire, HeatNetwork.SPREAD * x, HeatNetwork.SPREAD * y));
      }
    }
    return placed;
  }
}
