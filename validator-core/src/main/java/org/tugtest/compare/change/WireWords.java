package org.tugtest.compare.change;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.compare.match.WireEnds;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.table.Cited;
import org.tugtest.text.Series;

/** What became of a wire. Turned round in the files, it is the same wire. */
final class WireWords {
  private static final Set<String> GAUGE = Set.of("part", "areaMm2", "awg");
  private final ChangeList list;
  private final ChangeList.Entry entry;

  WireWords(ChangeList list, ChangeList.Entry entry) {
    this.list = list;
    this.entry = entry;
  }

  void say(Wire raw, Wire translated, Wire now) {
    boolean turned = WireEnds.of(translated, Renames.NONE).turned(WireEnds.of(now, Renames.NONE));
    Wire old = turned ? raw.turned() : raw;
    List<FieldDiff> diffs = FieldDiff.between(old, turned ? translated.turned() : translated, now);
    if (diffs.stream().anyMatch(diff -> GAUGE.contains(diff.head()))) {
      gauge(old, now, diffs);
    }
    for (FieldDiff diff : diffs) {
      switch (diff.head()) {
        case "from", "to" -> moved(diff);
        case "part", "areaMm2", "awg" -> {}
        case "colour" -> coloured(diff);
        case "via" -> routed(old, now, diff);
        case "laidInPlace" -> laid(now, diff);
        case "cutMm", "builtMm" -> {
          if (FieldWords.ofNumbers(diff)) {
            FieldWords.length(list, entry, diff);
          } else {
            FieldWords.lengthGiven(list, entry, diff);
          }
        }
        default -> FieldWords.field(list, ChangeKind.OTHER, entry, diff);
      }
    }
  }

  private void moved(FieldDiff diff) {
    Ref was = (Ref) diff.raw();
    Ref is = (Ref) diff.now();
    list.add(
        ChangeKind.RE_PINNED,
        entry,
        diff.path(),
        was == null ? null : was.text(),
        is == null ? null : is.text(),
        entry.name() + " moves from " + EntryText.end(was) + " to " + EntryText.end(is) + ".",
        list.grouping().ofEnd(was, is));
  }

  private void gauge(Wire old, Wire now, List<FieldDiff> diffs) {
    Optional<Cited> was = Gauge.area(old, list.before());
    Optional<Cited> is = Gauge.area(now, list.after());
    boolean sameArea = was.isPresent() && is.isPresent() && was.get().value() == is.get().value();
    String before = gaugeText(old, Gauge.of(old, list.before()));
    String after = gaugeText(now, Gauge.of(now, list.after()));
    String field =
        diffs.stream().map(FieldDiff::head).filter(GAUGE::contains).findFirst().orElse("part");
    list.add(
        sameArea ? ChangeKind.SWAPPED : ChangeKind.RE_GAUGED,
        entry,
        List.of(field),
        before,
        after,
        sameArea
            ? entry.name()
                + " is made of another wire of the same gauge, "
                + after
                + " instead of "
                + before
                + "."
            : entry.name() + " goes from " + before + " to " + after + ".");
  }

  private static String gaugeText(Wire wire, String gauge) {
    String part = wire.part();
    if (part == null) {
      return gauge.isEmpty() ? "no gauge" : gauge;
    }
    return gauge.isEmpty() || gauge.equals(part) ? part : gauge + " (" + part + ")";
  }

  private void coloured(FieldDiff diff) {
    String was = ValueText.of(diff.raw());
    String is = ValueText.of(diff.now());
    list.add(
        ChangeKind.RE_COLOURED,
        entry,
        diff.path(),
        was,
        is,
        entry.name()
            + " goes from "
            + orNone(was, "no colour")
            + " to "
            + orNone(is, "no colour")
            + ".");
  }

  private void routed(Wire old, Wire now, FieldDiff diff) {
    list.add(
        ChangeKind.RE_ROUTED,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        entry.name() + " runs " + way(now.via()) + " instead of " + way(old.via()) + ".");
  }

  private void laid(Wire now, FieldDiff diff) {
    list.add(
        ChangeKind.OTHER,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        now.laidInPlace()
            ? entry.name() + " is laid in place and cut there instead of cut to length."
            : entry.name() + " is cut to length instead of laid in place.");
  }

  private static String way(List<String> via) {
    return via.isEmpty() ? "the shortest way" : "via " + Series.and(via);
  }

  private static String orNone(@Nullable String value, String none) {
    return Objects.requireNonNullElse(value, none);
  }
}
