package org.tugtest.compare;

import org.jspecify.annotations.Nullable;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.finding.Subject;

/** What is said of one change. */
record Said(
    ChangeKind kind,
    @Nullable String was,
    @Nullable String is,
    @Nullable String before,
    @Nullable String after) {
  static Said of(Change change) {
    boolean whole = change.kind() == ChangeKind.ADDED || change.kind() == ChangeKind.REMOVED;
    return new Said(
        change.kind(),
        place(change.was()),
        place(change.is()),
        whole ? null : change.before(),
        whole ? null : change.after());
  }

  private static @Nullable String place(@Nullable Subject subject) {
    return subject == null ? null : subject.place();
  }
}
