package org.tugtest.heat;

import java.util.IdentityHashMap;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.table.AwgTable;
import org.tugtest.table.Cited;
import org.tugtest.table.ConductorResistanceTable;
import org.tugtest.table.EquipmentWireTable;

/**
 * What the heat of the wires of a harness depends on: as their parts give it, else from the tables.
 * A wire without a part is of class 100 °C.
 */
public final class WireForms {
  /** The class of a wire that gives only its size, as the format says. */
  public static final double CLASS_C = 100;

  private static final double LEAST_WALL_MM = 0.1;
  private final Harness harness;
  private final IdentityHashMap<WirePart, Optional<WireForm>> ofParts = new IdentityHashMap<>();

  /** The forms of the wires of a harness. */
  public WireForms(Harness harness) {
    this.harness = harness;
    harness.parts().wires().values().forEach(part -> ofParts.put(part, of(part)));
  }

  /** The form of a wire; empty when neither it nor its part gives a size above 0. */
  public Optional<WireForm> of(Wire wire) {
    WirePart part = part(wire);
    return part == null
        ? of(wire.areaMm2(), wire.awg(), null, null, null, CLASS_C, Basis.COMMON_PRACTICE)
        : ofParts.getOrDefault(part, Optional.empty());
  }

  /** The wire part of a wire; null when it names none that is known. */
  public @Nullable WirePart part(Wire wire) {
    return wire.part() == null ? null : harness.parts().wires().get(wire.part());
  }

  /** The form of a wire part; empty when it gives no size above 0. */
  public static Optional<WireForm> of(WirePart part) {
    Double maxC = part.maxC();
    return of(
        part.areaMm2(),
        part.awg(),
        part.milliohmPerM(),
        part.outerMm(),
        part.conductorMm(),
        maxC == null ? CLASS_C : maxC,
        maxC == null ? Basis.COMMON_PRACTICE : Basis.GIVEN);
  }

  private static Optional<WireForm> of(
      @Nullable Double areaMm2,
      @Nullable String awg,
      @Nullable Double milliohmPerM,
      @Nullable Double outerMm,
      @Nullable Double conductorMm,
      double maxC,
      Basis classBasis) {
    Cited area =
        areaMm2 != null
            ? Cited.given(areaMm2)
            : awg == null ? null : AwgTable.areaMm2(awg).orElse(null);
    if (area == null || !(area.value() > 0)) {
      return Optional.empty();
    }
    Cited ohms =
        milliohmPerM != null && milliohmPerM > 0
            ? Cited.given(milliohmPerM)
            : areaMm2 == null && awg != null
                ? ConductorResistanceTable.ofGauge(awg)
                    .orElseGet(() -> ConductorResistanceTable.ofArea(area.value()))
                : ConductorResistanceTable.ofArea(area.value());
    Cited outer = outerMm != null ? Cited.given(outerMm) : EquipmentWireTable.outerMm(area.value());
    Cited strand =
        conductorMm != null
            ? Cited.given(conductorMm)
            : EquipmentWireTable.conductorMm(area.value());
    double within = Math.max(outer.value() - 2 * LEAST_WALL_MM, outer.value() / 2);
    Basis basis =
        Basis.DERIVED
            .weaker(area.basis())
            .weaker(ohms.basis())
            .weaker(outer.basis())
            .weaker(strand.basis())
            .weaker(classBasis);
    Insulated insulated =
        new Insulated(
            Math.min(strand.value(), within), outer.value(), ohms.value(), Insulated.PLASTIC);
    return Optional.of(new WireForm(insulated, maxC, basis));
  }
}
