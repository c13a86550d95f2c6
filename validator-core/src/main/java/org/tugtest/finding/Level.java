package org.tugtest.finding;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How grave a finding is; the first constant is the gravest. */
public enum Level {
  /** Blocks a commit. */
  ERROR,
  /** Shown; blocks when the team says so. */
  WARNING,
  /** Advice. */
  NOTE;

  /** The word in files and reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The level of that word. */
  public static Optional<Level> of(String word) {
    return List.of(values()).stream().filter(level -> level.word().equals(word)).findFirst();
  }

  /** Whether this is as grave as {@code other} or graver. */
  public boolean atLeast(Level other) {
    return compareTo(other) <= 0;
  }

  /** This level, but no graver than {@code most}. */
  public Level cappedAt(Level most) {
    return atLeast(most) ? most : this;
  }
}
