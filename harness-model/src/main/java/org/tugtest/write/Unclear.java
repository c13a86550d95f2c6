package org.tugtest.write;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Something in a spreadsheet that was not plain, and what became of it. Rows count from 1 as a
 * spreadsheet counts them, blank rows included; columns count from 1.
 *
 * @param row first row it stands in; 0 for the whole file
 * @param column column it stands in; 0 for the whole row
 * @param cell what the cell says; empty for a whole row or file
 * @param message what is unclear, a sentence
 * @param done what was done or left out, a sentence
 * @param moreRows further rows that say the same in the same column
 */
public record Unclear(
    int row, int column, String cell, String message, String done, List<Integer> moreRows) {

  private static final int SHOWN = 5;

  public Unclear {
    moreRows = List.copyOf(moreRows);
  }

  /** One line: {@code row 12, column 3 (also rows 14, 15): ...}. */
  public String shown() {
    String where =
        row == 0 ? "file" : column == 0 ? "row " + row : "row " + row + ", column " + column;
    String and = moreRows.size() > SHOWN ? " and " + (moreRows.size() - SHOWN) + " more" : "";
    String more =
        moreRows.isEmpty()
            ? ""
            : " (also row"
                + (moreRows.size() == 1 ? " " : "s ")
                + moreRows.stream()
                    .limit(SHOWN)
                    .map(String::valueOf)
                    .collect(Collectors.joining(", "))
                + and
                + ")";
    return where + more + ": " + message + " " + done;
  }
}
