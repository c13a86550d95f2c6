package org.tugtest.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known names nearest to one that is not known, for "did you mean". */
public final class Nearest {
  private static final int MOST = 3;

  private Nearest() {}

  /**
   * At most three of {@code known}, nearest first, each within a third of the length of {@code
   * word} (one edit at the least); without case. Ties in natural order.
   */
  public static List<String> to(String word, Collection<String> known) {
    String folded = word.toLowerCase(Locale.ROOT);
    int within = Math.max(1, folded.length() / 3);
    LevenshteinDistance distance = new LevenshteinDistance(within);
    record Scored(String name, int edits) {}
    return known.stream()
        .map(name -> new Scored(name, distance.apply(folded, name.toLowerCase(Locale.ROOT))))
        .filter(scored -> scored.edits() >= 0)
        .sorted(
            Comparator.comparingInt(Scored::edits)
                .thenComparing(Scored::name, NaturalOrder.NATURAL))
        .limit(MOST)
        .map(Scored::name)
        .toList();
  }

  /** {@code did you mean A, B or C?}, or the empty text when nothing is near. */
  public static String question(String word, Collection<String> known) {
    List<String> near = to(word, known);
    if (near.isEmpty()) {
      return "";
    }
    String last = near.get(near.size() - 1);
    String names =
        near.size() == 1
            ? last
            : String.join(", ", near.subList(0, near.size() - 1)) + " or " + last;
    return "did you mean " + names + "?";
  }
}
