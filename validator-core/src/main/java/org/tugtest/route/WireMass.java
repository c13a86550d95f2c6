package org.tugtest.route;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.WireSizes;
import org.tugtest.table.Cited;

/**
 * What a metre of a wire weighs: as its part gives it, else copper (8890 kg/m3, NBS Handbook 100 as
 * quoted) and, where the outside diameter is known, insulation round it (1400 kg/m3, from memory),
 * the strands filling three quarters of their circle where the part gives no conductor diameter.
 */
public final class WireMass {
  private static final double COPPER = 8.89;
  private static final double INSULATION = 1.4;
  private static final double STRANDS = 0.75;

  private final Harness harness;
  private final WireSizes sizes;

  /** The masses of the wires of a harness. */
  public WireMass(Harness harness, WireSizes sizes) {
    this.harness = harness;
    this.sizes = sizes;
  }

  /** Grams per metre; empty when neither a mass nor an area is known. */
  public Optional<Cited> gramsPerM(Wire wire) {
    WirePart part = wire.part() == null ? null : harness.parts().wires().get(wire.part());
    if (part != null && part.gramsPerM() != null) {
      return Optional.of(Cited.given(part.gramsPerM()));
    }
    return sizes.areaMm2(wire).map(area -> computed(wire, area, part));
  }

  private Cited computed(Wire wire, Cited area, @Nullable WirePart part) {
    double grams = COPPER * area.value();
    Cited outer = sizes.outerMm(wire).orElse(null);
    if (outer == null) {
      return new Cited(grams, "its copper alone", area.basis().weaker(Basis.DERIVED));
    }
    double conductor =
        part != null && part.conductorMm() != null
            ? Math.PI / 4 * part.conductorMm() * part.conductorMm()
            : area.value() / STRANDS;
    double ring = Math.max(0, Math.PI / 4 * outer.value() * outer.value() - conductor);
    return new Cited(
        grams + INSULATION * ring, "computed from area and outside diameter", Basis.MEMORY);
  }
}
