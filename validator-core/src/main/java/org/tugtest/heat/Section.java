package org.tugtest.heat;

import java.util.List;
import org.tugtest.table.Cited;

/**
 * What lies side by side in a place, and what is round it.
 *
 * @param where as people say it: {@code segment e1}, {@code its ends}
 * @param conductors all of known size, those of cables one by one; a wire that runs out and back
 *     twice
 * @param unsized wires in it whose size is not known; their heat is left out
 * @param envelope what is round them
 * @param ambientC air round it all
 */
public record Section(
    String where,
    List<Conductor> conductors,
    List<String> unsized,
    Envelope envelope,
    Cited ambientC) {

  /** A wire in it. */
  public record Conductor(String wire, WireForm form) {}

  public Section {
    conductors = List.copyOf(conductors);
    unsized = List.copyOf(unsized);
  }

  /** Whether a covering keeps its heat in; no published figure checks what is said then. */
  public boolean enclosed() {
    return !envelope.equals(Envelope.BARE);
  }

  /** It with currents, in the order of its conductors. */
  ShrunkBundle with(double[] amps, Envelope around, FreeAirAmps freeAir) {
    return new ShrunkBundle(bundled(amps), around, ambientC.value(), freeAir);
  }

  /**
   * Its conductors with currents. A class that the air by itself is over limits no neighbour: that
   * wire is in the wrong place whatever flows.
   */
  List<BundledWire> bundled(double[] amps) {
    double highest = 0;
    for (Conductor one : conductors) {
      highest = Math.max(highest, one.form().maxC());
    }
    BundledWire[] all = new BundledWire[amps.length];
    for (int i = 0; i < amps.length; i++) {
      WireForm form = conductors.get(i).form();
      double limit = form.maxC() > ambientC.value() ? form.maxC() : highest;
      all[i] = new BundledWire(form.insulated(), limit, amps[i]);
    }
    return List.of(all);
  }

  /** The same with another form of one of its wires, wherever it lies in it. */
  Section with(String wire, WireForm form) {
    List<Conductor> others =
        conductors.stream()
            .map(one -> one.wire().equals(wire) ? new Conductor(wire, form) : one)
            .toList();
    return new Section(where, others, unsized, envelope, ambientC);
  }
}
