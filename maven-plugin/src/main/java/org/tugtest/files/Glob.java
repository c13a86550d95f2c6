package org.tugtest.files;

import java.util.List;

/**
 * A pattern for relative paths with {@code /}: {@code *} is any run of characters inside a name,
 * {@code ?} any one of them, {@code **} any number of whole folders. A pattern that ends in {@code
 * /} means everything below. Case counts on every system.
 */
public final class Glob {
  private static final String ANY_FOLDERS = "**";
  private final String pattern;
  private final List<String> names;

  private Glob(String pattern, List<String> names) {
    this.pattern = pattern;
    this.names = names;
  }

  /** The pattern as a person writes it; {@code \} counts as {@code /}. */
  public static Glob of(String pattern) {
    String plain = pattern.strip().replace('\\', '/');
    while (plain.startsWith("./")) {
      plain = plain.substring(2);
    }
    if (plain.endsWith("/")) {
      plain += ANY_FOLDERS;
    }
    return new Glob(pattern, List.of(plain.split("/", -1)));
  }

  /** As it was written. */
  public String pattern() {
    return pattern;
  }

  /** Whether it fits a whole path. Takes at most the product of both lengths. */
  public boolean matches(String path) {
    List<String> steps = List.of(path.split("/", -1));
    int name = 0;
    int step = 0;
    int backName = -1;
    int backStep = 0;
    while (step < steps.size()) {
      if (name < names.size() && names.get(name).equals(ANY_FOLDERS)) {
        backName = name++;
        backStep = step;
      } else if (name < names.size() && nameMatches(names.get(name), steps.get(step))) {
        name++;
        step++;
      } else if (backName >= 0) {
        name = backName + 1;
        step = ++backStep;
      } else {
        return false;
      }
    }
    while (name < names.size() && names.get(name).equals(ANY_FOLDERS)) {
      name++;
    }
    return name == names.size();
  }

  private static boolean nameMatches(String pattern, String name) {
    int p = 0;
    int n = 0;
    int backP = -1;
    int backN = 0;
    while (n < name.length()) {
      if (p < pattern.length() && pattern.charAt(p) == '*') {
        backP = p++;
        backN = n;
      } else if (p < pattern.length()
          && (pattern.charAt(p) == '?' || pattern.charAt(p) == name.charAt(n))) {
        p++;
        n++;
      } else if (backP >= 0) {
        p = backP + 1;
        n = ++backN;
      } else {
        return false;
      }
    }
    while (p < pattern.length() && pattern.charAt(p) == '*') {
      p++;
    }
    return p == pattern.length();
  }

  @Override
  public String toString() {
    return pattern;
  }
}
