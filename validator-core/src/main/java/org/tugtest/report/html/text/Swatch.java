package org.tugtest.report.html.text;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The colour of a wire as a picture with its letters (IEC 60757), base first.
 *
 * @param letters as written; empty when the file gives none
 * @param base code of the ground colour, or {@code none} when it is not known
 * @param stripe code of the stripe; empty when there is none, {@code none} when it is not known
 */
public record Swatch(String letters, String base, String stripe) {
  private static final String UNKNOWN = "none";
  private static final Map<String, String> NAMES = names();

  /** The swatch of a colour as written; null or blank: none given. */
  public static Swatch of(@Nullable String colour) {
    if (colour == null || colour.isBlank()) {
      return new Swatch("", UNKNOWN, "");
    }
    if (colour.equals("GNYE")) {
      return new Swatch(colour, "GN", "YE");
    }
    int slash = colour.indexOf('/');
    String base = slash < 0 ? colour : colour.substring(0, slash);
    return new Swatch(colour, code(base), slash < 0 ? "" : code(colour.substring(slash + 1)));
  }

  /** The codes that have a picture, with their names. */
  public static Map<String, String> known() {
    return NAMES;
  }

  /** {@code red, white stripe}; the letters where a code is not known. */
  public String name() {
    if (letters.isEmpty()) {
      return "no colour given";
    }
    String ground = NAMES.get(base);
    String second = NAMES.get(stripe);
    if (ground == null || (second == null && !stripe.isEmpty())) {
      return letters;
    }
    return second == null ? ground : ground + ", " + second + " stripe";
  }

  private static String code(String written) {
    return NAMES.containsKey(written) ? written : UNKNOWN;
  }

  private static Map<String, String> names() {
    Map<String, String> names = new LinkedHashMap<>();
    names.put("BK", "black");
    names.put("BN", "brown");
    names.put("RD", "red");
    names.put("OG", "orange");
    names.put("YE", "yellow");
    names.put("GN", "green");
    names.put("BU", "blue");
    names.put("VT", "violet");
    names.put("GY", "grey");
    names.put("WH", "white");
    names.put("PK", "pink");
    names.put("GD", "gold");
    names.put("TQ", "turquoise");
    names.put("SR", "silver");
    return Collections.unmodifiableMap(names);
  }
}
