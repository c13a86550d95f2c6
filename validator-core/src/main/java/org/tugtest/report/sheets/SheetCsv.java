package org.tugtest.report.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tugtest.report.PrintableText;
import org.tugtest.write.SheetCell;

/**
 * The tables of a sheet as CSV: RFC 4180 with commas, UTF-8 and LF, one line of heads. Figures have
 * a decimal point; a text that a spreadsheet would take for a formula, a date or a number gets an
 * apostrophe before it, as in the tables of the goal {@code sheet}.
 */
final class SheetCsv {
  private static final Pattern FIGURE = Pattern.compile("-?\\d{1,15}(\\.\\d+)?");

  private SheetCsv() {}

  /** The tables of each CSV file of a sheet, by its name. */
  static Map<String, List<Table>> tables(Sheet sheet) {
    Map<String, List<Table>> files = new LinkedHashMap<>();
    for (Block block : sheet.blocks()) {
      if (block instanceof Table table && !table.csv().equals(Table.NO_CSV)) {
        String name = sheet.name() + (table.csv().isEmpty() ? "" : "-" + table.csv()) + ".csv";
        files.computeIfAbsent(name, none -> new ArrayList<>()).add(table);
      }
    }
    return files;
  }

  /**
   * The rows of these tables, one table after the other.
   *
   * @throws IllegalArgumentException when their columns differ
   */
  static String text(List<Table> tables) {
    List<Column> columns = tables.get(0).columns();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      printer.printRecord(heads(columns));
      for (Table table : tables) {
        if (!heads(table.columns()).equals(heads(columns))) {
          throw new IllegalArgumentException(
              "tables of one CSV file have other columns: " + columns + ", " + table.columns());
        }
        for (List<Cell> row : table.rows()) {
          printer.printRecord(values(table.columns(), row));
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toString();
  }

  private static List<String> heads(List<Column> columns) {
    return columns.stream().filter(Column::exported).map(Column::key).toList();
  }

  private static List<String> values(List<Column> columns, List<Cell> row) {
    List<String> values = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).exported()) {
        values.add(value(columns.get(i), row.get(i).value()));
      }
    }
    return values;
  }

  private static String value(Column column, String value) {
    if (value.isEmpty() || (column.number() && FIGURE.matcher(value).matches())) {
      return value;
    }
    return SheetCell.of(PrintableText.wellFormed(value));
  }
}
