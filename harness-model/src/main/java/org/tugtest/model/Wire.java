package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One wire from end to end. Which end is which changes nothing.
 *
 * @param from null when the file gives no such end
 * @param to null when the file gives no such end
 * @param part wire part; else {@code areaMm2} or {@code awg} (thin wall, 100 °C)
 * @param colour as seen, base / stripe, IEC 60757 codes
 * @param colourDrawn as the drawing says, where that differs
 * @param via nodes to pass, in order
 * @param laidInPlace laid along its way before the covering goes on and cut there: it has no cut
 *     length
 * @param cutMm planned length
 * @param builtMm measured length
 * @param fromTerminal terminal where {@code from} is a device pin
 * @param toTerminal terminal where {@code to} is a device pin
 * @param label null: the id; empty: none fitted
 * @param evidence null: the loom's
 */
public record Wire(
    String id,
    @Nullable String loom,
    @Nullable Ref from,
    @Nullable Ref to,
    @Nullable String part,
    @Nullable Double areaMm2,
    @Nullable String awg,
    @Nullable String colour,
    @Nullable String colourDrawn,
    @Nullable String circuit,
    List<String> via,
    boolean laidInPlace,
    @Nullable Double cutMm,
    @Nullable Double builtMm,
    @Nullable String fromTerminal,
    @Nullable String toTerminal,
    @Nullable String label,
    @Nullable Evidence evidence,
    @Nullable Decision decision,
    @Nullable String reason) {

  public Wire {
    via = List.copyOf(via);
  }

  /** What is printed on its label; empty when none is fitted. */
  public String labelText() {
    return label == null ? id : label;
  }

  /** What becomes of a donor wire. */
  public enum Decision implements Word {
    KEEP,
    EXTEND,
    REMOVE,
    UNDECIDED
  }
}
