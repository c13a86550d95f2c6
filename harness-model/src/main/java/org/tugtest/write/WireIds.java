package org.tugtest.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.tugtest.text.Quoted;
import org.tugtest.write.CsvTable.Row;

/**
 * Gives every wire its id: the one in the list where that is legal and free, else {@code W001} and
 * so on. Wires share their ids with connectors, devices and splices, and case tells none apart.
 */
final class WireIds {
  private static final String KEPT = "; the cell is kept as a note.";

  private final int column;
  private final WireHeader header;
  private final UnclearCells unclear;
  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> rowOf = new HashMap<>();
  private int last;

  WireIds(WireHeader header, UnclearCells unclear) {
    this.header = header;
    this.column = header.column(WireColumn.ID);
    this.unclear = unclear;
  }

  /** The ids of these wires, in their order; {@code rows} by number. */
  List<String> give(List<WireDraft> wires, Map<Integer, Row> rows) {
    for (WireDraft wire : wires) {
      take(wire.from());
      take(wire.to());
    }
    List<String> given = new ArrayList<>();
    for (WireDraft wire : wires) {
      given.add(given(wire, Objects.requireNonNull(rows.get(wire.row()))));
    }
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < wires.size(); i++) {
      if (!given.get(i).isEmpty()) {
        ids.add(given.get(i));
        continue;
      }
      String id = next();
      ids.add(id);
      doubt(wires.get(i), rows, id);
    }
    return ids;
  }

  private void take(@org.jspecify.annotations.Nullable String reference) {
    if (reference != null) {
      int colon = reference.indexOf(':');
      taken.add(folded(colon < 0 ? reference : reference.substring(0, colon)));
    }
  }

  /** The id in the row when it can be used; else the empty text. */
  private String given(WireDraft wire, Row row) {
    String cell = row.cell(column);
    if (!LegalNames.isId(cell) || !taken.add(folded(cell))) {
      return "";
    }
    rowOf.put(folded(cell), wire.row());
    return cell;
  }

  private void doubt(WireDraft wire, Map<Integer, Row> rows, String id) {
    String cell = Objects.requireNonNull(rows.get(wire.row())).cell(column);
    if (cell.isEmpty()) {
      return;
    }
    String why;
    Integer first = rowOf.get(folded(cell));
    if (first != null) {
      why = " is the id of row " + first + " already";
    } else if (LegalNames.isId(cell)) {
      why = " is the id of something that a wire ends on";
    } else {
      why = " is no legal id: those are 1 to 40 letters A to Z, digits, - and _";
    }
    wire.note(header.name(column), cell);
    unclear.cell(
        wire.row(), column, cell, Quoted.text(cell) + why + ".", "The wire is " + id + KEPT);
  }

  private String next() {
    while (true) {
      String id = String.format(Locale.ROOT, "W%03d", ++last);
      if (taken.add(folded(id))) {
        return id;
      }
    }
  }

  private static String folded(String id) {
    return id.toLowerCase(Locale.ROOT);
  }
}
