package org.tugtest.write;

import org.jspecify.annotations.Nullable;

/**
 * Why an edited sheet cannot be merged back. Rows and columns count from 1 as a spreadsheet counts.
 *
 * @param row 0 for the sheet as a whole
 * @param column 0 for the row as a whole
 * @param file the file that is left alone because of it; null when none is written
 * @param message one sentence
 * @param remedy what to do, one sentence
 */
public record CellProblem(
    int row, int column, @Nullable String file, String message, String remedy) {

  /** One line: {@code row 12, column 3: ...}. */
  public String shown() {
    String where = row == 0 ? "sheet" : "row " + row + (column == 0 ? "" : ", column " + column);
    return where + ": " + message + " " + remedy;
  }
}
