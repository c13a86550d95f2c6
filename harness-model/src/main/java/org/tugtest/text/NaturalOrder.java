package org.tugtest.text;

import java.util.Comparator;

/**
 * The order a person expects of ids: runs of digits by their value, the rest letter by letter
 * without case; {@code W2} before {@code W10}. Ids equal in that order are told apart by their
 * plain text, so the order is total and consistent with equals.
 */
public final class NaturalOrder implements Comparator<String> {
  /** The one instance. */
  public static final NaturalOrder NATURAL = new NaturalOrder();

  private NaturalOrder() {}

  @Override
  public int compare(String left, String right) {
    int i = sameStart(left, right);
    int j = i;
    while (i < left.length() && j < right.length()) {
      char a = left.charAt(i);
      char b = right.charAt(j);
      if (isDigit(a) && isDigit(b)) {
        int endA = digitsEnd(left, i);
        int endB = digitsEnd(right, j);
        int byValue = compareDigits(left, i, endA, right, j, endB);
        if (byValue != 0) {
          return byValue;
        }
        i = endA;
        j = endB;
      } else {
        int byLetter = Character.compare(fold(a), fold(b));
        if (byLetter != 0) {
          return byLetter;
        }
        i++;
        j++;
      }
    }
    int byRest = Integer.compare(left.length() - i, right.length() - j);
    return byRest != 0 ? byRest : left.compareTo(right);
  }

  /** How many characters at the start need no comparing: the same, and no digits at their end. */
  private static int sameStart(String left, String right) {
    int most = Math.min(left.length(), right.length());
    int at = 0;
    while (at < most && left.charAt(at) == right.charAt(at)) {
      at++;
    }
    while (at > 0 && isDigit(left.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static char fold(char c) {
    if (c < 128) {
      return c >= 'A' && c <= 'Z' ? (char) (c + 32) : c;
    }
    return Character.toLowerCase(Character.toUpperCase(c));
  }

  private static int digitsEnd(String text, int from) {
    int at = from;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static int compareDigits(String left, int i, int endA, String right, int j, int endB) {
    int a = i;
    int b = j;
    while (a < endA - 1 && left.charAt(a) == '0') {
      a++;
    }
    while (b < endB - 1 && right.charAt(b) == '0') {
      b++;
    }
    int byLength = Integer.compare(endA - a, endB - b);
    if (byLength != 0) {
      return byLength;
    }
    while (a < endA) {
      int byDigit = Character.compare(left.charAt(a++), right.charAt(b++));
      if (byDigit != 0) {
        return byDigit;
      }
    }
    return 0;
  }
}
