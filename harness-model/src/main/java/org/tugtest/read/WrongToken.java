package org.tugtest.read;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tugtest.text.Nearest;
import org.tugtest.text.Quoted;

/**
 * What is wrong with characters that are no token of JSON.
 *
 * @param message one sentence that goes on after the path
 * @param start offset of its first character
 * @param end offset behind its last character
 */
record WrongToken(String message, String remedy, int start, int end) {
  private static final Map<String, String> WORDS =
      Map.of("true", "true", "false", "false", "null", "null", "yes", "true", "no", "false");

  /** Says it of the characters from {@code start} to {@code end}; {@code name}: a name is due. */
  static WrongToken of(String text, int start, int end, boolean name) {
    char first = text.charAt(start);
    return first == '"'
        ? inText(text, start, end)
        : outside(text, start, Math.max(end, start + 1), name);
  }

  private static WrongToken inText(String text, int start, int end) {
    if (end >= text.length()) {
      return new WrongToken(
          "has a text that is never closed", "Close it with a double quote.", start, start + 1);
    }
    char bad = text.charAt(end);
    if (bad == '\n' || bad == '\r') {
      return new WrongToken(
          "has a text that is not closed on its line",
          "Close it with a double quote; a line break in a text is written \\n.",
          start,
          end);
    }
    if (bad == '\\') {
      int to = Math.min(text.length(), end + 2);
      return new WrongToken(
          "has " + Quoted.name(text.substring(end, to)) + " in a text, which is no escape",
          "Write \\\\ for a backslash; paths take /.",
          end,
          to);
    }
    return new WrongToken(
        "has the control character " + Quoted.name(String.valueOf(bad)) + " in a text",
        bad == '\t' ? "Write \\t for a tab." : "Delete it.",
        end,
        end + 1);
  }

  private static WrongToken outside(String text, int start, int end, boolean name) {
    String run = text.substring(start, end);
    char first = run.charAt(0);
    if (first == '/' || first == '#') {
      return new WrongToken(
          "has a comment", "JSON has no comments; write a \"note\" instead.", start, end);
    }
    if (first == '\''
        || first == '\u2018'
        || first == '\u2019'
        || first == '\u201C'
        || first == '\u201D'
        || first == '\u201E') {
      return new WrongToken(
          "has " + first + " where a double quote belongs",
          "Use \" around texts and names.",
          start,
          start + 1);
    }
    if (first < ' ' || first > '~') {
      int to = start + Character.charCount(text.codePointAt(start));
      return new WrongToken(
          String.format(
              Locale.ROOT, "has the character U+%04X outside any text", text.codePointAt(start)),
          "Delete it; it may be invisible in your editor.",
          start,
          to);
    }
    return plain(run, start, end, name);
  }

  private static WrongToken plain(String run, int start, int end, boolean name) {
    String shown = Quoted.name(run);
    if (name) {
      return new WrongToken(
          "has the name " + shown + " without quotes", "Write \"" + shown + "\".", start, end);
    }
    String word = WORDS.get(run.toLowerCase(Locale.ROOT));
    if (word != null) {
      return new WrongToken(
          "has " + shown + ", which is no word of JSON", "Write " + word + ".", start, end);
    }
    if (run.equalsIgnoreCase("nan") || run.toLowerCase(Locale.ROOT).contains("infinity")) {
      return new WrongToken(
          "has " + shown + ", which is no number of JSON", "Leave the field out.", start, end);
    }
    if (run.matches("[-+.]?[0-9].*")) {
      return new WrongToken(
          "has " + shown + ", which is no number of JSON",
          "Write a plain decimal such as 0.5 or 12, without unit; the unit stands in the name.",
          start,
          end);
    }
    String near = Nearest.question(run, List.of("true", "false", "null"));
    return new WrongToken(
        "has " + shown + " outside any text",
        "Put texts in double quotes" + (near.isEmpty() ? "." : "; " + near),
        start,
        end);
  }
}
