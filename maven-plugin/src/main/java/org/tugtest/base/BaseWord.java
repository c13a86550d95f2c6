package org.tugtest.base;

import org.jspecify.annotations.Nullable;

/** What a person may give as {@code tugtest.base}. */
public sealed interface BaseWord {
  /** How the path of a file is told from a revision. */
  String FILE = "file:";

  /** Where a branch left the one it shall be merged into, which is found out. */
  String AUTO = "auto";

  /** The content of the next commit. */
  String STAGED = "staged";

  /** No base: nothing is compared. */
  record None() implements BaseWord {}

  /**
   * Where this branch left the target branch.
   *
   * @param branch the target where the CI system tells none; null: the one that the origin names
   */
  record Auto(@Nullable String branch) implements BaseWord {}

  /** The content of the next commit. */
  record Staged() implements BaseWord {}

  /**
   * A harness on disk: a root, or a folder of roots.
   *
   * @param path as it was written
   */
  record OnDisk(String path) implements BaseWord {}

  /** A revision by a name that git knows. */
  record Revision(String name) implements BaseWord {}

  /** Reads what was given; nothing or blanks are {@link None}. */
  static BaseWord of(@Nullable String given) {
    String word = given == null ? "" : given.strip();
    if (word.isEmpty()) {
      return new None();
    }
    if (word.equals(AUTO)) {
      return new Auto(null);
    }
    if (word.startsWith(AUTO + ":")) {
      String branch = word.substring(AUTO.length() + 1).strip();
      return new Auto(branch.isEmpty() ? null : branch);
    }
    if (word.startsWith(FILE)) {
      return new OnDisk(word.substring(FILE.length()).strip());
    }
    return word.equals(STAGED) ? new Staged() : new Revision(word);
  }
}
