package org.tugtest.report.sheets;

/**
 * A column of a table.
 *
 * @param key its head in the CSV file, with the unit in it: {@code cut_mm}
 * @param title its head on paper
 * @param unit of its figures, printed after the title; empty for texts
 * @param number whether it holds figures, which stand at the right
 * @param where in which of the two it stands
 */
public record Column(String key, String title, String unit, boolean number, Where where) {
  /** Where a column stands. */
  public enum Where {
    /** On paper and in the CSV file. */
    BOTH,
    /** On paper alone. */
    PAPER,
    /** In the CSV file alone. */
    CSV
  }

  /** A column of texts. */
  public static Column text(String key, String title) {
    return new Column(key, title, "", false, Where.BOTH);
  }

  /** A column of figures in one unit; empty for counts. */
  public static Column number(String key, String title, String unit) {
    return new Column(key, title, unit, true, Where.BOTH);
  }

  /** The same on paper alone: room to write. */
  public Column onPaper() {
    return new Column(key, title, unit, number, Where.PAPER);
  }

  /** The same in the CSV file alone: what a heading says on paper. */
  public Column inCsv() {
    return new Column(key, title, unit, number, Where.CSV);
  }

  boolean printed() {
    return where != Where.CSV;
  }

  /** Whether it stands in the CSV file. */
  public boolean exported() {
    return where != Where.PAPER;
  }
}
