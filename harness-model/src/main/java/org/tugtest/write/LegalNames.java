package org.tugtest.write;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Ids for names as people write them in spreadsheets. A name that is no legal id gets one: umlauts
 * spelt out, blanks and marks as {@code -}. Names that differ only in case or in such marks are one
 * thing, spelt as it was first.
 */
final class LegalNames {
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,40}");
  private static final Pattern PIN = Pattern.compile("[A-Za-z0-9_.+-]{1,40}");
  private static final int LONGEST = 40;

  private final Map<String, String> spelling = new HashMap<>();

  static boolean isId(String text) {
    return ID.matcher(text).matches();
  }

  static boolean isPin(String text) {
    return PIN.matcher(text).matches();
  }

  /** An id made of a name; empty when nothing of it can stand in an id. */
  static String legal(String name) {
    if (isId(name)) {
      return name;
    }
    String plain =
        Normalizer.normalize(
                name.replace("ä", "ae")
                    .replace("ö", "oe")
                    .replace("ü", "ue")
                    .replace("Ä", "Ae")
                    .replace("Ö", "Oe")
                    .replace("Ü", "Ue")
                    .replace("ß", "ss"),
                Normalizer.Form.NFKD)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^A-Za-z0-9_-]+", "-")
            .replaceAll("-{2,}", "-")
            .replaceAll("^-+|-+$", "");
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST).replaceAll("-+$", "");
  }

  /** What two spellings of one name have in common. */
  static String folded(String name) {
    return legal(name).toLowerCase(Locale.ROOT);
  }

  /** The id for a name: that of its first spelling. */
  String idOf(String name) {
    String legal = legal(name);
    return spelling.computeIfAbsent(legal.toLowerCase(Locale.ROOT), first -> legal);
  }
}
