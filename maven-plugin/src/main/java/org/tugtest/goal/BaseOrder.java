package org.tugtest.goal;

import org.jspecify.annotations.Nullable;
import org.tugtest.base.BaseWord;

/**
 * What a check shall be held against and how, as it was asked for.
 *
 * @param staged the content of the next commit is checked
 * @param base null when none was named
 */
record BaseOrder(
    boolean staged, @Nullable String base, boolean failOnlyNew, boolean failOnUnannounced) {
  private static final String HEAD = "HEAD";

  /** The base; where ages matter and none is named, it is found out. */
  BaseWord word() {
    BaseWord word = BaseWord.of(base);
    boolean needed = failOnlyNew || failOnUnannounced;
    if (word instanceof BaseWord.None && needed) {
      return staged ? new BaseWord.Revision(HEAD) : new BaseWord.Auto(null);
    }
    return word;
  }

  /** Whether that is the commit that the next one follows. */
  boolean followsHead() {
    return staged && word().equals(new BaseWord.Revision(HEAD));
  }
}
