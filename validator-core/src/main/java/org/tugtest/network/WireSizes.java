package org.tugtest.network;

import java.util.IdentityHashMap;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.table.AwgTable;
import org.tugtest.table.Cited;
import org.tugtest.table.OuterDiameterTable;

/**
 * Conductor area and outside diameter of the wires of a harness: as given, else from the tables.
 */
public final class WireSizes {
  private final Harness harness;
  private final IdentityHashMap<Wire, Optional<Cited>> areas;

  /** The sizes of the wires of this harness. */
  public WireSizes(Harness harness) {
    this.harness = harness;
    this.areas = new IdentityHashMap<>(2 * harness.wires().size());
    harness.wires().values().forEach(wire -> areas.put(wire, findArea(wire)));
  }

  /** The conductor area in mm2; empty when neither wire nor part gives one. */
  public Optional<Cited> areaMm2(Wire wire) {
    Optional<Cited> known = areas.get(wire);
    return known == null ? findArea(wire) : known;
  }

  private Optional<Cited> findArea(Wire wire) {
    WirePart part = part(wire);
    return part == null ? area(wire.areaMm2(), wire.awg()) : area(part.areaMm2(), part.awg());
  }

  /** The outside diameter in mm; a wire without a part has a thin wall. */
  public Optional<Cited> outerMm(Wire wire) {
    WirePart part = part(wire);
    if (part == null) {
      return outer(wire.areaMm2(), wire.awg(), WirePart.Wall.THIN);
    }
    Double given = part.outerMm();
    return given != null
        ? Optional.of(Cited.given(given))
        : outer(part.areaMm2(), part.awg(), part.wall());
  }

  private @Nullable WirePart part(Wire wire) {
    return wire.part() == null ? null : harness.parts().wires().get(wire.part());
  }

  private static Optional<Cited> area(@Nullable Double areaMm2, @Nullable String awg) {
    if (areaMm2 != null) {
      return Optional.of(Cited.given(areaMm2));
    }
    return awg == null ? Optional.empty() : AwgTable.areaMm2(awg);
  }

  private static Optional<Cited> outer(
      @Nullable Double areaMm2, @Nullable String awg, WirePart.Wall wall) {
    if (areaMm2 != null) {
      return OuterDiameterTable.ofArea(areaMm2, wall);
    }
    return awg == null || wall != WirePart.Wall.THIN
        ? Optional.empty()
        : OuterDiameterTable.ofGauge(awg);
  }
}
