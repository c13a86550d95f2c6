package org.tugtest.compare.change;

import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.WireSizes;
import org.tugtest.table.Cited;
import org.tugtest.text.Quoted;

/** The gauge of a wire in words. */
final class Gauge {
  private Gauge() {}

  /** {@code 1.5 mm2}, {@code AWG 20}, the part's id, or nothing. */
  static String of(Wire wire, Facts facts) {
    Optional<Cited> area = area(wire, facts);
    if (wire.awg() != null) {
      return "AWG " + wire.awg();
    }
    if (area.isPresent()) {
      return Quoted.number(area.get().value()) + " mm2";
    }
    return wire.part() == null ? "" : wire.part();
  }

  static Optional<Cited> area(Wire wire, Facts facts) {
    return new WireSizes(facts.harness()).areaMm2(wire);
  }
}
