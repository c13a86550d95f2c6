package org.tugtest.write;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Names of wire colours and the codes of IEC 60757 for them: the codes themselves, full words in
 * English and German, and the letters used on German and American drawings (common practice). The
 * single letters of British and Japanese drawings are not here: B, G, L, P and S mean different
 * colours on different drawings.
 */
final class ColourWords {
  private ColourWords() {}

  /** The codes of IEC 60757. */
  static final Set<String> IEC =
      Set.of(
          "BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "GD", "TQ", "SR",
          "GNYE");

  private static final Map<String, String> FULL =
      table(
          "BK black schwarz",
          "BN brown braun",
          "RD red rot",
          "OG orange",
          "YE yellow gelb",
          "GN green gruen",
          "BU blue blau",
          "VT violet violett purple lila",
          "GY grey gray grau",
          "WH white weiss",
          "PK pink rosa",
          "GD gold",
          "TQ turquoise tuerkis",
          "SR silver silber");

  private static final Map<String, String> THREE_LETTERS =
      table(
          "BK blk",
          "BN brn",
          "RD red",
          "OG orn",
          "YE yel",
          "GN grn",
          "BU blu",
          "VT vio ppl",
          "GY gry",
          "WH wht",
          "PK pnk");

  private static final Map<String, String> TWO_LETTERS =
      table(
          "BK bk sw",
          "BN bn br",
          "RD rd rt",
          "OG og or",
          "YE ye ge",
          "GN gn",
          "BU bu bl",
          "VT vt vi",
          "GY gy gr",
          "WH wh ws",
          "PK pk rs",
          "GD gd",
          "TQ tq",
          "SR sr");

  /** Two letters that other drawings read as green or as black. */
  private static final Set<String> GERMAN_ONLY_IF_SHOWN = Set.of("gr", "bl");

  private static final Set<String> GERMAN = Set.of("sw", "rt", "ge", "ws");

  /** Two letters that cannot be two single letters of British or Japanese drawings. */
  private static final Set<String> SURELY_ONE_COLOUR =
      Set.of("rd", "wh", "ye", "vt", "gd", "tq", "rt", "ge");

  private static final String SINGLE_LETTERS = "bgklnoprsuvwy";

  /** The code of a full code or word; null for anything else. */
  static @Nullable String code(String text) {
    String upper = text.strip().toUpperCase(Locale.ROOT);
    return IEC.contains(upper) ? upper : FULL.get(folded(text));
  }

  static @Nullable String fullWord(String folded) {
    return FULL.get(folded);
  }

  static @Nullable String threeLetters(String folded) {
    return THREE_LETTERS.get(folded);
  }

  static @Nullable String twoLetters(String folded) {
    return TWO_LETTERS.get(folded);
  }

  static boolean isGerman(String folded) {
    return GERMAN.contains(folded);
  }

  static boolean needsGerman(String folded) {
    return GERMAN_ONLY_IF_SHOWN.contains(folded);
  }

  static boolean isSurelyOneColour(String folded) {
    return SURELY_ONE_COLOUR.contains(folded);
  }

  /** Whether each letter alone stands for a colour on some drawings. */
  static boolean isSingleLetters(String folded) {
    return !folded.isEmpty() && folded.chars().allMatch(c -> SINGLE_LETTERS.indexOf(c) >= 0);
  }

  /** Lower case, umlauts spelt out. */
  static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .strip()
        .toLowerCase(Locale.ROOT)
        .replace("ä", "ae")
        .replace("ö", "oe")
        .replace("ü", "ue")
        .replace("ß", "ss");
  }

  private static Map<String, String> table(String... rows) {
    Map<String, String> table = new HashMap<>();
    for (String row : rows) {
      List<String> names = List.of(row.split(" "));
      names.subList(1, names.size()).forEach(name -> table.put(name, names.get(0)));
    }
    return Map.copyOf(table);
  }
}
