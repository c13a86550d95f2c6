package org.tugtest.network;

import java.util.Optional;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;

/** How long wires are; empty for a wire of which nothing tells. */
@FunctionalInterface
public interface WireLengths {
  /** The length of a wire. */
  Optional<WireLength> of(Wire wire);

  /** What the files say: the built length, else the cut length. */
  static WireLengths given() {
    return wire -> {
      if (wire.builtMm() != null) {
        return Optional.of(new WireLength(wire.builtMm().doubleValue(), Basis.GIVEN, "built"));
      }
      if (wire.cutMm() != null) {
        return Optional.of(new WireLength(wire.cutMm().doubleValue(), Basis.GIVEN, "cut"));
      }
      return Optional.empty();
    };
  }
}
