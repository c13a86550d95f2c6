package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.report.html.text.Swatch;

/**
 * A connector as it looks from its two sides.
 *
 * @param number from 1; its anchor is {@code face-N}
 * @param facts what there is to say of it in short: housing, side, mate, node
 * @param loom empty: loose
 * @param rows seen from the wire side, latch up, all of one length; one row in order of names when
 *     the layout is not known
 * @param layoutKnown whether the housing gives the rows
 */
record Face(
    int number,
    String id,
    String loom,
    List<String> facts,
    List<List<Cell>> rows,
    boolean layoutKnown) {

  /**
   * One cavity, or a gap when its name is empty.
   *
   * @param wires the wire ends in it
   * @param plugged whether an empty one is closed with a blank
   * @param mark the gravest standing finding on it; null: none
   */
  record Cell(String name, List<CellWire> wires, boolean plugged, @Nullable Mark mark) {
    boolean gap() {
      return name.isEmpty();
    }
  }

  /** A wire end in a cavity. */
  record CellWire(String id, Swatch swatch, String size, boolean guessed) {}

  /** How wide it is, for the paper: up to 11 columns, up to 19, more. */
  String width() {
    int columns = rows.isEmpty() ? 0 : rows.get(0).size();
    return columns <= 11 ? "" : columns <= 19 ? " broad" : " broadest";
  }

  /** The rows seen from the mating side: each the other way round. */
  List<List<Cell>> mirrored() {
    List<List<Cell>> mirrored = new ArrayList<>();
    for (List<Cell> row : rows) {
      List<Cell> turned = new ArrayList<>(row);
      Collections.reverse(turned);
      mirrored.add(List.copyOf(turned));
    }
    return mirrored;
  }
}
