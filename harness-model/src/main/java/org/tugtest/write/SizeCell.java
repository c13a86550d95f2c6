package org.tugtest.write;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;

/**
 * The size of a wire as a cell gives it.
 *
 * @param areaMm2 digits as typed, with a point; null when not given
 * @param awg gauge as the format writes it; null when not given
 * @param unclear why neither could be read, a sentence; null when one could
 */
record SizeCell(@Nullable String areaMm2, @Nullable String awg, @Nullable String unclear) {

  /** What the column's header says the numbers are. */
  enum Unit {
    MM2,
    AWG,
    UNSAID
  }

  private static final String SQUARE = "(?:mm2|mm\\^2|qmm|mmq|sqmm|sq\\.? ?mm|mm sq)";
  private static final Pattern AREA = Pattern.compile("([0-9.,']+) ?" + SQUARE);
  private static final Pattern GAUGE =
      Pattern.compile("(?:awg|ga) ?#? ?(\\d+|\\d+/0)|#? ?(\\d+|\\d+/0) ?(?:awg|ga)");
  private static final Pattern WHOLE_OR_AUGHT = Pattern.compile("\\d+|[1-4]/0");
  private static final BigDecimal LEAST = new BigDecimal("0.05");
  private static final BigDecimal GREATEST = new BigDecimal("300");
  private static final int THINNEST = 30;

  /** Reads one cell that is not empty. */
  static SizeCell read(String cell, Unit unit) {
    String text =
        Normalizer.normalize(cell, Normalizer.Form.NFKC)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\s+", " ");
    Matcher area = AREA.matcher(text);
    if (area.matches()) {
      return area(cell, area.group(1));
    }
    Matcher gauge = GAUGE.matcher(text);
    if (gauge.matches()) {
      return gauge(cell, gauge.group(1) != null ? gauge.group(1) : gauge.group(2));
    }
    if (unit == Unit.AWG && WHOLE_OR_AUGHT.matcher(text).matches()) {
      return gauge(cell, text);
    }
    if (SheetNumber.plain(text) == null) {
      return unclear(cell, "is neither an area in mm2 nor an AWG");
    }
    if (unit == Unit.MM2) {
      return area(cell, text);
    }
    return unit == Unit.AWG
        ? unclear(cell, "is no AWG: those are whole numbers from 30 down to 0, then 2/0 to 4/0")
        : unclear(cell, "may be mm2 or AWG: neither the cell nor the header says which");
  }

  private static SizeCell area(String cell, String digits) {
    String number = SheetNumber.plain(digits);
    if (number == null) {
      return unclear(cell, "is no number of mm2");
    }
    BigDecimal value = new BigDecimal(number);
    boolean sane = value.compareTo(LEAST) >= 0 && value.compareTo(GREATEST) <= 0;
    return sane
        ? new SizeCell(number, null, null)
        : unclear(cell, "is no area of a wire: those are from 0.05 to 300 mm2");
  }

  private static SizeCell gauge(String cell, String digits) {
    String awg = digits.matches("0{2,4}") ? digits.length() + "/0" : digits;
    if (awg.matches("[1-4]/0") || (awg.matches("\\d{1,2}") && Integer.parseInt(awg) <= THINNEST)) {
      return new SizeCell(null, awg.replaceFirst("^0(?=\\d$)", ""), null);
    }
    return unclear(cell, "is no AWG: those go from 30 down to 0, then 2/0 to 4/0");
  }

  private static SizeCell unclear(String cell, String why) {
    return new SizeCell(null, null, Quoted.text(cell) + " " + why + ".");
  }
}
