package org.tugtest.schema;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.tugtest.text.Nearest;

/** Suggestions for fields and words of the format. */
final class Near {
  private static final Set<String> ALWAYS = Set.of("note", "$schema");

  private static final int MOST = 3;

  private Near() {}

  /** The fields worth naming. */
  static List<String> fields(Collection<String> known) {
    return known.stream().filter(name -> !ALWAYS.contains(name)).toList();
  }

  /**
   * At most three of {@code known}: those that begin with the word, since the unit is often
   * forgotten ({@code length} for {@code lengthMm}); else those nearest in spelling; else those
   * that hold its letters in order ({@code colr} for {@code colour}).
   */
  static List<String> to(String word, Collection<String> known) {
    String folded = word.toLowerCase(Locale.ROOT);
    List<String> begin =
        folded.length() < 3
            ? List.of()
            : known.stream().filter(name -> lower(name).startsWith(folded)).toList();
    if (!begin.isEmpty()) {
      return begin.subList(0, Math.min(MOST, begin.size()));
    }
    List<String> near = Nearest.to(word, known);
    if (!near.isEmpty()) {
      return near;
    }
    return known.stream()
        .filter(name -> folded.length() > 2 && Math.abs(name.length() - folded.length()) <= MOST)
        .filter(name -> holds(lower(name), folded) || holds(folded, lower(name)))
        .limit(MOST)
        .toList();
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static boolean holds(String text, String letters) {
    int at = 0;
    for (int i = 0; i < letters.length(); i++) {
      at = text.indexOf(letters.charAt(i), at) + 1;
      if (at == 0) {
        return false;
      }
    }
    return !letters.isEmpty();
  }

  /** {@code Did you mean "colour"?}; empty when nothing is near. */
  static String question(String word, Collection<String> known) {
    List<String> quoted = to(word, known).stream().map(name -> "\"" + name + "\"").toList();
    return quoted.isEmpty() ? "" : "Did you mean " + or(quoted) + "?";
  }

  /** {@code a, b or c}. */
  static String or(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
