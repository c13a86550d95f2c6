package org.tugtest.compare.change;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Splice;
import org.tugtest.text.Quoted;

/** What became of a splice. */
final class SpliceWords {
  private static final Set<String> WHERE = Set.of("at", "on", "offsetMm");
  private final ChangeList list;
  private final ChangeList.Entry entry;

  SpliceWords(ChangeList list, ChangeList.Entry entry) {
    this.list = list;
    this.entry = entry;
  }

  void say(Splice raw, Splice translated, Splice now) {
    List<FieldDiff> diffs = FieldDiff.between(raw, translated, now);
    diffs.stream()
        .filter(diff -> WHERE.contains(diff.head()))
        .findFirst()
        .ifPresent(
            diff ->
                ConnectorWords.moved(list, entry, "Splice ", diff.path(), where(raw), where(now)));
    for (FieldDiff diff : diffs) {
      if (diff.head().equals("part") && diff.raw() != null && diff.now() != null) {
        swapped(diff);
      } else if (!WHERE.contains(diff.head())) {
        FieldWords.field(list, ChangeKind.OTHER, entry, diff);
      }
    }
  }

  private void swapped(FieldDiff diff) {
    String was = Objects.toString(ValueText.of(diff.raw()));
    String is = Objects.toString(ValueText.of(diff.now()));
    list.add(
        ChangeKind.SWAPPED,
        entry,
        diff.path(),
        was,
        is,
        "Splice " + entry.name() + " is a " + is + " instead of a " + was + ".");
  }

  private static @Nullable String where(Splice splice) {
    if (splice.on() == null) {
      return splice.offsetMm() == null || splice.at() == null
          ? splice.at()
          : splice.at() + " (offset " + Quoted.number(splice.offsetMm()) + " mm)";
    }
    String offset =
        splice.offsetMm() == null ? "" : " at " + Quoted.number(splice.offsetMm()) + " mm";
    String node = splice.at() == null ? "" : " (node " + splice.at() + ")";
    return "segment " + splice.on() + offset + node;
  }
}
