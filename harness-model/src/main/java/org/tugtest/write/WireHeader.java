package org.tugtest.write;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.write.CsvTable.Row;

/**
 * Which column of a table holds what.
 *
 * @param lastRow number of the last row of the header; 0 when there is none
 * @param columns what is known, by column (from 0)
 * @param headers the header of each column; empty when there is none
 * @param score how much of it is known
 */
record WireHeader(int lastRow, Map<Integer, WireColumn> columns, List<String> headers, int score) {

  private static final int FARTHEST = 60;

  WireHeader {
    columns = Map.copyOf(columns);
    headers = List.copyOf(headers);
  }

  boolean hasEnds() {
    return columns.containsValue(WireColumn.FROM) && columns.containsValue(WireColumn.TO);
  }

  /** The column of that sort; -1 without one. */
  int column(WireColumn wanted) {
    return columns.entrySet().stream()
        .filter(entry -> entry.getValue() == wanted)
        .mapToInt(Map.Entry::getKey)
        .min()
        .orElse(-1);
  }

  /** The header of a column, or {@code column 3} where it has none. */
  String name(int column) {
    String header = column < headers.size() ? headers.get(column) : "";
    return header.isEmpty() ? "column " + (column + 1) : header;
  }

  /** Finds the header of a table: one row, or two where the upper groups the lower. */
  static WireHeader find(CsvTable table, ColumnMap map) {
    WireHeader best = of(0, List.of(), map);
    List<Row> rows = table.rows();
    for (int i = 0; i < Math.min(rows.size(), FARTHEST); i++) {
      Row row = rows.get(i);
      WireHeader one = of(row.number(), row.cells(), map);
      best = one.isBetterThan(best) ? one : best;
      if (i + 1 < rows.size() && isLowerHalf(rows.get(i + 1))) {
        WireHeader two = of(row.number() + 1, joined(row, rows.get(i + 1)), map);
        best = two.isBetterThan(best) ? two : best;
      }
    }
    return best;
  }

  private boolean isBetterThan(WireHeader other) {
    return hasEnds() != other.hasEnds() ? hasEnds() : score > other.score;
  }

  private static boolean isLowerHalf(Row row) {
    List<String> said = row.cells().stream().filter(cell -> !cell.isEmpty()).toList();
    return said.size() > 1 && said.stream().allMatch(HeaderWords::isPartOfHeader);
  }

  /** Two rows as one; the upper reaches over the blanks to its right. */
  private static List<String> joined(Row upper, Row lower) {
    List<String> cells = new ArrayList<>();
    String over = "";
    for (int c = 0; c < Math.max(upper.cells().size(), lower.cells().size()); c++) {
      over = upper.cell(c).isEmpty() ? over : upper.cell(c);
      String under = lower.cell(c);
      cells.add(under.isEmpty() ? upper.cell(c) : (over + " " + under).strip());
    }
    return cells;
  }

  private static WireHeader of(int lastRow, List<String> headers, ColumnMap map) {
    Map<Integer, WireColumn> columns = new HashMap<>();
    Set<WireColumn> taken = EnumSet.noneOf(WireColumn.class);
    boolean named = false;
    for (Map.Entry<WireColumn, String> said : map.columns().entrySet()) {
      int at = find(headers, said.getValue());
      named |= at >= 0;
      at = at >= 0 ? at : ColumnMap.position(said.getValue());
      if (at >= 0 && columns.putIfAbsent(at, said.getKey()) == null) {
        taken.add(said.getKey());
      }
    }
    int known = 0;
    for (int c = 0; c < headers.size(); c++) {
      WireColumn meaning = columns.containsKey(c) ? null : meaning(headers.get(c));
      if (meaning != null) {
        known++;
        if (isFree(meaning, taken)) {
          columns.put(c, meaning);
          taken.add(meaning);
        }
      }
    }
    givePins(columns, headers.size());
    standIn(columns, WireColumn.FROM_PIN, WireColumn.FROM);
    standIn(columns, WireColumn.TO_PIN, WireColumn.TO);
    int score = known + (named ? map.columns().size() : 0);
    return new WireHeader(lastRow, columns, headers, score);
  }

  private static @Nullable WireColumn meaning(String header) {
    return header.isEmpty() ? null : HeaderWords.of(header).column();
  }

  /** Whether a table has no column yet that says the same. Pins may be two. */
  private static boolean isFree(WireColumn column, Set<WireColumn> taken) {
    return column == WireColumn.PIN
        || (!taken.contains(column)
            && !(column.isLength() && taken.stream().anyMatch(WireColumn::isLength))
            && !(column == WireColumn.SIZE && taken.stream().anyMatch(WireColumn::isSize)));
  }

  private static int find(List<String> headers, String wanted) {
    for (int c = 0; c < headers.size(); c++) {
      if (folded(headers.get(c)).equals(folded(wanted))) {
        return c;
      }
    }
    return -1;
  }

  private static String folded(String header) {
    return header.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /** A bare pin column belongs to the end whose column stands left of it. */
  private static void givePins(Map<Integer, WireColumn> columns, int count) {
    for (int c = 0; c < count; c++) {
      if (columns.get(c) == WireColumn.PIN) {
        WireColumn left = columns.get(c - 1);
        boolean from = left == WireColumn.FROM && !columns.containsValue(WireColumn.FROM_PIN);
        boolean to = left == WireColumn.TO && !columns.containsValue(WireColumn.TO_PIN);
        if (from || to) {
          columns.put(c, from ? WireColumn.FROM_PIN : WireColumn.TO_PIN);
        } else {
          columns.remove(c);
        }
      }
    }
  }

  private static void standIn(Map<Integer, WireColumn> columns, WireColumn pin, WireColumn end) {
    if (!columns.containsValue(end)) {
      columns.replaceAll((column, meaning) -> meaning == pin ? end : meaning);
    }
  }
}
