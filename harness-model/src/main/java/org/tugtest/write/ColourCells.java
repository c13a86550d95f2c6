package org.tugtest.write;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;

/**
 * Reads the colour cells of one list, each in the light of all: whether {@code gr} is grey depends
 * on whether German letters stand beside it, and a list of single letters makes {@code BR} two.
 */
final class ColourCells {
  private static final Set<String> FILLERS =
      Set.of("with", "mit", "and", "und", "stripe", "tracer", "streifen", "wire");

  private final Map<String, String> given;
  private final boolean german;
  private final boolean letters;

  /**
   * A reader for these cells.
   *
   * @param given what a person says a code means, keys in lower case
   */
  ColourCells(Collection<String> cells, Map<String, String> given) {
    this.given = given;
    boolean sawGerman = false;
    boolean sawLetters = false;
    boolean sawPairs = false;
    for (String cell : cells) {
      for (String token : tokens(cell)) {
        if (given.containsKey(token)) {
          continue;
        }
        sawGerman |= ColourWords.isGerman(token);
        sawPairs |= ColourWords.isSurelyOneColour(token) || joined(token, 2).size() > 1;
        boolean unknownPair = token.length() == 2 && ColourWords.twoLetters(token) == null;
        sawLetters |= (token.length() == 1 || unknownPair) && ColourWords.isSingleLetters(token);
      }
    }
    this.german = sawGerman;
    this.letters = sawLetters && !sawPairs && !sawGerman;
  }

  /**
   * What a cell says.
   *
   * @param colour code, or base / stripe; null when it is unclear
   * @param unclear why it is unclear, a sentence; null when it is not
   * @param assumed what the reading rests on where it is not plain, a sentence; else null
   */
  record Read(@Nullable String colour, @Nullable String unclear, @Nullable String assumed) {}

  /** Reads one cell that is not empty. */
  Read read(String cell) {
    String whole = given.get(ColourWords.folded(cell));
    if (whole != null) {
      return new Read(whole, null, null);
    }
    if (ColourWords.folded(cell).matches(".*\\bon\\b.*|.*\\bauf\\b.*")) {
      return unclear(cell, "does not say plainly which colour is the base");
    }
    List<String> codes = new ArrayList<>();
    List<String> tokens = tokens(cell);
    String assumed = null;
    for (String token : tokens) {
      String why = doubt(token);
      if (why != null) {
        return unclear(cell, why);
      }
      List<String> read = codes(token);
      if (read.isEmpty()) {
        return unclear(cell, "is no colour of IEC 60757 and none of its known names");
      }
      if (read.size() > 1) {
        assumed =
            Quoted.text(cell)
                + " runs two colours together; the base comes first by common practice.";
      } else if (ColourWords.needsGerman(token) && !given.containsKey(token)) {
        assumed =
            Quoted.text(cell)
                + " has letters that not every drawing reads alike; German ones stand beside it.";
      }
      codes.addAll(read);
    }
    if (codes.isEmpty() || codes.size() > 2) {
      return unclear(cell, "is not one colour, or a base and one stripe");
    }
    if (codes.size() == 2 && codes.get(0).equals(codes.get(1))) {
      return unclear(cell, "has a stripe of the colour of its base");
    }
    return new Read(String.join("/", codes), null, assumed);
  }

  private @Nullable String doubt(String token) {
    if (given.containsKey(token)) {
      return null;
    }
    if (token.length() == 1) {
      return "is a single letter, which drawings read differently (B is black or blue)";
    }
    if (letters && token.length() == 2 && ColourWords.isSingleLetters(token)) {
      return "may be two single letters, as other cells of this column are";
    }
    if (ColourWords.needsGerman(token) && !german) {
      return "is read differently: GR as grey or green, BL as blue or black";
    }
    return null;
  }

  private List<String> codes(String token) {
    String known = given.get(token);
    if (known != null) {
      return List.of(known);
    }
    if (token.equals("gnye")) {
      return List.of("GNYE");
    }
    String one = one(token);
    return one != null ? List.of(one) : apart(token);
  }

  private static @Nullable String one(String token) {
    String word = ColourWords.fullWord(token);
    if (word != null) {
      return word;
    }
    return token.length() == 3 ? ColourWords.threeLetters(token) : ColourWords.twoLetters(token);
  }

  /** Two codes or two words written as one; empty when it is not that. */
  private List<String> apart(String token) {
    if (token.length() == 4) {
      String head = token.substring(0, 2);
      String tail = token.substring(2);
      return doubt(head) == null && doubt(tail) == null ? joined(token, 2) : List.of();
    }
    if (token.length() == 6 && joined(token, 3).size() == 2) {
      return joined(token, 3);
    }
    for (int i = 3; i <= token.length() - 3; i++) {
      String head = ColourWords.fullWord(token.substring(0, i));
      String tail = ColourWords.fullWord(token.substring(i));
      if (head != null && tail != null) {
        return List.of(head, tail);
      }
    }
    return List.of();
  }

  private static List<String> joined(String token, int length) {
    if (token.length() != 2 * length) {
      return List.of();
    }
    String head = one(token.substring(0, length));
    String tail = one(token.substring(length));
    return head == null || tail == null ? List.of() : List.of(head, tail);
  }

  private static List<String> tokens(String cell) {
    List<String> tokens = new ArrayList<>();
    for (String token : ColourWords.folded(cell).split("[\\s/\\\\+,;&|_:.()–-]+", -1)) {
      if (!token.isEmpty() && !FILLERS.contains(token)) {
        tokens.add(token);
      }
    }
    return tokens;
  }

  private static Read unclear(String cell, String why) {
    return new Read(null, String.format(Locale.ROOT, "%s %s.", Quoted.text(cell), why), null);
  }
}
