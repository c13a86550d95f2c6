package org.tugtest.write;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Nearest;

/**
 * What the headers of wire lists mean, in English and German: a header is taken apart into known
 * words, small misspellings and joined words included. A header with any other word in it is not
 * known; a wrong guess would cost more than a column kept as a note.
 */
final class HeaderWords {
  private static final Set<String> START =
      words("from von start anfang source src quelle quell origin begin");
  private static final Set<String> STOP = words("to nach bis ziel dest destination target");
  private static final Set<String> FIRST = words("a 1");
  private static final Set<String> SECOND = words("b 2");
  private static final Set<String> END =
      words(
          "end ende side seite point punkt connector conn stecker plug device geraet component"
              + " bauteil ref reference designator name node location ort terminal");
  private static final Set<String> PIN =
      words("pin pins cavity cav contact kontakt kammer klemme position pos way");
  private static final Set<String> NUMBER = words("no nr num number nummer id # code");
  private static final Set<String> WIRE =
      words("wire wires cable kabel leitung ltg draht ader line core conductor");
  private static final Set<String> AREA = words("area csa querschnitt crosssection");
  private static final Set<String> SIZE = words("size gauge groesse staerke");
  private static final Set<String> SQUARE = words("mm2 qmm mmq sqmm");
  private static final Set<String> COLOUR =
      words("colour color colours colors col clr farbe farben");
  private static final Set<String> STRIPE =
      words("stripe tracer trace kennfarbe zweitfarbe secondary streifen");
  private static final Set<String> BASE = words("base main primary grundfarbe body");
  private static final Set<String> CIRCUIT =
      words("circuit function signal net netz stromkreis funktion potential netname");
  private static final Set<String> LENGTH = words("length laenge lange len");
  private static final Set<String> CUT = words("cut schnitt");
  private static final Set<String> MILLI = words("mm millimeter millimetre millimeters");
  private static final Set<String> CENTI = words("cm");
  private static final Set<String> METRE = words("m meter metre meters metres");
  private static final Set<String> LABEL =
      words("label labels marking marker beschriftung tag print aufdruck");
  private static final Set<String> LOOM = words("loom harness kabelbaum strang kabelstrang");
  private static final Set<String> PART =
      words("part teil teilenummer artikel artikelnummer type typ leitungstyp");
  private static final Set<String> NOTE =
      words(
          "note notes remark remarks comment comments bemerkung bemerkungen kommentar notiz"
              + " notizen anmerkung hinweis");
  private static final Set<String> FILLER = words("of the in");
  private static final Set<String> AWG = words("awg");
  private static final Set<String> ALL = all();

  private static final int LEAST_FOR_MISSPELT = 5;

  private HeaderWords() {}

  /**
   * What one header means.
   *
   * @param column null when it is not known
   * @param misspelt whether a word was read as its neighbour
   */
  record Meaning(@Nullable WireColumn column, boolean misspelt) {}

  /** The meaning of a header. */
  static Meaning of(String header) {
    List<String> exact = taken(header, false);
    WireColumn column = column(exact);
    if (column != null) {
      return new Meaning(column, false);
    }
    WireColumn near = column(taken(header, true));
    return new Meaning(near, near != null);
  }

  private static @Nullable WireColumn column(List<String> tokens) {
    if (tokens.isEmpty()) {
      return null;
    }
    Words words = new Words(new HashSet<>(tokens));
    boolean from = words.any(START) || (words.any(FIRST) && words.any(END, PIN));
    boolean to = words.any(STOP) || (words.any(SECOND) && words.any(END, PIN));
    if (from != to) {
      return end(words, from);
    }
    if (from) {
      return null;
    }
    if (words.any(AWG) || words.any(SQUARE) || words.any(AREA) || words.any(SIZE)) {
      return size(words);
    }
    if (words.any(COLOUR, STRIPE)) {
      boolean second = words.any(STRIPE) || words.any(SECOND);
      boolean known = words.only(COLOUR, STRIPE, BASE, WIRE, NUMBER, FIRST, SECOND, FILLER);
      return !known ? null : second ? WireColumn.STRIPE : WireColumn.COLOUR;
    }
    if (words.any(LENGTH)) {
      return length(words);
    }
    return name(words);
  }

  private static @Nullable WireColumn end(Words words, boolean from) {
    if (!words.only(START, STOP, FIRST, SECOND, END, PIN, NUMBER, FILLER)) {
      return null;
    }
    if (words.any(words("terminal"))) {
      return null;
    }
    if (words.any(PIN)) {
      return from ? WireColumn.FROM_PIN : WireColumn.TO_PIN;
    }
    return from ? WireColumn.FROM : WireColumn.TO;
  }

  private static @Nullable WireColumn size(Words words) {
    if (!words.only(AWG, SQUARE, AREA, SIZE, WIRE, MILLI, FILLER)) {
      return null;
    }
    boolean gauge = words.any(AWG);
    boolean area = words.any(SQUARE) || (words.any(AREA) && !gauge);
    if (gauge == area) {
      return WireColumn.SIZE;
    }
    return gauge ? WireColumn.AWG : WireColumn.AREA;
  }

  private static @Nullable WireColumn length(Words words) {
    if (!words.only(LENGTH, CUT, MILLI, CENTI, METRE, WIRE, FILLER)) {
      return null;
    }
    boolean milli = words.any(MILLI);
    boolean centi = words.any(CENTI);
    boolean metre = words.any(METRE);
    if (milli && !centi && !metre) {
      return WireColumn.LENGTH_MM;
    }
    if (centi && !milli && !metre) {
      return WireColumn.LENGTH_CM;
    }
    return metre && !milli && !centi ? WireColumn.LENGTH_M : WireColumn.LENGTH;
  }

  private static @Nullable WireColumn name(Words words) {
    Set<String> naming = words("name");
    if (words.any(CIRCUIT)) {
      return words.only(CIRCUIT, NUMBER, naming) ? WireColumn.CIRCUIT : null;
    }
    if (words.any(LOOM)) {
      return words.only(LOOM, NUMBER, naming) ? WireColumn.LOOM : null;
    }
    if (words.any(NOTE)) {
      return words.only(NOTE) ? WireColumn.NOTE : null;
    }
    if (words.any(LABEL)) {
      return words.only(LABEL, WIRE) ? WireColumn.LABEL : null;
    }
    if (words.any(PART)) {
      return words.only(PART, NUMBER, WIRE) ? WireColumn.PART : null;
    }
    if (words.any(PIN)) {
      boolean bare = words.only(PIN, NUMBER) && !words.only(words("pos position"), NUMBER);
      return bare ? WireColumn.PIN : null;
    }
    return words.only(WIRE, NUMBER) && !words.any(words("code")) ? WireColumn.ID : null;
  }

  /** Whether every header word stands for something that a second header row may hold. */
  static boolean isPartOfHeader(String cell) {
    List<String> tokens = taken(cell, false);
    return !tokens.isEmpty() && ALL.containsAll(tokens);
  }

  private record Words(Set<String> tokens) {
    @SafeVarargs
    final boolean any(Set<String>... groups) {
      for (String token : tokens) {
        if (isIn(token, groups)) {
          return true;
        }
      }
      return false;
    }

    @SafeVarargs
    final boolean only(Set<String>... groups) {
      for (String token : tokens) {
        if (!isIn(token, groups)) {
          return false;
        }
      }
      return true;
    }

    @SafeVarargs
    private static boolean isIn(String token, Set<String>... groups) {
      for (Set<String> group : groups) {
        if (group.contains(token)) {
          return true;
        }
      }
      return false;
    }
  }

  /** The words of a header: lower case, umlauts spelt out, joined words apart. */
  private static List<String> taken(String header, boolean near) {
    List<String> tokens = new ArrayList<>();
    for (String part : folded(header).split("[^a-z0-9#]+", -1)) {
      if (part.isEmpty()) {
        continue;
      }
      if (ALL.contains(part)) {
        tokens.add(part);
        continue;
      }
      List<String> apart = apart(part);
      if (!apart.isEmpty()) {
        tokens.addAll(apart);
      } else {
        tokens.add(near ? nearest(part) : part);
      }
    }
    return tokens;
  }

  private static String folded(String header) {
    String humps = header.replaceAll("(?<=[a-z])(?=[A-Z])", " ");
    return Normalizer.normalize(humps, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replace("ä", "ae")
        .replace("ö", "oe")
        .replace("ü", "ue")
        .replace("ß", "ss")
        .replace("mm^2", "mm2")
        .replace("#", " # ")
        .replaceAll("\\bsq\\.? ?mm\\b", "mm2")
        .replaceAll("\\bcross[ -]?section(al area)?\\b", "area")
        .replaceAll("\\bleiter(?=querschnitt|farbe)", "ader");
  }

  /** Two known words written as one, with or without a German joint; empty when it is not so. */
  private static List<String> apart(String word) {
    for (int i = 2; i <= word.length() - 2; i++) {
      String head = word.substring(0, i);
      String tail = word.substring(i);
      if (!ALL.contains(tail) || tail.length() < 2) {
        continue;
      }
      for (String joint : List.of("", "s", "n")) {
        String stem = head.endsWith(joint) ? head.substring(0, i - joint.length()) : "";
        if (stem.length() > 1 && ALL.contains(stem)) {
          return List.of(stem, tail);
        }
      }
    }
    return List.of();
  }

  private static String nearest(String word) {
    if (word.length() < LEAST_FOR_MISSPELT) {
      return word;
    }
    List<String> known =
        Nearest.to(word, ALL.stream().filter(k -> k.length() >= LEAST_FOR_MISSPELT).toList());
    return known.isEmpty() || far(word, known.get(0)) ? word : known.get(0);
  }

  /** Whether two words differ by more than a letter, two swapped, or two in a long word. */
  private static boolean far(String word, String known) {
    int within = word.length() > 8 || sorted(word).equals(sorted(known)) ? 2 : 1;
    return new LevenshteinDistance(within).apply(word, known) < 0;
  }

  private static String sorted(String word) {
    char[] letters = word.toCharArray();
    Arrays.sort(letters);
    return new String(letters);
  }

  private static Set<String> words(String words) {
    return Set.of(words.split(" "));
  }

  private static Set<String> all() {
    Set<String> all = new HashSet<>();
    for (Set<String> group :
        List.of(
            START, STOP, END, PIN, NUMBER, WIRE, AREA, SIZE, SQUARE, COLOUR, STRIPE, BASE, CIRCUIT,
            LENGTH, CUT, MILLI, CENTI, METRE, LABEL, LOOM, PART, NOTE, AWG, FIRST, SECOND,
            FILLER)) {
      all.addAll(group);
    }
    return Set.copyOf(all);
  }
}
