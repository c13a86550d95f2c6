package org.tugtest.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The order of ids, held against a slow second writing of the same words. */
class NaturalOrderTest {
  private static final NaturalOrder ORDER = NaturalOrder.NATURAL;
  private static final Pattern RUN = Pattern.compile("[0-9]+|[^0-9]");
  private static final String LETTERS = "aAbBzZ019900._-+ü€ßİ";

  @Test
  void numbersCountByTheirValue() {
    List<String> ids = new ArrayList<>(List.of("W10", "W2", "W1", "w3", "W1a", "W010", "X1:3"));
    ids.sort(ORDER);
    assertThat(ids).containsExactly("W1", "W1a", "W2", "w3", "W010", "W10", "X1:3");
  }

  @Test
  void equalOnlyWhenTheSame() {
    assertThat(ORDER.compare("W1", "w1")).isNotZero();
    assertThat(ORDER.compare("W01", "W1")).isNotZero();
    assertThat(ORDER.compare("W1", "W1")).isZero();
    assertThat(ORDER.compare("", "")).isZero();
  }

  @Test
  void agreesWithComparingRunByRun() {
    Random random = new Random(20261128);
    for (int i = 0; i < 200_000; i++) {
      String left = word(random);
      String right = random.nextInt(4) == 0 ? left + word(random) : word(random);
      assertThat(Integer.signum(ORDER.compare(left, right)))
          .as("%s and %s", left, right)
          .isEqualTo(Integer.signum(runByRun(left, right)));
      assertThat(Integer.signum(ORDER.compare(right, left)))
          .isEqualTo(-Integer.signum(ORDER.compare(left, right)));
    }
  }

  @Test
  void sortsTheSameWhateverTheStart() {
    Random random = new Random(7);
    List<String> words = new ArrayList<>();
    for (int i = 0; i < 2_000; i++) {
      words.add(word(random));
    }
    List<String> once = new ArrayList<>(words);
    once.sort(ORDER);
    Collections.shuffle(words, random);
    words.sort(ORDER);
    assertThat(words).isEqualTo(once);
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    int length = random.nextInt(7);
    for (int i = 0; i < length; i++) {
      word.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return word.toString();
  }

  private static int runByRun(String left, String right) {
    List<String> lefts = RUN.matcher(left).results().map(MatchResult::group).toList();
    List<String> rights = RUN.matcher(right).results().map(MatchResult::group).toList();
    for (int i = 0; i < Math.min(lefts.size(), rights.size()); i++) {
      int run = compareRuns(lefts.get(i), rights.get(i));
      if (run != 0) {
        return run;
      }
    }
    int byCount = Integer.compare(lefts.size(), rights.size());
    return byCount == 0 ? left.compareTo(right) : byCount;
  }

  private static int compareRuns(String left, String right) {
    boolean bothNumbers = Character.isDigit(left.charAt(0)) && Character.isDigit(right.charAt(0));
    return bothNumbers
        ? new BigInteger(left).compareTo(new BigInteger(right))
        : Character.compare(fold(left.charAt(0)), fold(right.charAt(0)));
  }

  private static char fold(char letter) {
    String upper = String.valueOf(letter).toUpperCase(Locale.ROOT);
    return upper.length() == 1
        ? Character.toLowerCase(upper.charAt(0))
        : Character.toLowerCase(letter);
  }
}
