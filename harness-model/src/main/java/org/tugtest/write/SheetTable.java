package org.tugtest.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tugtest.text.Nearest;
import org.tugtest.text.Quoted;

/**
 * An edited sheet, as a spreadsheet program may have saved it: commas, semicolons or tabs, in any
 * order of columns, with some left out.
 *
 * @param columns where each known column stands, from 0
 * @param rows the rows below the header that say something
 * @param decimalComma whether a comma in a number is more likely than a point
 * @param problems of the sheet as a whole; with any of them nothing can be merged
 */
record SheetTable(
    Map<String, Integer> columns,
    List<CsvTable.Row> rows,
    boolean decimalComma,
    List<CellProblem> problems) {

  static SheetTable read(SheetKind kind, byte[] content) {
    SheetText sheet = SheetText.decode(content);
    if (sheet.refused() != null) {
      return broken("The sheet " + sheet.refused() + ".", "Save it as CSV in UTF-8.");
    }
    CsvTable best = null;
    int known = 0;
    for (char separator : CsvTable.SEPARATORS.toCharArray()) {
      CsvTable table = CsvTable.sample(sheet.text(), separator);
      int here = (int) header(table).cells().stream().filter(c -> isKnown(kind, c)).count();
      if (here > known) {
        known = here;
        best = table;
      }
    }
    if (best == null) {
      return broken(
          "The sheet has none of the columns of " + kind.fileName() + ".",
          "Keep the header row as it was written: " + String.join(", ", kind.keys()) + " ...");
    }
    CsvTable table = CsvTable.read(sheet.text(), best.separator());
    if (table.broken() != null) {
      return broken(
          "In the sheet " + table.broken() + ".", "Close the quote in that row, or take it away.");
    }
    return of(kind, table);
  }

  private static SheetTable of(SheetKind kind, CsvTable table) {
    CsvTable.Row header = header(table);
    Map<String, Integer> columns = new HashMap<>();
    List<CellProblem> problems = new ArrayList<>();
    for (int c = 0; c < header.cells().size(); c++) {
      String name = header.cell(c).toLowerCase(Locale.ROOT);
      String column =
          kind.columns().stream()
              .filter(known -> known.toLowerCase(Locale.ROOT).equals(name))
              .findFirst()
              .orElse("");
      if (!column.isEmpty() && columns.putIfAbsent(column, c) != null) {
        problems.add(at(header, c, Quoted.text(column) + " is there twice.", "Delete one."));
      } else if (column.isEmpty() && !header.cell(c).isEmpty()) {
        String near = Nearest.question(header.cell(c), kind.columns());
        problems.add(
            at(
                header,
                c,
                Quoted.text(header.cell(c)) + " is no column of " + kind.fileName() + ".",
                near.isEmpty() ? "Delete the column." : "Rename or delete it: " + near));
      }
    }
    for (String key : kind.keys()) {
      if (!columns.containsKey(key)) {
        problems.add(
            at(header, -1, "The column " + key + " is missing.", "Put it back: rows go by it."));
      }
    }
    List<CsvTable.Row> rows =
        table.rows().stream()
            .filter(row -> row.number() > header.number() && !row.isBlank())
            .toList();
    for (CsvTable.Row row : rows) {
      for (int c = 0; c < row.cells().size(); c++) {
        if (!row.cell(c).isEmpty() && header.cell(c).isEmpty()) {
          problems.add(
              at(row, c, Quoted.text(row.cell(c)) + " stands in no column.", "Delete it."));
        }
      }
    }
    return new SheetTable(Map.copyOf(columns), rows, table.separator() != ',', problems);
  }

  private static CsvTable.Row header(CsvTable table) {
    return table.rows().stream()
        .filter(row -> !row.isBlank())
        .findFirst()
        .orElse(new CsvTable.Row(0, List.of()));
  }

  private static boolean isKnown(SheetKind kind, String cell) {
    return kind.columns().stream().anyMatch(cell::equalsIgnoreCase);
  }

  /** The cell of a column in a row; empty where the sheet lacks the column. */
  String cell(CsvTable.Row row, String column) {
    return row.cell(columns.getOrDefault(column, -1));
  }

  private static SheetTable broken(String message, String remedy) {
    return new SheetTable(
        Map.of(), List.of(), false, List.of(new CellProblem(0, 0, null, message, remedy)));
  }

  private static CellProblem at(CsvTable.Row row, int column, String message, String remedy) {
    return new CellProblem(row.number(), column + 1, null, message, remedy);
  }
}
