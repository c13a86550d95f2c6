package org.tugtest.report;

import java.util.Locale;

/**
 * Makes text of the files safe to print. What a file says may hold control characters that move a
 * cursor, marks that turn the reading direction, or halves of characters that no encoding takes.
 */
public final class PrintableText {
  private static final char REPLACEMENT = '\uFFFD';
  private static final int NO_CHARACTER = 0xFFFE;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private PrintableText() {}

  /**
   * The text on one line, with each character that is not to be seen written as {@code \}{@code
   * uXXXX}: controls, line ends, direction marks, lone surrogates, values that are no characters.
   * Joiners inside emoji stay.
   */
  public static String of(String text) {
    int first = firstUnprintable(text);
    if (first < 0) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.length() + 16).append(text, 0, first);
    for (int i = first; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (printable(c)) {
        shown.appendCodePoint(c);
      } else {
        shown.append(String.format(Locale.ROOT, "\\u%04x", c));
      }
      i += Character.charCount(c);
    }
    return shown.toString();
  }

  /** The text with each lone surrogate replaced by U+FFFD, so that UTF-8 can carry it. */
  public static String wellFormed(String text) {
    StringBuilder whole = null;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (Character.getType(c) == Character.SURROGATE) {
        whole = whole == null ? new StringBuilder(text) : whole;
        whole.setCharAt(i, REPLACEMENT);
      }
      i += Character.charCount(c);
    }
    return whole == null ? text : whole.toString();
  }

  /** At most {@code most} characters of the text, the last being an ellipsis when some are cut. */
  public static String cut(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    int end = most - 1;
    if (Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(0, end) + "…";
  }

  private static int firstUnprintable(String text) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (!printable(c)) {
        return i;
      }
      i += Character.charCount(c);
    }
    return -1;
  }

  private static boolean printable(int c) {
    if (c < 0x7F) {
      return c >= ' ';
    }
    if ((c & NO_CHARACTER) == NO_CHARACTER) {
      return false;
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      case Character.FORMAT -> c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER;
      default -> true;
    };
  }
}
