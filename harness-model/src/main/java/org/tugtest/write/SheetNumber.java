package org.tugtest.write;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as spreadsheets of several countries write them. */
final class SheetNumber {
  private static final Pattern PLAIN = Pattern.compile("-?\\d+(?:[.,]\\d+)?|-?[.,]\\d+");
  private static final Pattern GROUPED_DOT = Pattern.compile("-?\\d{1,3}(?:,\\d{3})+\\.\\d+");
  private static final Pattern GROUPED_COMMA = Pattern.compile("-?\\d{1,3}(?:\\.\\d{3})+,\\d+");
  private static final Pattern GROUPED_BLANK =
      Pattern.compile("-?\\d{1,3}(?:[ '\u00A0\u202F\u2009]\\d{3})+(?:[.,]\\d+)?");
  private static final Pattern TWO_WAYS = Pattern.compile("-?[1-9]\\d{0,2}[.,]\\d{3}");
  private static final int LONGEST = 20;

  private SheetNumber() {}

  /** The number with a point and its digits as typed; null when it is none. */
  static @Nullable String plain(String text) {
    if (text.length() > LONGEST) {
      return null;
    }
    String number;
    if (GROUPED_DOT.matcher(text).matches()) {
      number = text.replace(",", "");
    } else if (GROUPED_COMMA.matcher(text).matches()) {
      number = text.replace(".", "").replace(',', '.');
    } else if (GROUPED_BLANK.matcher(text).matches()) {
      number = text.replaceAll("[ '\u00A0\u202F\u2009]", "").replace(',', '.');
    } else if (PLAIN.matcher(text).matches()) {
      number = text.replace(',', '.');
    } else {
      return null;
    }
    String digits = number.startsWith("-") ? number.substring(1) : number;
    String sign = number.startsWith("-") ? "-" : "";
    digits = digits.startsWith(".") ? "0" + digits : digits;
    return sign + digits.replaceFirst("^0+(?=\\d)", "");
  }

  /** Whether it can be a whole number with a thousands mark as well as a fraction. */
  static boolean readsTwoWays(String text) {
    return TWO_WAYS.matcher(text).matches();
  }

  /** A value as JSON writes it, without an exponent and without idle zeros. */
  static String written(BigDecimal value) {
    BigDecimal bare = value.stripTrailingZeros();
    return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
  }
}
