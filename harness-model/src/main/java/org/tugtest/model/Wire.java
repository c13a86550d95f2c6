package org.tugtest.model;

import java.util.ArrayList;
import java.util.Collections;
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

  /** The same wire between other ends. */
  public Wire between(@Nullable Ref one, @Nullable Ref other) {
    return with(one, other, part, areaMm2, awg, via, fromTerminal, toTerminal);
  }

  /** The same wire of a part, which says its size. */
  public Wire ofPart(String id) {
    return with(from, to, id, null, null, via, fromTerminal, toTerminal);
  }

  /** The same wire with its ends the other way round. */
  public Wire turned() {
    List<String> back = new ArrayList<>(via);
    Collections.reverse(back);
    return with(to, from, part, areaMm2, awg, back, toTerminal, fromTerminal);
  }

  private Wire with(
      @Nullable Ref one,
      @Nullable Ref other,
      @Nullable String ofPart,
      @Nullable Double area,
      @Nullable String gauge,
      List<String> nodes,
      @Nullable String terminal,
      @Nullable String otherTerminal) {
    return new Wire(
        id,
        loom,
        one,
        other,
        ofPart,
        area,
        gauge,
        colour,
        colourDrawn,
        circuit,
        nodes,
        laidInPlace,
        cutMm,
        builtMm,
        terminal,
        otherTerminal,
        label,
        evidence,
        decision,
        reason);
  }

  /** What becomes of a donor wire. */
  public enum Decision implements Word {
    KEEP,
    EXTEND,
    REMOVE,
    UNDECIDED
  }
}
