package org.tugtest.write;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.write.CsvTable.Row;

/**
 * The columns of one end of the wires: what it ends on, and perhaps the pin. Where a pin stands
 * beside a blank, the name above it holds, as in a list with merged cells.
 *
 * @param owner column of the end, from 0
 * @param pin column of its pin; -1 without one
 * @param carried the name from above, by row
 */
record EndColumns(int owner, int pin, Map<Integer, String> carried) {
  EndColumns {
    carried = Map.copyOf(carried);
  }

  static EndColumns of(WireHeader header, WireColumn end, WireColumn pin, List<Row> rows) {
    int owner = header.column(end);
    int pins = header.column(pin);
    Map<Integer, String> carried = new HashMap<>();
    String above = "";
    for (Row row : rows) {
      if (!row.cell(owner).isEmpty()) {
        above = row.cell(owner);
      } else if (!row.cell(pins).isEmpty() && !above.isEmpty()) {
        carried.put(row.number(), above);
      }
    }
    return new EndColumns(owner, pins, carried);
  }

  /** The name taken from above for that row; null where none was needed. */
  @Nullable String carried(Row row) {
    return carried.get(row.number());
  }

  EndCells.Cell cell(Row row) {
    return new EndCells.Cell(carried.getOrDefault(row.number(), row.cell(owner)), row.cell(pin));
  }
}
