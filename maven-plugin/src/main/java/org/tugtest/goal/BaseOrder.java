package org.tugtest.goal;

import org.jspecify.annotations.Nullable;
import org.tugtest.base.BaseWord;

/**
 * What is looked at, what it is held against and how, as it was asked for.
 *
 * @param staged the content of the next commit is looked at
 * @param head the revision that is looked at; null: the files on disk, or the next commit
 * @param base null when none was named
 */
record BaseOrder(
    boolean staged,
    @Nullable String head,
    @Nullable String base,
    boolean failOnlyNew,
    boolean failOnUnannounced) {
  private static final BaseWord HEAD = new BaseWord.Revision("HEAD");

  BaseOrder {
    head = head == null || head.isBlank() ? null : head.strip();
  }

  /** The base of a check; where ages matter and none is named, it is found out. */
  BaseWord ofCheck() {
    BaseWord word = BaseWord.of(base);
    if (word instanceof BaseWord.None && (failOnlyNew || failOnUnannounced)) {
      return staged ? HEAD : new BaseWord.Auto(null);
    }
    return word;
  }

  /** The base of a comparison; where none is named, it is the commit before. */
  BaseWord ofComparison() {
    BaseWord word = BaseWord.of(base);
    if (word instanceof BaseWord.None) {
      return head == null ? HEAD : new BaseWord.Revision(head + "~1");
    }
    return word;
  }

  /** Whether that base is the commit that the next one follows. */
  boolean followsHead(BaseWord word) {
    return staged && word.equals(HEAD);
  }
}
