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
  private final IdentityHashMap<Wire, Sizes> known;

  private record Sizes(Optional<Cited> area, Optional<Cited> outer) {}

  /** The sizes of the wires of this harness. */
  public WireSizes(Harness harness) {
    this.harness = harness;
    this.known = new IdentityHashMap<>(2 * harness.wires().size());
    IdentityHashMap<WirePart, Sizes> ofParts = new IdentityHashMap<>();
    for (Wire wire : harness.wires().values()) {
      WirePart part = part(wire);
      known.put(
          wire,
          part == null ? find(wire, null) : ofParts.computeIfAbsent(part, its -> find(wire, its)));
    }
  }

  /** The conductor area in mm2; empty when neither wire nor part gives one. */
  public Optional<Cited> areaMm2(Wire wire) {
    return of(wire).area();
  }

  /** The outside diameter in mm; a wire without a part has a thin wall. */
  public Optional<Cited> outerMm(Wire wire) {
    return of(wire).outer();
  }

  private Sizes of(Wire wire) {
    Sizes sizes = known.get(wire);
    return sizes == null ? find(wire, part(wire)) : sizes;
  }

  private static Sizes find(Wire wire, @Nullable WirePart part) {
    if (part == null) {
      return new Sizes(
          area(wire.areaMm2(), wire.awg()), outer(wire.areaMm2(), wire.awg(), WirePart.Wall.THIN));
    }
    Double given = part.outerMm();
    return new Sizes(
        area(part.areaMm2(), part.awg()),
        given != null
            ? Optional.of(Cited.given(given))
            : outer(part.areaMm2(), part.awg(), part.wall()));
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
