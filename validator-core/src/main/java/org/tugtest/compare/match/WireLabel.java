package org.tugtest.compare.match;

import org.tugtest.compare.entry.Renames;
import org.tugtest.model.Wire;

/** What a wire is, whatever it is called and wherever it goes: part or gauge, and colour. */
final class WireLabel {
  private WireLabel() {}

  static String of(Wire wire, Renames names) {
    return gauge(wire, names) + "|" + wire.colour();
  }

  /** Its part by the other id, else its area or gauge. */
  static String gauge(Wire wire, Renames names) {
    String part = wire.part();
    if (part != null) {
      return names.id("parts/wires", part);
    }
    return wire.areaMm2() != null ? wire.areaMm2() + " mm2" : "AWG " + wire.awg();
  }

  /** Whether the files say which wire it is. */
  static boolean hasGauge(Wire wire) {
    return wire.part() != null || wire.areaMm2() != null || wire.awg() != null;
  }
}
