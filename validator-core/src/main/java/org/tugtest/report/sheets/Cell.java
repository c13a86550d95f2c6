package org.tugtest.report.sheets;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.tugtest.report.html.text.Figures;
import org.tugtest.report.html.text.Swatch;

/**
 * What stands in one place of a table.
 *
 * @param text as people read it on paper; empty when nothing is said
 * @param below a second line in small print, on paper alone; empty: none
 * @param value as it stands in the CSV file: the same, or a plain number with a decimal point
 * @param guessed whether it is believed and not shown; prints "guess"
 * @param known whether it is known; else the text says why it is not
 * @param swatch the picture of a wire colour beside the text; null: none
 */
public record Cell(
    String text,
    String below,
    String value,
    boolean guessed,
    boolean known,
    @Nullable Swatch swatch) {
  /** Nothing is said, and nothing is missing. */
  public static final Cell EMPTY = new Cell("", "", "", false, true, null);

  private static final String NOT_KNOWN = "not known";

  /** A text; null or blank: nothing is said. */
  public static Cell text(@Nullable String text) {
    return text == null || text.isBlank() ? EMPTY : new Cell(text, "", text, false, true, null);
  }

  /** A figure that counts things. */
  public static Cell count(int count) {
    return text(Integer.toString(count));
  }

  /**
   * A figure in the unit of its column, rounded half up.
   *
   * @param decimals most digits after the point; needless zeros are left out
   */
  public static Cell number(double value, int decimals) {
    String fixed = Figures.fixed(value, decimals);
    return text(
        Double.isFinite(value)
            ? new BigDecimal(fixed).stripTrailingZeros().toPlainString()
            : fixed);
  }

  /** A figure, or why it is not known when it is null. */
  public static Cell number(@Nullable Double value, int decimals, String why) {
    return value == null ? unknown(why) : number(value.doubleValue(), decimals);
  }

  /**
   * {@code not known: no part given}, on paper with the reason in small print. Never stands for
   * zero.
   */
  public static Cell unknown(String why) {
    String value = why.isEmpty() ? NOT_KNOWN : NOT_KNOWN + ": " + why;
    return new Cell(NOT_KNOWN, why, value, false, false, null);
  }

  /** A wire colour with its picture, base first; null or blank: none given. */
  public static Cell colour(@Nullable String letters) {
    return letters == null || letters.isBlank()
        ? EMPTY
        : new Cell(letters, "", letters, false, true, Swatch.of(letters));
  }

  /** The same, marked as a guess when it is one. */
  public Cell guessed(boolean guess) {
    return new Cell(text, below, value, guess, known, swatch);
  }

  /** The same, read otherwise on paper than in the CSV file. */
  public Cell shown(String onPaper) {
    return new Cell(onPaper, below, value, guessed, known, swatch);
  }

  /**
   * The same with a second line in small print, on paper alone; an empty one is left out. What is
   * not known keeps its reason there.
   */
  public Cell over(String smallPrint) {
    return !known ? this : new Cell(text, smallPrint, value, guessed, known, swatch);
  }

  /** Whether there is nothing to print. */
  public boolean isEmpty() {
    return text.isEmpty() && below.isEmpty();
  }
}
