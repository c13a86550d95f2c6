package org.tugtest.built;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What comes after a revision as people count them: C, D; Z, AA; 9, 10; C2, C3. */
final class NextRevision {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]{1,18})");
  private static final Pattern LETTERED = Pattern.compile("([^A-Za-z]*)([A-Z]{1,3}|[a-z]{1,3})");

  private NextRevision() {}

  /** The next one; empty where it cannot be told. */
  static Optional<String> after(String revision) {
    Matcher numbered = NUMBERED.matcher(revision);
    if (numbered.matches()) {
      String digits = numbered.group(2);
      String next = new BigInteger(digits).add(BigInteger.ONE).toString();
      return Optional.of(
          numbered.group(1) + "0".repeat(Math.max(0, digits.length() - next.length())) + next);
    }
    Matcher lettered = LETTERED.matcher(revision);
    return lettered.matches()
        ? Optional.of(lettered.group(1) + letters(lettered.group(2)))
        : Optional.empty();
  }

  private static String letters(String letters) {
    char last = letters.charAt(letters.length() - 1);
    boolean upper = Character.isUpperCase(last);
    char end = upper ? 'Z' : 'z';
    char first = upper ? 'A' : 'a';
    String before = letters.substring(0, letters.length() - 1);
    if (last != end) {
      return before + (char) (last + 1);
    }
    return (before.isEmpty() ? String.valueOf(first) : letters(before)) + first;
  }
}
