package org.tugtest.text;

import java.math.BigDecimal;

/** Texts from files as messages show them: short, on one line, nothing invisible. */
public final class Quoted {
  private static final int MOST = 60;

  private Quoted() {}

  /** The text in double quotes, at most 60 characters of it. */
  public static String text(String text) {
    return "\"" + name(text) + "\"";
  }

  /** A number in plain decimals, without needless zeros. */
  public static String number(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value) || Math.abs(value) >= 1e15) {
      return Double.toString(value);
    }
    String plain = BigDecimal.valueOf(value + 0.0).stripTrailingZeros().toPlainString();
    return plain.length() > 2 * MOST ? Double.toString(value) : plain;
  }

  /**
   * The text without quotes, at most 60 characters of it; control characters and halves of
   * surrogate pairs are written as escapes.
   */
  public static String name(String text) {
    StringBuilder shown = new StringBuilder();
    int count = 0;
    for (int at = 0; at < text.length(); count++) {
      if (count == MOST) {
        return shown.append('…').toString();
      }
      int character = text.codePointAt(at);
      int type = Character.getType(character);
      boolean hidden =
          type == Character.CONTROL
              || type == Character.FORMAT
              || type == Character.SURROGATE
              || type == Character.LINE_SEPARATOR
              || type == Character.PARAGRAPH_SEPARATOR
              || type == Character.UNASSIGNED;
      if (hidden) {
        shown.append(
            character > 0xFFFF ? "U+%X".formatted(character) : "\\u%04x".formatted(character));
      } else {
        shown.appendCodePoint(character);
      }
      at += Character.charCount(character);
    }
    return shown.toString();
  }
}
