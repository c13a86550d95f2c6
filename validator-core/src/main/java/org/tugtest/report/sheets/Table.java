package org.tugtest.report.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of a sheet. Tables of one sheet that name the same CSV file have the same heads there and
 * go into that file one after the other.
 *
 * @param caption printed above it; empty: none
 * @param csv what the name of its CSV file has after that of the sheet, {@code ""} for nothing;
 *     {@link #NO_CSV} when it is printed only
 * @param ticked whether each row begins with a box to tick, on paper
 * @param rows each with a cell for every column
 * @param empty what is said when there are no rows
 */
public record Table(
    String caption,
    String csv,
    boolean ticked,
    List<Column> columns,
    List<List<Cell>> rows,
    String empty)
    implements Block {
  /** For a table that is printed only. */
  public static final String NO_CSV = "-";

  public Table {
    columns = List.copyOf(columns);
    List<List<Cell>> kept = new ArrayList<>();
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            row.size() + " cells for " + columns.size() + " columns in " + caption + ": " + row);
      }
      kept.add(List.copyOf(row));
    }
    rows = List.copyOf(kept);
  }

  /** A table with a CSV file named like its sheet. */
  public static Table of(List<Column> columns, List<List<Cell>> rows, String empty) {
    return new Table("", "", false, columns, rows, empty);
  }

  /** The same with words above it. */
  public Table captioned(String words) {
    return new Table(words, csv, ticked, columns, rows, empty);
  }

  /** The same with a box to tick before each row. */
  public Table withTicks() {
    return new Table(caption, csv, true, columns, rows, empty);
  }

  /** The same with another CSV file. */
  public Table inCsv(String name) {
    return new Table(caption, name, ticked, columns, rows, empty);
  }
}
