package org.tugtest.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tugtest.read.ReadHarness;

/**
 * Writes wires, connectors or devices as a table for a spreadsheet: RFC 4180 with commas, UTF-8 and
 * LF, a column for each field of the format, natural order. Numbers stand as the files write them.
 * An apostrophe before a text keeps a spreadsheet from taking it for a date, a number or a formula;
 * {@link SheetMerge} takes it off again. The last two columns say where a row is written and, in
 * {@code stamp}, what it said when the table was made.
 */
public final class SheetExport {
  private SheetExport() {}

  /** The table of that kind; rows of files that cannot be read are left out. */
  public static String write(SheetKind kind, ReadHarness read) {
    SheetRows rows = new SheetRows(kind, read.texts());
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      printer.printRecord(kind.columns());
      for (SheetRows.Row row : rows.rows()) {
        printer.printRecord(cells(kind, rows, row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static List<String> cells(SheetKind kind, SheetRows rows, SheetRows.Row row) {
    return kind.columns().stream().map(column -> cell(kind, rows, row, column)).toList();
  }

  private static String cell(SheetKind kind, SheetRows rows, SheetRows.Row row, String column) {
    if (column.equals(SheetKind.FILE)) {
      return SheetCell.of(row.file());
    }
    if (column.equals(SheetKind.STAMP)) {
      return row.stamp();
    }
    if (kind.keys().contains(column)) {
      return key(kind, row, column);
    }
    return kind.shown().contains(column) ? rows.shown(row, column) : row.cell(column);
  }

  private static String key(SheetKind kind, SheetRows.Row row, String column) {
    if (column.equals(kind.keys().get(0))) {
      return SheetCell.of(row.id());
    }
    if (column.equals("what")) {
      return row.level().word();
    }
    return row.name().isEmpty() ? "" : SheetCell.of(row.name());
  }
}
