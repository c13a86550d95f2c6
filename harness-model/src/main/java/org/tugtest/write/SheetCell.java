package org.tugtest.write;

import java.util.regex.Pattern;

/**
 * How a text stands in a cell. A spreadsheet takes {@code 1-2} for a date, {@code 007} and {@code
 * 1E5} for numbers and {@code =...} for a formula to run. Such texts get an apostrophe before them,
 * which reading takes off again; so does a text that begins with an apostrophe, and the empty text,
 * for an empty cell means that nothing is said. Nothing is lost either way.
 */
public final class SheetCell {
  private static final String GUARD = "'";
  private static final Pattern FORMULA =
      Pattern.compile("[=+@'\\t\\r\\n -].*|.*\\s", Pattern.DOTALL);
  private static final Pattern NUMBER =
      Pattern.compile("0\\d+|\\d{16,}|\\d*[.,]\\d*|\\d+([.,]\\d+)?[eE][+-]?\\d+|[\\d.,]+ ?%");
  private static final Pattern DATE = Pattern.compile("\\d{1,4}[-/.: ]\\d{1,4}([-/.: ]\\d{1,4})?");
  private static final Pattern MONTH =
      Pattern.compile(
          "(?i)(\\d{1,2}[-/. ]*)?"
              + "(jan(uary?)?|feb(ruary?)?|mar(ch)?|märz?|mrz|apr(il)?|may|mai|june?|juni|july?|juli"
              + "|aug(ust)?|sept?(ember)?|o[ck]t(ober)?|nov(ember)?|de[cz](ember)?)([-/."
              + " ]*\\d{1,4})?");
  private static final Pattern WORD = Pattern.compile("(?i)true|false|wahr|falsch");
  private static final Pattern PLAIN =
      Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?|true|false");

  private SheetCell() {}

  /** The cell of a text. */
  public static String of(String text) {
    return text.isEmpty() || isMangled(text) ? GUARD + text : text;
  }

  /** The cell of a number or truth value as the file writes it. */
  static String ofToken(String raw) {
    return PLAIN.matcher(raw).matches() ? raw : of(raw);
  }

  /** The text in a cell that is not empty. */
  static String text(String cell) {
    return cell.startsWith(GUARD) ? cell.substring(1) : cell;
  }

  private static boolean isMangled(String text) {
    return FORMULA.matcher(text).matches()
        || NUMBER.matcher(text).matches()
        || DATE.matcher(text).matches()
        || (MONTH.matcher(text).matches() && text.matches(".*\\d.*"))
        || WORD.matcher(text).matches();
  }
}
