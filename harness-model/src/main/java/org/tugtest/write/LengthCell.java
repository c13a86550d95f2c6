package org.tugtest.write;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;

/**
 * The length of a wire as a cell gives it.
 *
 * @param mm millimetres; null when it could not be read
 * @param unclear why not, a sentence; null when it could
 */
record LengthCell(@Nullable String mm, @Nullable String unclear) {

  /** What the column's header says the numbers are. */
  enum Unit {
    MM("1"),
    CM("10"),
    M("1000"),
    UNSAID("0");

    private final BigDecimal inMm;

    Unit(String inMm) {
      this.inMm = new BigDecimal(inMm);
    }
  }

  private static final Pattern FORM =
      Pattern.compile("(.*?) ?(mm|cm|m|meters?|metres?)?", Pattern.DOTALL);
  private static final Pattern IN_PLACE =
      Pattern.compile("(laid |lay |run |cut |measured? )?(in place|on (the )?(car|vehicle))|laid");
  private static final BigDecimal GREATEST = new BigDecimal("100000");

  /** Reads one cell that is not empty; a unit in the cell goes before the header's. */
  static LengthCell read(String cell, Unit header) {
    Matcher form = FORM.matcher(cell.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
    String digits = form.matches() ? form.group(1) : cell;
    Unit unit = form.matches() && form.group(2) != null ? unit(form.group(2)) : header;
    String number = SheetNumber.plain(digits);
    if (number == null) {
      return unclear(cell, "is no length");
    }
    if (unit == Unit.UNSAID) {
      return unclear(cell, "may be mm, cm or m: neither the cell nor the header says which");
    }
    if (unit != Unit.M && SheetNumber.readsTwoWays(digits)) {
      return unclear(cell, "may be a fraction or thousands");
    }
    BigDecimal mm = new BigDecimal(number).multiply(unit.inMm);
    if (mm.signum() <= 0 || mm.compareTo(GREATEST) > 0) {
      return unclear(cell, "is no length of a wire: those are from 0 to 100000 mm");
    }
    return new LengthCell(unit == Unit.MM ? number : SheetNumber.written(mm), null);
  }

  /** Whether it says, instead of a length, that the wire is laid in place and cut there. */
  static boolean inPlace(String cell) {
    String words = cell.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ").strip();
    return IN_PLACE.matcher(words).matches();
  }

  private static Unit unit(String word) {
    return switch (word) {
      case "mm" -> Unit.MM;
      case "cm" -> Unit.CM;
      default -> Unit.M;
    };
  }

  private static LengthCell unclear(String cell, String why) {
    return new LengthCell(null, Quoted.text(cell) + " " + why + ".");
  }
}
