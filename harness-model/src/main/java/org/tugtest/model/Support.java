package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/** What holds a bundle. */
public record Support(String id, @Nullable Kind kind, @Nullable Double grams) {
  /** The sort of support. */
  public enum Kind implements Word {
    CLIP,
    P_CLIP,
    /** Holds nothing by itself. */
    TIE
  }
}
