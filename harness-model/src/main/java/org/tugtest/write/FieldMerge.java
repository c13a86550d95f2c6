package org.tugtest.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;
import org.tugtest.write.FileEdits.Cell;
import org.tugtest.write.SheetRows.Row;

/** Compares the cells of a row with what the files say, and turns differences into changes. */
final class FieldMerge {
  private final SheetKind kind;
  private final SheetTable table;
  private final SheetRows now;
  private final Map<String, FileEdits> edits;
  private final List<CellProblem> problems;

  FieldMerge(
      SheetKind kind,
      SheetTable table,
      SheetRows now,
      Map<String, FileEdits> edits,
      List<CellProblem> problems) {
    this.kind = kind;
    this.table = table;
    this.now = now;
    this.edits = edits;
    this.problems = problems;
  }

  /** The fields whose cells say something else; what may not be edited is a problem at once. */
  List<String> differing(CsvTable.Row row, Row known) {
    List<String> differing = new ArrayList<>();
    for (String column : kind.columns()) {
      String cell = table.cell(row, column);
      if (!table.columns().containsKey(column)) {
        continue;
      }
      if (known.level().fields().contains(column)) {
        if (!SheetType.of(column).same(known.cell(column), cell)) {
          differing.add(column);
        }
      } else if (!cell.isEmpty() && kind.shown().contains(column)) {
        if (!SheetType.LIST.same(now.shown(known, column), cell)) {
          String message = column + " of " + known.place() + " is only shown here.";
          problem(row, column, known.file(), message, "Edit it in the sheet of wires.");
        }
      } else if (!cell.isEmpty() && kind.fields().contains(column)) {
        String message = known.place() + " has no " + column + ".";
        problem(row, column, known.file(), message, "Empty the cell.");
      }
    }
    return differing;
  }

  /** Asks for these fields to become what their cells say. */
  void change(CsvTable.Row row, Row known, List<String> fields) {
    FileEdits file = edits.get(known.file());
    if (file == null) {
      return;
    }
    for (String field : fields) {
      change(row, known, field, file);
    }
  }

  private void change(CsvTable.Row row, Row known, String field, FileEdits file) {
    List<String> path = known.level().path(known.id(), known.name(), field);
    String text = table.cell(row, field);
    if (text.isEmpty()) {
      file.remove(path, cell(row, field));
      return;
    }
    SheetType type = SheetType.of(field);
    String token = type.token(text, table.decimalComma());
    if (token == null) {
      String is = field + " of " + known.place() + " is " + Quoted.text(text);
      String wanted = type.wanted();
      problem(
          row, field, known.file(), is + ", not plainly " + wanted + ".", "Write " + wanted + ".");
    } else if (!field.equals(known.level().aside()) && endsList(known, file)) {
      problem(row, field, known.file(), endOfList(known), "Write the pins in the file.");
    } else if (!file.fits(path)) {
      String message = "What stands around " + field + " of " + known.place() + " is no object.";
      problem(row, field, known.file(), message, "Put it right in the file first.");
    } else {
      file.set(path, token, cell(row, field));
    }
  }

  /**
   * Whether a pin would be the first that its device lists: the others, which are there by being
   * named, would no longer be.
   */
  static boolean endsList(Row known, FileEdits file) {
    return known.level() == SheetLevel.PIN
        && file.tree().objectAt("devices", known.id(), "pins") == null;
  }

  static String endOfList(Row known) {
    return known.place() + " cannot be written from a sheet: " + known.id() + " lists no pins.";
  }

  Cell cell(CsvTable.Row row, String column) {
    return new Cell(row.number(), table.columns().getOrDefault(column, -1) + 1);
  }

  /** Notes a problem; without a file it stops all of them. */
  void problem(
      CsvTable.Row row, String column, @Nullable String file, String message, String remedy) {
    String blocked = file == null || file.isEmpty() ? null : file;
    Cell cell = cell(row, column);
    problems.add(new CellProblem(cell.row(), cell.column(), blocked, message, remedy));
  }
}
