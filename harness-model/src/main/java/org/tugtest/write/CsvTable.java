package org.tugtest.write;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a CSV text.
 *
 * @param separator what stands between cells
 * @param rows all rows, blank ones included
 * @param broken why the text could not be read to its end; null when it could
 */
record CsvTable(char separator, List<Row> rows, @Nullable String broken) {
  /** What may stand between cells, the likeliest first. */
  static final String SEPARATORS = ",;\t|";

  private static final int SAMPLE = 1 << 16;
  private static final String ANNOUNCED = "sep=";

  /**
   * One row.
   *
   * @param number from 1, as a spreadsheet counts
   * @param cells without blanks at either end, no-break spaces included
   */
  record Row(int number, List<String> cells) {
    Row {
      cells = List.copyOf(cells);
    }

    /** The cell at {@code column} (from 0); empty beyond the last. */
    String cell(int column) {
      return column >= 0 && column < cells.size() ? cells.get(column) : "";
    }

    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }

    /** The cells that say something, with {@code |} between. */
    String shown() {
      return String.join(" | ", cells.stream().filter(cell -> !cell.isEmpty()).toList());
    }
  }

  /** All rows of {@code text}. */
  static CsvTable read(String text, char separator) {
    return parse(text, separator, false);
  }

  /** The first rows of {@code text}, as far as they can be read. */
  static CsvTable sample(String text, char separator) {
    if (text.length() <= SAMPLE) {
      return parse(text, separator, true);
    }
    int end = text.lastIndexOf('\n', SAMPLE);
    return parse(text.substring(0, end > 0 ? end : SAMPLE), separator, true);
  }

  /** The separator that a first line {@code sep=;} announces; null without one. */
  static @Nullable Character announced(String text) {
    boolean is =
        text.regionMatches(true, 0, ANNOUNCED, 0, ANNOUNCED.length())
            && text.length() > ANNOUNCED.length() + 1
            && "\r\n".indexOf(text.charAt(ANNOUNCED.length() + 1)) >= 0;
    return is ? text.charAt(ANNOUNCED.length()) : null;
  }

  private static CsvTable parse(String text, char separator, boolean lenient) {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(separator)
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .setTrailingData(true)
            .setLenientEof(lenient)
            .get();
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
      boolean announces = announced(text) != null;
      for (CSVRecord csv : parser) {
        boolean says = !announces || !rows.isEmpty();
        List<String> cells = says ? csv.stream().map(CsvTable::cleaned).toList() : List.of("");
        rows.add(new Row(rows.size() + 1, cells));
      }
      return new CsvTable(separator, List.copyOf(rows), null);
    } catch (IOException | UncheckedIOException e) {
      String why =
          String.format(
              Locale.ROOT, "row %d cannot be read: a quote is not closed", rows.size() + 1);
      return new CsvTable(separator, List.copyOf(rows), why);
    }
  }

  /** Takes off blanks, and the {@code ="007"} by which sheets keep a text a text. */
  private static String cleaned(String cell) {
    String text = stripped(cell.replace("\r\n", "\n").replace('\r', '\n'));
    if (text.length() > 3 && text.startsWith("=\"") && text.endsWith("\"")) {
      return stripped(text.substring(2, text.length() - 1));
    }
    return text;
  }

  private static String stripped(String cell) {
    int start = 0;
    int end = cell.length();
    while (start < end && isBlank(cell.charAt(start))) {
      start++;
    }
    while (end > start && isBlank(cell.charAt(end - 1))) {
      end--;
    }
    return cell.substring(start, end);
  }

  private static boolean isBlank(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\u200B' || c == '\uFEFF';
  }
}
