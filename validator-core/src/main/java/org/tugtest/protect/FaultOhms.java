package org.tugtest.protect;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.network.Resistance;
import org.tugtest.network.WorkingResistances;
import org.tugtest.table.Cited;

/** The resistance of everything that current of a fault passes, in one corner. */
final class FaultOhms {
  /** The class of a wire that gives only its size, as the format says. */
  private static final double CLASS_C = 100;

  private static final double COLD_C = 20;
  private static final double WORN = 2;
  private static final double MILLI = 1e-3;

  /** A resistance below this, in ohms, counts as this. */
  private static final double LEAST_OHMS = 1e-7;

  private final Harness harness;
  private final WorkingResistances working;
  private final FaultCorner corner;

  FaultOhms(Harness harness, WorkingResistances working, FaultCorner corner) {
    this.harness = harness;
    this.working = working;
    this.corner = corner;
  }

  /** The resistance of an edge; what is not known of it is left out of its ohms. */
  Resistance of(Edge edge) {
    Resistance figure = figure(edge);
    return new Resistance(Math.max(LEAST_OHMS, figure.ohms()), figure.basis(), figure.missing());
  }

  private Resistance figure(Edge edge) {
    if (edge instanceof Edge.OfElement inside) {
      return inside.element() instanceof Element.Fuse ? fuse(inside) : working.of(edge, COLD_C);
    }
    Wire wire = edge instanceof Edge.OfWire of ? of.wire() : null;
    double celsius = corner == FaultCorner.LEAST ? classOf(wire) : COLD_C;
    Resistance whole = working.of(edge, celsius);
    Optional<Cited> conductor =
        wire == null ? Optional.empty() : working.conductorMilliohm(wire, celsius);
    double metal = conductor.map(Cited::value).orElse(0.0) * MILLI;
    if (corner == FaultCorner.GREATEST) {
      Basis basis = conductor.map(Cited::basis).orElse(Basis.GIVEN);
      return new Resistance(metal, basis, whole.missing());
    }
    double joints = Math.max(0, whole.ohms() - metal);
    Basis basis = joints > 0 ? whole.basis().weaker(Basis.COMMON_PRACTICE) : whole.basis();
    return new Resistance(metal + WORN * joints, basis, whole.missing());
  }

  private double classOf(@Nullable Wire wire) {
    WirePart part =
        wire == null || wire.part() == null ? null : harness.parts().wires().get(wire.part());
    return part == null || part.maxC() == null ? CLASS_C : part.maxC();
  }

  private Resistance fuse(Edge.OfElement edge) {
    return working
        .fuseMilliohm(edge, true)
        .map(cold -> new Resistance(cold.value() * MILLI, cold.basis(), ""))
        .orElseGet(() -> working.of(edge, COLD_C));
  }
}
