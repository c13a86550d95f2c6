package org.tugtest.write;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The form of one end cell, looked at alone.
 *
 * @param text the cell, blanks made single
 * @param owner what stands before the pin; the whole text without one
 * @param pin what stands behind; null without one
 * @param designator whether the owner looks like the designation of a connector, such as {@code R1}
 */
record EndForm(Kind kind, String text, String owner, @Nullable String pin, boolean designator) {

  /** How sure the split is. */
  enum Kind {
    /** The cell is empty. */
    NONE,
    /** A word or mark for nothing there, or not known. */
    PLACEHOLDER,
    /** Two readings, or none. */
    UNCLEAR,
    /** An owner and its pin. */
    PIN,
    /** An owner and its pin, or one name. */
    MAYBE_PIN,
    /** One name. */
    NAME
  }

  private static final Set<String> PLACEHOLDERS =
      Set.of(
          "?",
          "??",
          "???",
          "-",
          "--",
          "---",
          "–",
          "—",
          "/",
          ".",
          "...",
          "n/a",
          "na",
          "n.a.",
          "nc",
          "n.c.",
          "n/c",
          "none",
          "open",
          "tbd",
          "tbc",
          "tba",
          "offen",
          "frei",
          "spare",
          "unused",
          "unbekannt",
          "unknown",
          "keine",
          "entfällt",
          "#n/a",
          "#nv",
          "#ref!");
  private static final String PIN_WORD =
      "(pin|cavity|cav|kammer|kontakt|contact|klemme|kl|pos|position|way|terminal|term)";
  private static final Pattern WORDED =
      Pattern.compile(
          "(?i)(.+?)[ ,;:/.-]*\\b"
              + PIN_WORD
              + "(?![A-Za-z](?![0-9]))\\.?[ :.#-]*([A-Za-z0-9_.+-]+)");
  private static final Set<String> LOOSE_WORDS =
      Set.of("pos", "position", "way", "terminal", "term");
  private static final Pattern WORD_BEFORE =
      Pattern.compile("(?i)" + PIN_WORD + "(?![A-Za-z](?![0-9]))\\.? ?(.+)");
  private static final Pattern BRACKETED =
      Pattern.compile("(.+?) ?[(\\[] ?([A-Za-z0-9_.+-]+) ?[)\\]]");
  private static final Pattern NUMBERED = Pattern.compile("\\d{1,4}[A-Za-z]{0,2}");
  private static final Pattern LETTERED = Pattern.compile("[A-Za-z]{1,2}\\d{0,3}|[A-Za-z]?[+-]");
  private static final Pattern DESIGNATOR = Pattern.compile("[A-Za-z]{1,4}\\d{1,3}[A-Za-z]?");
  private static final Pattern DYNAMO = Pattern.compile("(.*[A-Za-z0-9])[ -]([BD][+-])");
  private static final Pattern SIGNED = Pattern.compile("([A-Za-z][A-Za-z0-9_ -]*?) ?([+-])");
  private static final Pattern HAS_LETTER = Pattern.compile(".*\\p{L}.*");

  static EndForm of(String cell) {
    String text = cell.replaceAll("[\\s\\u00A0]+", " ").replace('–', '-').strip();
    if (text.isEmpty()) {
      return new EndForm(Kind.NONE, "", "", null, false);
    }
    if (PLACEHOLDERS.contains(cell.strip().toLowerCase(Locale.ROOT))) {
      return new EndForm(Kind.PLACEHOLDER, text, text, null, false);
    }
    if (!HAS_LETTER.matcher(text).matches() && text.indexOf(':') < 0) {
      return new EndForm(Kind.UNCLEAR, text, text, null, false);
    }
    if (text.indexOf(':') >= 0) {
      return strong(text, ':');
    }
    Matcher worded = WORDED.matcher(text);
    if (worded.matches() && isPinAfter(worded.group(2), worded.group(3))) {
      return pin(text, worded.group(1), worded.group(3));
    }
    Matcher alone = WORD_BEFORE.matcher(text);
    if (alone.matches() && isPinLike(alone.group(2))) {
      return new EndForm(Kind.UNCLEAR, text, text, null, false);
    }
    Matcher dynamo = DYNAMO.matcher(text);
    if (dynamo.matches()) {
      return pin(text, dynamo.group(1), dynamo.group(2));
    }
    Matcher bracketed = BRACKETED.matcher(text);
    if (bracketed.matches() && isPinLike(bracketed.group(2))) {
      return pin(text, bracketed.group(1), bracketed.group(2));
    }
    Matcher signed = SIGNED.matcher(text);
    if (signed.matches()) {
      boolean plain = signed.group(2).equals("+") || text.endsWith(" -");
      return split(plain ? Kind.PIN : Kind.MAYBE_PIN, text, signed.group(1), signed.group(2));
    }
    if (text.indexOf('/') >= 0) {
      return strong(text, '/');
    }
    return text.indexOf('.') >= 0 ? strong(text, '.') : weak(text);
  }

  /** The pin in a cell of its own, without a word such as {@code pin} before it. */
  static String barePin(String cell) {
    Matcher before = WORD_BEFORE.matcher(cell);
    return before.matches() ? before.group(2) : cell;
  }

  private static EndForm strong(String text, char mark) {
    int at = text.indexOf(mark);
    String owner = text.substring(0, at).strip();
    String pin = barePin(text.substring(at + 1).strip());
    if (at != text.lastIndexOf(mark)) {
      return new EndForm(Kind.UNCLEAR, text, text, null, false);
    }
    if (mark == ':') {
      return !owner.isEmpty() && LegalNames.isPin(pin)
          ? pin(text, owner, pin)
          : new EndForm(Kind.UNCLEAR, text, text, null, false);
    }
    if (LegalNames.isId(owner) && isPinLike(pin) && HAS_LETTER.matcher(owner).matches()) {
      return pin(text, owner, pin);
    }
    boolean two = isPinLike(pin) || pin.isEmpty() || owner.isEmpty();
    return new EndForm(two ? Kind.UNCLEAR : Kind.NAME, text, text, null, false);
  }

  private static EndForm weak(String text) {
    int at = Math.max(text.lastIndexOf(' '), text.lastIndexOf('-'));
    if (at <= 0 || at == text.length() - 1) {
      return new EndForm(Kind.NAME, text, text, null, false);
    }
    String owner = text.substring(0, at).replaceAll("[ -]+$", "");
    String pin = text.substring(at + 1);
    boolean like = NUMBERED.matcher(pin).matches() || pin.matches("[A-Za-z]{1,2}\\d{1,3}");
    return like && HAS_LETTER.matcher(owner).matches()
        ? split(Kind.MAYBE_PIN, text, owner, pin)
        : new EndForm(Kind.NAME, text, text, null, false);
  }

  private static EndForm pin(String text, String owner, String pin) {
    return split(Kind.PIN, text, owner, pin);
  }

  private static EndForm split(Kind kind, String text, String owner, String pin) {
    String name = owner.strip();
    boolean designator = DESIGNATOR.matcher(name).matches() && !pin.equals("-");
    return new EndForm(kind, text, name, pin, designator);
  }

  /** After a word that is in names too, only what holds a digit or a sign is a pin. */
  private static boolean isPinAfter(String word, String pin) {
    boolean loose = LOOSE_WORDS.contains(word.toLowerCase(Locale.ROOT));
    return isPinLike(pin) && (!loose || !pin.matches("[A-Za-z]+"));
  }

  private static boolean isPinLike(String pin) {
    return NUMBERED.matcher(pin).matches() || LETTERED.matcher(pin).matches();
  }
}
