package org.tugtest.heat;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Covering;

/**
 * What coverings do to heat. Tape adds as much surface as it takes; sleeves and shrink lie tight; a
 * split conduit is as wide as its bore; a heat shield is bright outside. A wall that is not given
 * counts as nothing, and no covering cools.
 */
final class Coverings {
  private Coverings() {}

  /**
   * The envelope that coverings make, the inside first; those not defined count as nothing.
   *
   * @param bundleMm expected diameter of what lies in them
   */
  static Envelope around(Map<String, Covering> parts, List<String> ids, double bundleMm) {
    Envelope outside = Envelope.BARE;
    for (int i = ids.size() - 1; i >= 0; i--) {
      Covering part = parts.get(ids.get(i));
      if (part != null && part.kind() != null) {
        outside = inside(part, outside);
      }
    }
    return outside instanceof Conduit conduit && bundleMm > 0
        ? new NoCooler(conduit, bundleMm)
        : Envelope.BARE;
  }

  private static Envelope inside(Covering part, Envelope outside) {
    double wall = positive(part.wallMm());
    if (part.kind() == Covering.Kind.SPLIT_CONDUIT) {
      double bore = positive(part.innerMm() == null ? part.innerMaxMm() : part.innerMm());
      return bore > 0 || wall > 0 ? new Conduit(bore, wall, outside) : outside;
    }
    if (part.kind() == Covering.Kind.TAPE) {
      return outside;
    }
    boolean bright = part.kind() == Covering.Kind.HEAT_SHIELD && outside.equals(Envelope.BARE);
    Envelope beyond = bright ? Envelope.BRIGHT : outside;
    return wall > 0 || bright ? Conduit.tight(wall, beyond) : beyond;
  }

  private static double positive(@Nullable Double value) {
    return value == null || !(value > 0) || value.isInfinite() ? 0 : value;
  }
}
