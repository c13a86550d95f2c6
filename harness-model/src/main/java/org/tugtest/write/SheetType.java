package org.tugtest.write;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the cells of a column hold, and how a cell becomes a token of the file. */
enum SheetType {
  TEXT,
  NUMBER,
  /** {@code true} or {@code false}. */
  FLAG,
  /** Texts with commas between. */
  LIST;

  private static final Set<String> FLAGS =
      Set.of(
          "blanked",
          "blank",
          "inside",
          "isolator",
          "intermittent",
          "critical",
          "generator",
          "selfLimiting",
          "laidInPlace",
          "electronic");
  private static final Set<String> LISTS =
      Set.of("via", "terminals", "seals", "positions", "closedIn");
  private static final Set<String> TEXTS =
      Set.of(
          "from",
          "to",
          "part",
          "awg",
          "colour",
          "colourDrawn",
          "circuit",
          "fromTerminal",
          "toTerminal",
          "label",
          "evidence",
          "decision",
          "reason",
          "note",
          "housing",
          "mates",
          "at",
          "parked",
          "boot",
          "terminal",
          "seal",
          "pinMap",
          "type",
          "family",
          "side",
          "boltedTo",
          "kind",
          "plus",
          "minus",
          "a",
          "b",
          "pin",
          "reference",
          "fedBy",
          "coil",
          "rest",
          "use",
          "style");
  private static final Set<String> YES = Set.of("true", "wahr", "yes", "ja");
  private static final Set<String> NO = Set.of("false", "falsch", "no", "nein");

  /** The type of a field of the format. */
  static SheetType of(String field) {
    if (FLAGS.contains(field)) {
      return FLAG;
    }
    if (LISTS.contains(field)) {
      return LIST;
    }
    return TEXTS.contains(field) ? TEXT : NUMBER;
  }

  /** What a cell that is not empty must hold, for a message. */
  String wanted() {
    return switch (this) {
      case TEXT -> "a text";
      case NUMBER -> "a number";
      case FLAG -> "true or false";
      case LIST -> "names with commas between";
    };
  }

  /**
   * The token for a cell that is not empty; null when it cannot be one.
   *
   * @param decimalComma whether the sheet's numbers may have a comma before the fraction
   */
  @Nullable String token(String cell, boolean decimalComma) {
    String text = SheetCell.text(cell);
    return switch (this) {
      case TEXT -> Quoting.quote(text);
      case NUMBER -> number(text, decimalComma);
      case FLAG -> flag(text);
      case LIST -> "[" + String.join(", ", items(text).stream().map(Quoting::quote).toList()) + "]";
    };
  }

  /** Whether an edited cell says what the written one said, mangled by a spreadsheet or not. */
  boolean same(String written, String edited) {
    if (written.equals(edited)) {
      return true;
    }
    if (written.isEmpty() || edited.isEmpty()) {
      return false;
    }
    String before = SheetCell.text(written);
    String after = SheetCell.text(edited);
    return switch (this) {
      case TEXT ->
          plain(before).equals(plain(after)) || plain(misread(before)).equals(plain(after));
      case NUMBER -> sameNumber(before, after);
      case FLAG -> before.equals(flag(after));
      case LIST ->
          items(before).equals(items(after)) || items(misread(before)).equals(items(after));
    };
  }

  private static String plain(String text) {
    return text.replace("\r\n", "\n").strip();
  }

  /** UTF-8 as a program shows it that takes it for Windows-1252. */
  private static String misread(String text) {
    return new String(text.getBytes(StandardCharsets.UTF_8), SheetText.WINDOWS);
  }

  private static boolean sameNumber(String before, String after) {
    String plain = SheetNumber.plain(after);
    String number = plain == null ? after : plain;
    try {
      return new BigDecimal(before).compareTo(new BigDecimal(number)) == 0;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static @Nullable String number(String text, boolean decimalComma) {
    boolean point = text.indexOf('.') >= 0 && text.indexOf(',') < 0;
    boolean comma = text.indexOf(',') >= 0 && text.indexOf('.') < 0;
    boolean expected = decimalComma ? comma : point;
    return SheetNumber.readsTwoWays(text) && !expected ? null : SheetNumber.plain(text);
  }

  private static @Nullable String flag(String text) {
    String word = text.toLowerCase(Locale.ROOT);
    if (YES.contains(word)) {
      return "true";
    }
    return NO.contains(word) ? "false" : null;
  }

  private static List<String> items(String text) {
    List<String> items = new ArrayList<>();
    for (String item : text.split("[,;\n]", -1)) {
      if (!item.isBlank()) {
        items.add(item.strip());
      }
    }
    return items;
  }
}
