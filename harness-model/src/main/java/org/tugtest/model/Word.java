package org.tugtest.model;

import java.util.Locale;

/** A word of the format: the constant's name in lower case, joined by {@code -}. */
public interface Word {
  /** The constant's name. */
  String name();

  /** The word as it stands in a file. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
